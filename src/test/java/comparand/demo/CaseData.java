package comparand.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Writes the raw clinical files of the demo library: three invented hospitals, each with its own columns, units, separators
 * and way to say that something is missing. All numbers are invented. What the cases use up, carry and need follows from
 * published relations of blood gases; the summaries are those that the demo scenario prints.
 *
 * <p>Run {@link #main} with a target folder to write the files anew; a test holds the committed files against this generator.
 */
final class CaseData {

    /** Where the files are committed. */
    static final Path FOLDER = Path.of("evidence/studies/three-hospitals");

    /** Where those of the second month are. */
    static final Path LATER = Path.of("evidence/dated/2026-11/studies/three-hospitals");

    /** Every draw starts from this number and from what is drawn. */
    static final long SEED = 20260914L;

    /** Stands in the first row's remark of every file, in each hospital's language. */
    static final String INVENTED = "invented data";

    static final String INVENTED_GERMAN = "erfundene Daten";

    /** This row was exported twice. */
    static final String TWICE = "N-17";

    private CaseData() {}

    public static void main(String[] args) throws IOException {
        write(files(), args.length > 0 ? Path.of(args[0]) : FOLDER);
        write(filesOfLater(), args.length > 0 ? Path.of(args[0]).resolve("later") : LATER);
    }

    static void write(Path folder) throws IOException {
        write(files(), folder);
    }

    private static void write(Map<String, byte[]> files, Path folder) throws IOException {
        Files.createDirectories(folder);
        for (var file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /** The raw files by name. */
    static Map<String, byte[]> files() {
        var cases = CaseDataRegister.drawn();
        var files = new LinkedHashMap<String, byte[]>();
        files.putAll(CaseDataNorrisgate.files(of(cases, CaseDataHospital.NORRISGATE)));
        files.putAll(CaseDataStAldwyn.files(of(cases, CaseDataHospital.ST_ALDWYN)));
        files.putAll(CaseDataLakeFerran.files(of(cases, CaseDataHospital.LAKE_FERRAN)));
        return files;
    }

    /** The raw files that the weeks after change, by name: four more cases of one device in one hospital. */
    static Map<String, byte[]> filesOfLater() {
        var cases = of(CaseDataRegister.drawn(), CaseDataHospital.ST_ALDWYN);
        return CaseDataStAldwyn.files(
                Stream.concat(cases.stream(), CaseDataRegister.later().stream()).toList());
    }

    private static List<CaseDataCase> of(Map<String, CaseDataCase> cases, CaseDataHospital hospital) {
        var rows = new ArrayList<CaseDataCase>();
        cases.values().stream().filter(c -> c.patient().hospital() == hospital).forEach(rows::add);
        if (hospital == CaseDataHospital.NORRISGATE) {
            rows.add(rows.stream().filter(c -> c.id().equals(TWICE)).findFirst().orElseThrow());
        }
        return rows;
    }

    /** The samples of each case once, in the order of the cases. */
    static List<CaseDataSample> samples(List<CaseDataCase> cases) {
        return cases.stream()
                .distinct()
                .flatMap(c -> CaseDataSamples.of(c).stream())
                .toList();
    }

    /** Deviates for one purpose, whatever else is drawn. */
    static Random random(Object... purpose) {
        return new Random(SEED * 1_000_003L
                + Arrays.stream(purpose).map(Object::toString).toList().hashCode());
    }
}
