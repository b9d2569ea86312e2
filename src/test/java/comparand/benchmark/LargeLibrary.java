package comparand.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An invented library of any size: devices, each measured at home on the bench at five flows, and papers that print the pressure
 * drop of some of them at each flow. Seeded: the same bytes every time.
 */
final class LargeLibrary {

    private static final int FLOWS = 5;
    private static final int UNITS = 4;

    private final SplittableRandom random = new SplittableRandom(20261120);
    private final Size size;

    private LargeLibrary(Size size) {
        this.size = size;
    }

    /**
     * How large it is.
     *
     * @param dossiers how many dossiers share the devices among themselves, each device in one of them
     */
    record Size(int devices, int papers, int devicesInPaper, int dossiers) {

        /** As large as a page must bear. */
        static final Size OF_A_PAGE = new Size(40, 125, 8, 1);
        /** The library of a large department after many years. */
        static final Size OF_A_DEPARTMENT = new Size(200, 2000, 2, 50);

        int values() {
            return papers * devicesInPaper * FLOWS;
        }

        int devicesInDossier() {
            return devices / dossiers;
        }
    }

    /** The file of its first dossier. */
    static Path write(Path folder, Size size) throws IOException {
        var library = new LargeLibrary(size);
        for (int d = 1; d <= size.devices(); d++) {
            put(folder.resolve("devices/" + device(d) + ".yaml"), deviceRecord(d));
            put(folder.resolve("sources/" + device(d) + "-ifu.yaml"), instructions(d));
        }
        for (int p = 1; p <= size.papers(); p++) {
            put(folder.resolve("sources/paper-" + p + ".yaml"), library.paper(p));
        }
        put(folder.resolve("studies/bench/study.yaml"), library.study());
        put(folder.resolve("studies/bench/runs.csv"), library.runs());
        for (int d = 1; d <= size.dossiers(); d++) {
            put(folder.resolve("dossiers/large-" + d + ".yaml"), library.dossier(d));
        }
        return folder.resolve("dossiers/large-1.yaml");
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(file.resolveSibling("."));
        Files.writeString(file, text);
    }

    private static String device(int number) {
        return "device-" + number;
    }

    private static String devices(String pattern, int first, int number) {
        return IntStream.range(first, first + number)
                .mapToObj(d -> pattern.formatted(d))
                .collect(Collectors.joining(", "));
    }

    /** Pressure drop in mmHg of a device at a flow: a line and a square, as everywhere; devices lie close together. */
    private static double drop(int device, int flow) {
        return (12 + 0.15 * (device % 41)) * flow + 1.2 * flow * flow;
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
        for (int i = 0; i < size.devicesInPaper(); i++) {
            int d = 1 + (p * size.devicesInPaper() + i * 5) % size.devices();
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

    private String study() {
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
                """.formatted(devices("D%1$d: device-%1$d", 1, size.devices()));
    }

    private String runs() {
        var text = new StringBuilder("unit,device,flow,p_in,p_out,hb\n");
        for (int d = 1; d <= size.devices(); d++) {
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

    private String dossier(int number) {
        int first = (number - 1) * size.devicesInDossier() + 1;
        return """
                dossier: large-%4$d
                title: A large library
                question: Does the page bear it?
                decision: None
                fixed: 2026-09-15
                as-of: 2026-11-20
                prepared-by: Benchmark
                state: draft
                invented-data: yes
                devices: [%1$s]
                present-device: device-%3$d
                studies: [bench]
                questions:
                  - metric: pressure-drop
                    asks: How hard does the pump have to push?
                    margin: 10 mmHg
                    reason: drawn
                    better: less
                    at: {condition: blood-flow, steps: [%2$s]}
                tolerances: []
                """.formatted(
                devices("device-%d", first, size.devicesInDossier()),
                IntStream.rangeClosed(1, FLOWS).mapToObj(f -> f + " L/min").collect(Collectors.joining(", ")),
                first,
                number);
    }

    /** Leaves a library in a folder: the folder, and how many devices, papers, devices in a paper, and dossiers. */
    public static void main(String[] args) throws IOException {
        var size = Stream.of(args).skip(1).mapToInt(Integer::parseInt).toArray();
        System.out.println(write(Path.of(args[0]), new Size(size[0], size[1], size[2], size[3])));
    }
}
