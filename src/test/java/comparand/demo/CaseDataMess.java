package comparand.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Spoils a copy of the case files as raw files are spoilt in practice, and tells what it did. No row of samples is spoilt in
 * two ways. The same files are spoilt in the same way.
 */
final class CaseDataMess {

    /**
     * One cell that was changed.
     *
     * @param sheet of the workbook; empty for a text file
     * @param line counted from 1
     * @param column its heading as it stands in the spoilt file; empty where a whole row was added
     */
    record Injected(
            CaseDataMessKind kind,
            String file,
            String sheet,
            int line,
            String column,
            String original,
            String changed) {}

    private record Place(CaseDataGrid grid, int line) {}

    private static final String CORRECTED = "corrected";
    private static final String PLATELETS = "Platelets post (10^9/L)";

    private final List<Injected> injected = new ArrayList<>();
    private final Set<Place> spoilt = new HashSet<>();
    private final XSSFWorkbook workbook;
    private final CaseDataSheetGrid aldwynCases;
    private final CaseDataCsvGrid ferranCases;
    private final List<CaseDataCsvGrid> textSamples;
    private final List<CaseDataGrid> samples;

    private CaseDataMess(Path folder, XSSFWorkbook workbook) throws IOException {
        this.workbook = workbook;
        aldwynCases = new CaseDataSheetGrid(workbook.getSheet("Cases"));
        ferranCases = new CaseDataCsvGrid(CaseDataHospital.LAKE_FERRAN, folder, "lake-ferran-faelle.csv");
        textSamples = List.of(
                new CaseDataCsvGrid(CaseDataHospital.NORRISGATE, folder, "norrisgate-samples.csv"),
                new CaseDataCsvGrid(CaseDataHospital.LAKE_FERRAN, folder, "lake-ferran-proben.csv"));
        samples = List.of(textSamples.get(0), new CaseDataSheetGrid(workbook.getSheet("Samples")), textSamples.get(1));
    }

    /** Spoils the files in a folder in every way. */
    static List<Injected> inject(Path folder) throws IOException {
        return inject(folder, Set.of(CaseDataMessKind.values()));
    }

    /** Spoils the files in a folder in some ways; what was changed, in the order of kind, file, sheet and line. */
    static List<Injected> inject(Path folder, Set<CaseDataMessKind> kinds) throws IOException {
        var path = folder.resolve(CaseDataStAldwyn.FILE);
        try (var in = Files.newInputStream(path);
                var workbook = new XSSFWorkbook(in)) {
            var mess = new CaseDataMess(folder, workbook);
            kinds.stream().sorted().forEach(mess::inject);
            Files.write(path, CaseDataWorkbook.bytes(workbook));
            mess.ferranCases.save();
            for (var grid : mess.textSamples) {
                grid.save();
            }
            return mess.injected.stream()
                    .sorted(Comparator.comparing(Injected::kind)
                            .thenComparing(Injected::file)
                            .thenComparing(Injected::sheet)
                            .thenComparing(Injected::line))
                    .toList();
        }
    }

    private void inject(CaseDataMessKind kind) {
        switch (kind) {
            case HEADING_RENAMED -> rename(kind, samples.get(0), "hb_gdl", "haemoglobin_gdl");
            case DEVICE_CHANGED -> {
                int line = ferranCases.lineOf("F-05");
                change(kind, ferranCases, line, Map.of("Oxygenatorwechsel", "ja", "Bemerkung", "Wechsel Minute 48"));
            }
            case TWO_PATIENTS_ONE_CODE ->
                change(kind, aldwynCases, aldwynCases.lineOf("A-06"), Map.of("Case No", "A-05"));
            case HIDDEN_CORRECTION -> correctHidden();
            default -> spoilSamples(kind);
        }
    }

    private void rename(CaseDataMessKind kind, CaseDataGrid grid, String heading, String by) {
        grid.rename(heading, by);
        injected.add(new Injected(kind, grid.file, grid.sheet, grid.headingsLine(), by, heading, by));
    }

    /** A sheet that nobody sees says that a count was another. */
    private void correctHidden() {
        var original = aldwynCases.get(aldwynCases.lineOf("A-02"), PLATELETS);
        var corrected = Integer.toString(Integer.parseInt(original) + 19);
        var sheet = workbook.createSheet(CORRECTED);
        var lines = List.of(
                List.of("Entries corrected later"),
                List.of("Invented data"),
                List.of("Case No", PLATELETS),
                List.of("A-02", corrected));
        for (var line : lines) {
            var row = sheet.createRow(sheet.getPhysicalNumberOfRows());
            line.forEach(c -> CaseDataWorkbook.enter(row.createCell(Math.max(0, row.getLastCellNum())), c));
        }
        workbook.setSheetHidden(workbook.getSheetIndex(CORRECTED), true);
        injected.add(new Injected(
                CaseDataMessKind.HIDDEN_CORRECTION,
                CaseDataStAldwyn.FILE,
                CORRECTED,
                lines.size(),
                PLATELETS,
                original,
                corrected));
    }

    private void spoilSamples(CaseDataMessKind kind) {
        var places = new ArrayList<Place>();
        for (var grid : samples) {
            // the first row says that the data are invented
            for (int line = grid.headingsLine() + 2; line <= grid.lastLine(); line++) {
                if (!spoilt.contains(new Place(grid, line))
                        && !CaseDataSpoiling.of(kind, grid, line).isEmpty()) {
                    places.add(new Place(grid, line));
                }
            }
        }
        int all = kind == CaseDataMessKind.FRACTION_AS_PER_CENT
                ? samples.get(1).lastLine() - samples.get(1).headingsLine()
                : samples.stream()
                        .mapToInt(g -> g.lastLine() - g.headingsLine())
                        .sum();
        Collections.shuffle(places, CaseData.random("mess", kind));
        places.stream().limit(kind.rows(all)).forEach(p -> spoil(kind, p));
    }

    private void spoil(CaseDataMessKind kind, Place place) {
        var grid = place.grid;
        spoilt.add(place);
        if (kind == CaseDataMessKind.ROW_TWICE) {
            int added = grid.repeat(place.line);
            spoilt.add(new Place(grid, added));
            injected.add(new Injected(kind, grid.file, grid.sheet, added, "", "", "line " + place.line + " again"));
            return;
        }
        var changes = new TreeMap<String, String>();
        CaseDataSpoiling.of(kind, grid, place.line).forEach((f, text) -> changes.put(grid.heading(f), text));
        change(kind, grid, place.line, changes);
        if (kind == CaseDataMessKind.NO_FLOW && grid.headings().contains(CaseDataGrid.RATIO)) {
            var before = grid.get(place.line, CaseDataGrid.RATIO);
            injected.add(new Injected(kind, grid.file, grid.sheet, place.line, CaseDataGrid.RATIO, before, "#DIV/0!"));
        }
    }

    private void change(CaseDataMessKind kind, CaseDataGrid grid, int line, Map<String, String> changes) {
        var originals = new TreeMap<String, String>();
        changes.keySet().forEach(h -> originals.put(h, grid.get(line, h)));
        originals.forEach((heading, original) -> {
            grid.set(line, heading, changes.getOrDefault(heading, ""));
            injected.add(new Injected(kind, grid.file, grid.sheet, line, heading, original, grid.get(line, heading)));
        });
    }
}
