package comparand.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A library as large as a page must bear: 40 devices, each measured at home on the bench at five flows, and 125 invented
 * papers that print the pressure drop of eight of them at each flow, 5000 values. Seeded: the same bytes every time.
 */
final class LargeLibrary {

    static final int DEVICES = 40;
    private static final int PAPERS = 125;
    private static final int DEVICES_IN_A_PAPER = 8;
    private static final int FLOWS = 5;
    private static final int UNITS = 4;
    static final int VALUES = PAPERS * DEVICES_IN_A_PAPER * FLOWS;

    private final SplittableRandom random = new SplittableRandom(20261120);

    private LargeLibrary() {}

    /** The file of the dossier. */
    static Path write(Path folder) throws IOException {
        var library = new LargeLibrary();
        for (int d = 1; d <= DEVICES; d++) {
            put(folder.resolve("devices/" + device(d) + ".yaml"), deviceRecord(d));
            put(folder.resolve("sources/" + device(d) + "-ifu.yaml"), instructions(d));
        }
        for (int p = 1; p <= PAPERS; p++) {
            put(folder.resolve("sources/paper-" + p + ".yaml"), library.paper(p));
        }
        put(folder.resolve("studies/bench/study.yaml"), study());
        put(folder.resolve("studies/bench/runs.csv"), library.runs());
        var dossier = folder.resolve("dossiers/large.yaml");
        put(dossier, dossier());
        return dossier;
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(file.resolveSibling("."));
        Files.writeString(file, text);
    }

    private static String device(int number) {
        return "device-" + number;
    }

    private static String devices(String pattern) {
        return IntStream.rangeClosed(1, DEVICES)
                .mapToObj(d -> pattern.formatted(d))
                .collect(Collectors.joining(", "));
    }

    /** Pressure drop in mmHg of a device at a flow: a line and a square, as everywhere; devices lie close together. */
    private static double drop(int device, int flow) {
        return (12 + 0.15 * device) * flow + 1.2 * flow * flow;
    }

    private double noise(double sd) {
        return sd * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
    }

    private static String deviceRecord(int d) {
        return """
                device: %1$s
                name: Device %2$d
                maker: Invented Maker
                kind: oxygenator
                instructions: %1$s-ifu
                label:
                  - limits: blood-flow
                    range: 0.5 to 7 L/min
                    from: {source: %1$s-ifu, place: {page: 3, table: 1, row: 2}}
                parts:
                  - {part: oxygenator, arrangement: integral}
                  - {part: exchanger, arrangement: integral}
                  - {part: filter, arrangement: separate}
                """.formatted(device(d), d);
    }

    private static String instructions(int d) {
        return """
                source: %1$s-ifu
                kind: instructions-for-use
                reference: {type: pamphlet, title: "Instructions for use %2$d", author: [{literal: Invented Maker}], issued: 2025-02}
                document: {revision: A, date: 2025-02}
                funding: maker
                status: {state: current, checked: 2026-11-01}
                values:
                  - id: %1$s-prime
                    device: %1$s
                    metric: priming-volume
                    printed: "210 mL"
                    value: 210 mL
                    definition: {parts: [oxygenator, exchanger], state: static}
                    place: {page: 3, table: 1, row: 1}
                    quote: "Priming volume | 210 mL"
                    read: [{by: XY, on: 2026-10-05}, {by: YZ, on: 2026-10-06, agrees: yes}]
                """.formatted(device(d), d);
    }

    private String paper(int p) {
        var text = new StringBuilder("""
                source: paper-%1$d
                kind: bench-paper
                reference:
                  type: article-journal
                  title: "Pressure drops, part %1$d"
                  author: [{family: Writer%1$d, given: A.}]
                  issued: %2$d
                  container-title: Invented Journal
                  DOI: 10.5555/large.%1$d
                funding: independent
                status: {state: current, checked: 2026-11-01}
                conditions: {test-model: bench-blood-animal, species: bovine, haemoglobin: %3$d g/dL, temperature: 37 °C}
                values:
                """.formatted(p, 1995 + p % 30, 9 + random.nextInt(6)));
        for (int i = 0; i < DEVICES_IN_A_PAPER; i++) {
            int d = 1 + (p * DEVICES_IN_A_PAPER + i * 5) % DEVICES;
            for (int flow = 1; flow <= FLOWS; flow++) {
                text.append(value(p, d, flow, i * FLOWS + flow));
            }
        }
        return text.toString();
    }

    private String value(int paper, int d, int flow, int row) {
        var mean = String.format(Locale.ROOT, "%.1f", drop(d, flow) + noise(5));
        var sd = String.format(Locale.ROOT, "%.1f", 2 + 3 * random.nextDouble());
        boolean said = random.nextInt(4) > 0;
        return """
                  - id: P%1$d-%2$d-%3$d
                    device: %4$s
                    metric: pressure-drop
                    printed: "%5$s ± %6$s mmHg"
                    mean: %5$s mmHg
                    spread: {kind: %7$s, of: %6$s mmHg}
                    n: 6 units
                    definition: {parts: [oxygenator, exchanger]}
                    conditions: {blood-flow: %3$d L/min}
                    place: {page: 5, table: 2, row: %8$d}
                    quote: "Device %2$d | %3$d L/min | %5$s ± %6$s"
                    read: [{by: XY, on: 2026-10-05}, {by: YZ, on: 2026-10-06, agrees: yes}]
                """.formatted(paper, d, flow, device(d), mean, sd, said ? "sd" : "not stated", row);
    }

    private static String study() {
        return """
                study: bench
                title: Forty devices on our bench
                kind: bench
                unit-of-analysis: units
                conditions: {test-model: bench-blood-animal, species: bovine, temperature: 37 °C}
                files:
                  - file: runs.csv
                    separator: comma
                    decimal: point
                    encoding: UTF-8
                    repeats: average
                    grouped-by: [blood-flow]
                    gives: [pressure-drop]
                    definition: {parts: [oxygenator, exchanger]}
                    columns:
                      unit: {holds: unit}
                      device: {holds: device, codes: {%s}}
                      flow: {input: blood-flow, unit: L/min}
                      p_in: {input: inlet-pressure, unit: mmHg}
                      p_out: {input: outlet-pressure, unit: mmHg}
                      hb: {condition: haemoglobin, unit: g/dL}
                """.formatted(devices("D%1$d: device-%1$d"));
    }

    private String runs() {
        var text = new StringBuilder("unit,device,flow,p_in,p_out,hb\n");
        for (int d = 1; d <= DEVICES; d++) {
            for (int unit = 1; unit <= UNITS; unit++) {
                for (int flow = 1; flow <= FLOWS; flow++) {
                    text.append(String.format(
                            Locale.ROOT,
                            "D%d-%d,D%d,%d,%.1f,180.0,%.1f\n",
                            d,
                            unit,
                            d,
                            flow,
                            180 + drop(d, flow) + noise(3),
                            12 + noise(0.1)));
                }
            }
        }
        return text.toString();
    }

    private static String dossier() {
        return """
                dossier: large
                title: A large library
                question: Does the page bear it?
                decision: None
                fixed: 2026-09-15
                as-of: 2026-11-20
                prepared-by: Benchmark
                state: draft
                invented-data: yes
                devices: [%s]
                present-device: device-1
                studies: [bench]
                questions:
                  - metric: pressure-drop
                    asks: How hard does the pump have to push?
                    margin: 10 mmHg
                    reason: drawn
                    better: less
                    at: {condition: blood-flow, steps: [%s]}
                tolerances: []
                """.formatted(
                devices("device-%d"),
                IntStream.rangeClosed(1, FLOWS).mapToObj(f -> f + " L/min").collect(Collectors.joining(", ")));
    }

    /** Leaves the library in a folder, to be looked at. */
    public static void main(String[] args) throws IOException {
        System.out.println(write(Path.of(args[0])));
    }
}
