package comparand.simulation;

import comparand.calibration.Draw;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** A library whose truth is known: one device on the bench or in hospitals, and what six sources print of it. */
record SimulatedLibrary(int number, World world, LocalStudy local, List<Published> published) {

    static final String DOSSIER = "dossiers/question.yaml";

    SimulatedLibrary {
        published = List.copyOf(published);
    }

    /** Every number has a seed of its own, so that any one can be drawn again alone; mixed, so that no two share a stream. */
    static SimulatedLibrary of(int number) {
        var draw = new Draw(new SplittableRandom(number).nextLong());
        var world = World.draw(draw);
        var local = LocalDraw.of(world, draw);
        return new SimulatedLibrary(number, world, local, PublishedDraw.of(world, local, draw));
    }

    /** The files of the library, as any user writes them. */
    void write(Path folder) throws IOException {
        put(folder.resolve("devices/own.yaml"), device("own"));
        put(folder.resolve("devices/present.yaml"), device("present"));
        put(folder.resolve("sources/own-ifu.yaml"), instructions("own"));
        put(folder.resolve("sources/present-ifu.yaml"), instructions("present"));
        var bySource = published.stream()
                .collect(Collectors.groupingBy(Published::source, LinkedHashMap::new, Collectors.toList()));
        for (var source : bySource.entrySet()) {
            put(
                    folder.resolve("sources/" + source.getKey() + ".yaml"),
                    new SourceFile(world, source.getKey(), source.getValue()).text());
        }
        var study = new StudyFile(world, local);
        put(folder.resolve("studies/local/study.yaml"), study.record());
        put(folder.resolve("studies/local/" + StudyFile.DATA), study.data());
        put(folder.resolve(DOSSIER), dossier());
    }

    private static void put(Path file, String text) throws IOException {
        Files.createDirectories(file.resolveSibling("."));
        Files.writeString(file, text);
    }

    private static String device(String name) {
        return """
                device: %1$s
                name: The %1$s device
                maker: Invented Maker
                kind: oxygenator
                instructions: %1$s-ifu
                label:
                  - limits: blood-flow
                    range: 0.5 to 9 L/min
                    from: {source: %1$s-ifu, place: {page: 3, table: 1, row: 2}}
                parts:
                  - {part: oxygenator, arrangement: integral}
                  - {part: exchanger, arrangement: integral}
                  - {part: filter, arrangement: separate}
                """.formatted(name);
    }

    private static String instructions(String device) {
        return """
                source: %1$s-ifu
                kind: instructions-for-use
                reference:
                  type: pamphlet
                  title: "Instructions for use"
                  author: [{literal: Invented Maker}]
                  issued: 2025-02
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
                """.formatted(device);
    }

    private String dossier() {
        var steps = local.steps();
        return """
                dossier: question
                title: A simulated library
                question: Does the device do at home what is published of it?
                decision: None; its truth is known
                fixed: 2026-09-15
                as-of: 2026-11-20
                prepared-by: Simulation
                state: draft
                invented-data: yes
                devices: [present, own]
                present-device: present
                studies: [local]
                questions:
                  - metric: pressure-drop
                    asks: How hard does the pump have to push?
                    margin: %s mmHg
                    reason: drawn
                    better: less
                %stolerances: []
                """.formatted(
                Math.round(world.margin()),
                steps.isEmpty() ? "" : "    at: {condition: blood-flow, steps: [%s L/min]}\n".formatted(steps.get(1)));
    }
}
