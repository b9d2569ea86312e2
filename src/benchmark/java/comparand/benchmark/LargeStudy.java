package comparand.benchmark;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Writes the blank library with a large study in place of its small one: {@code bench ROWS}, 20 columns, many repeats of
 * 500 units; or {@code cases CASES}, eight samples each, in five centres. Seeded: the same bytes every time.
 */
final class LargeStudy {

    private static final Path BLANK = Path.of("templates/blank");
    private static final int UNITS = 500;
    private static final int SAMPLES = 8;

    private LargeStudy() {}

    /** Arguments: an empty folder, {@code bench} or {@code cases}, and how many. */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), args[1], Integer.parseInt(args[2]));
    }

    /** The file of the dossier. */
    static Path write(Path folder, String kind, int size) throws IOException {
        copy(folder);
        var study = folder.resolve("studies/example-bench");
        var lines = kind.equals("bench") ? bench(study, size) : cases(study, size);
        Files.write(study.resolve("study.yaml"), lines);
        return folder.resolve("dossiers/example.yaml");
    }

    private static void copy(Path to) throws IOException {
        Files.walkFileTree(BLANK, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                var copy = to.resolve(BLANK.relativize(file).toString());
                Files.createDirectories(copy.toAbsolutePath().getParent());
                Files.copy(file, copy);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static List<String> head(String kind, String level, String conditions) {
        return new ArrayList<>(List.of(
                "study: example-bench",
                "title: A large study",
                "kind: " + kind,
                "unit-of-analysis: " + level,
                "conditions: " + conditions,
                "files:",
                "  - file: runs.csv",
                "    separator: comma",
                "    decimal: point",
                "    encoding: UTF-8",
                "    repeats: average",
                "    duplicates: {rows: keep, reason: equal rows are meant}"));
    }

    private static List<String> bench(Path study, int rows) throws IOException {
        var random = new Random(1);
        try (var out = Files.newBufferedWriter(study.resolve("runs.csv"))) {
            out.write("unit,device,flow,p_in,p_out,hb");
            for (int c = 7; c <= 20; c++) {
                out.write(",other_" + c);
            }
            out.newLine();
            for (int r = 0; r < rows; r++) {
                int unit = r % UNITS;
                int flow = 1 + r / UNITS % 6;
                out.write(unit + (unit % 2 == 0 ? ",E," : ",P,") + flow);
                pressures(out, random, flow);
                number(out, random, 115, 125);
                for (int c = 7; c <= 20; c++) {
                    number(out, random, 0, 1000);
                }
                out.newLine();
            }
        }
        var lines = head("bench", "units", "{test-model: bench-blood-animal}");
        lines.add("    grouped-by: [blood-flow]");
        lines.add("    gives: [pressure-drop, resistance]");
        lines.add("    columns:");
        lines.add("      unit: {holds: unit}");
        lines.add("      device: {holds: device, codes: {E: example-device, P: present-device}}");
        lines.add("      flow: {input: blood-flow, unit: L/min}");
        lines.add("      p_in: {input: inlet-pressure, unit: mmHg}");
        lines.add("      p_out: {input: outlet-pressure, unit: mmHg}");
        lines.add("      hb: {condition: haemoglobin, unit: g/L}");
        for (int c = 7; c <= 20; c++) {
            lines.add("      other_" + c + ": {holds: ignored}");
        }
        return lines;
    }

    private static List<String> cases(Path study, int cases) throws IOException {
        var random = new Random(2);
        try (var out = Files.newBufferedWriter(study.resolve("runs.csv"))) {
            out.write("case,centre,device,sample,flow,p_in,p_out,hb,po2_out,so2_out,po2_in,so2_in,fio2");
            out.newLine();
            for (int c = 0; c < cases; c++) {
                for (int s = 1; s <= SAMPLES; s++) {
                    double flow = 3 + 2 * random.nextDouble();
                    out.write(c + ",Centre " + c % 5 + (c % 2 == 0 ? ",E," : ",P,") + s);
                    out.write(String.format(Locale.ROOT, ",%.2f", flow));
                    pressures(out, random, flow);
                    number(out, random, 8, 11);
                    number(out, random, 120, 260);
                    number(out, random, 98, 100);
                    number(out, random, 35, 45);
                    number(out, random, 65, 80);
                    number(out, random, 45, 75);
                    out.newLine();
                }
            }
        }
        var lines = head("clinical", "cases", "{test-model: clinical, gas-volume-basis: STPD}");
        lines.add("    gives: [pressure-drop, resistance, oxygen-transfer]");
        lines.add("    columns:");
        lines.add("      case: {holds: case}");
        lines.add("      centre: {holds: centre}");
        lines.add("      device: {holds: device, codes: {E: example-device, P: present-device}}");
        lines.add("      sample: {holds: sample}");
        lines.add("      flow: {input: blood-flow, unit: L/min}");
        lines.add("      p_in: {input: inlet-pressure, unit: mmHg}");
        lines.add("      p_out: {input: outlet-pressure, unit: mmHg}");
        lines.add("      hb: {input: haemoglobin, unit: g/dL}");
        lines.add("      po2_out: {input: outlet-po2, unit: mmHg}");
        lines.add("      so2_out: {input: outlet-saturation, unit: \"%\"}");
        lines.add("      po2_in: {input: inlet-po2, unit: mmHg}");
        lines.add("      so2_in: {input: inlet-saturation, unit: \"%\"}");
        lines.add("      fio2: {input: oxygen-fraction, unit: \"%\"}");
        return lines;
    }

    private static void pressures(BufferedWriter out, Random random, double flow) throws IOException {
        double outlet = 180 + 40 * random.nextDouble();
        double drop = flow * (14 + 3 * random.nextDouble());
        out.write(String.format(Locale.ROOT, ",%.1f,%.1f", outlet + drop, outlet));
    }

    private static void number(BufferedWriter out, Random random, double low, double high) throws IOException {
        out.write(String.format(Locale.ROOT, ",%.1f", low + (high - low) * random.nextDouble()));
    }
}
