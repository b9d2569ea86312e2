package comparand.benchmark;

import comparand.benchmark.Timed.Program;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * How long whole runs take beside programs that do only the unavoidable part, and how the cost grows. Writes a report that is kept
 * beside the tests; no part of a build.
 *
 * <pre>
 * mvn -P benchmark -DskipTests package exec:exec@speed
 * </pre>
 *
 * Needs a quiet machine and a quarter of an hour. Where there is a Python with openpyxl and reportlab, named by {@code PYTHON} or
 * found as {@code python3}, the demo is timed beside it too.
 */
final class SpeedReport {

    private static final Path REPORT = Path.of("src/test/resources/reports/speed.md");
    private static final String DEMO = "evidence/dossiers/small-oxygenators.yaml";
    private static final int TURNS = 3;
    private static final List<LargeLibrary.Size> SIZES = List.of(
            new LargeLibrary.Size(10, 100, 2, 2),
            new LargeLibrary.Size(100, 1000, 2, 25),
            new LargeLibrary.Size(1000, 10_000, 2, 250));

    /** Written by a person who looked at profiles; to be looked at again when the figures change. */
    private static final String MISSED = """
            ## What misses its aim, why, and what next

            - **Rows of a study.** A row is looked at by every rule that its columns concern, joined to what describes it, counted by
              centre, device and step, held against the label, and given to each metric with its conditions; the bare parse adds up
              numbers. Profiles (JFR) of the first version found the rules (57 %): each of some ninety looked at every row, though most are
              about columns the file does not have; exact factors between units, worked out in fractions for every number; groups found by
              texts made for every row. Now rules rest that ask nothing of a row, factors and groups are found once, plain cells are read
              without a pattern, names of members are one text each; a second thread reads ahead and looks at the rows by the rules; and
              the launcher starts the compiler for long runs where a data file is beyond 25 MB (both columns have it). What is left is
              spread thin over maps from names to numbers, and objects made for every number. Next: a batch of rows as one array a
              quantity, with rules and sums over arrays.
            - **The demo beside Python.** The script is given every cell worked out, and only sets it; the tool reads, checks, computes,
              compares, puts together, plans and words it first, in a program that is not warm: class loading and code that runs once are
              more than half. A profile found a quarter of the time in one place, the rules of Gauss and Legendre, worked out anew for each
              tolerance interval; now once. Files are written side by side, which takes a quarter off a build for all readers and little
              off this one: the workbook alone takes longer than all the rest, 0.8 s in the library that writes it, whether its classes are
              loaded before or not. Next: documents put together side by side, and an image of the warm program where the Java at
              hand has one.
            - **The workbook.** What the bare writer does not do is to make the table first: each cell is a value of a finished document,
              and half a million of them are a fifth of the time. Styles are found by how a number is printed, and short numbers are not
              written out to see how tall their row is, which gave little. Next: rows of a document that are made when they are asked for.
            - **A library.** Half of what is left is the YAML library itself; then binding. Found and mended: units read anew for every
              quantity, constructors looked up for every record, a pattern compiled for every number that is looked for in a quote, all
              values gathered anew for every dossier, groups compared with each other in pairs. Files are read side by side, and so
              rules run.
            - **A build in a library of 100,000 values** costs more than n log n (the last column): the outputs of four devices told all
              sources of the library and all that was found in them, on two thousand pages, in a heap that the library nearly fills. Now
              they hold what the dossier rests on, which halves the time. What is left beside the check is that the study of that library
              has more rows too, and the collector; and the value at 10,000 is a fifth of a second beyond the smallest, so that the last
              column says little. Next: sources that no dossier at hand asks for are let go once they are checked.
            - **A rebuild after a change** of a source that is beside the matter writes nothing; after any other it writes nearly everything,
              since the fingerprint of all inputs is printed on nearly every file. Next: a fingerprint for each document.
            """;

    private final Path folder;
    private final StringBuilder text = new StringBuilder();

    private SpeedReport(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        var folder = Files.createTempDirectory("comparand-speed");
        try {
            Files.createDirectories(REPORT.getParent());
            Files.writeString(REPORT, new SpeedReport(folder).report());
        } finally {
            delete(folder);
        }
    }

    private String report() throws IOException {
        say("# Speed");
        say("");
        say("Made by `mvn -P benchmark -DskipTests package exec:exec@speed` (`comparand.benchmark.SpeedReport`); whole processes from"
                + " start to end, wall-clock seconds, median of %d turns after one that is not counted (fastest to slowest). What is"
                        .formatted(TURNS)
                + " set beside each other ran in turns. Everything of the tool ran with `-Xmx512m`; what needs more stops it.");
        say("");
        say("Java %s, %d processors, %s."
                .formatted(
                        Runtime.version(), Runtime.getRuntime().availableProcessors(), System.getProperty("os.name")));
        say("");
        say("## Beside the unavoidable");
        say("");
        say("| what | the tool | beside it | ratio | aimed at |");
        say("|---|---|---|---|---|");
        besides();
        say("");
        say(MISSED);
        Files.writeString(REPORT, text);
        say("## The tool alone");
        say("");
        say("| what | seconds |");
        say("|---|---|");
        alone();
        say("");
        say("## How the cost grows");
        say("");
        say("`check` of a library, and `build --for evidence` of one of its dossiers (4 devices, their published values among all"
                + " others). The last columns are the seconds beyond those of the smallest library, over n log n, as multiples of the"
                + " value at 10,000: where cost grows like n log n they stay at 1.");
        say("");
        say("| values | sources | devices | dossiers | check | build | check/(n log n) | build/(n log n) |");
        say("|---|---|---|---|---|---|---|---|");
        growth();
        Files.writeString(REPORT, text);
        say("");
        say("## Parts, by JMH");
        say("");
        say("Single shots in a warm machine of its own, seconds; `-Dbenchmark=org.openjdk.jmh.Main` runs these alone.");
        say("");
        say("| part | seconds | ± (99.9 %) |");
        say("|---|---|---|");
        parts();
        return text.toString();
    }

    private void besides() throws IOException {
        var department = LargeLibrary.write(folder.resolve("department"), LargeLibrary.Size.OF_A_DEPARTMENT)
                .getParent()
                .getParent();
        pair(
                "`check` of 20,000 values in 2,000 sources, 200 devices, 50 dossiers; a bare load of the same files with the same"
                        + " YAML library",
                Timed.tool("check", department.toString()),
                Timed.beside(1, BareYaml.class, department.toString()),
                "1.5");
        var study = LargeStudy.write(folder.resolve("study"), "bench", 1_000_000)
                .getParent()
                .getParent();
        pair(
                "`check` of a study of 1,000,000 rows of 20 columns, two metrics; a bare CSV parse with numbers",
                Timed.tool("check", study.toString()),
                Timed.beside(4, BareRows.class, study.resolve("studies/example-bench/runs.csv").toString()),
                "1.5");
        pair(
                "a workbook of 20,000 × 25 styled cells; the bare streaming writer of the same library",
                Timed.beside(1, Cells.class, folder.resolve("ours.xlsx").toString()),
                Timed.beside(1, BareCells.class, folder.resolve("bare.xlsx").toString()),
                "1.2");
        python();
    }

    private void python() throws IOException {
        var python = System.getenv().getOrDefault("PYTHON", "python3");
        var script = "src/benchmark/python/two_tables.py";
        var out = folder.resolve("demo");
        Timed.tool("build", DEMO, "--for", "evidence", "--out", out.toString()).run();
        var cells = folder.resolve("cells.json").toString();
        try {
            Timed.process(
                            List.of(python, script),
                            "cells",
                            out.resolve("small-oxygenators/evidence-workbook.xlsx").toString(),
                            cells)
                    .run();
        } catch (IOException | IllegalStateException none) {
            say("| `build` of the demo (xlsx, pdf, json); the same cells by a short Python script | not measured: no Python with openpyxl and"
                    + " reportlab | | | 1.0 |");
            return;
        }
        pair(
                "`build` of the demo (xlsx, pdf, json), every file written anew; the same cells as xlsx and pdf by a Python script of 60"
                        + " lines that is given them worked out (`" + script + "`)",
                anew(out, "--for", "evidence"),
                Timed.process(List.of(python, script), "write", cells, folder.toString()),
                "1.0");
    }

    private void alone() throws IOException {
        var out = folder.resolve("demo-all");
        line("`check` of the demo", Timed.tool("check", "evidence"));
        line("`build` of the demo for all readers, every file written anew", anew(out));
        line("the same once more, nothing changed", Timed.tool("build", DEMO, "--out", out.toString()));
        line("`trace` of one value of the demo", Timed.tool("trace", DEMO, "B05"));
        line(
                "`build --for evidence` of the study of 1,000,000 rows",
                anew(folder.resolve("study-out"), folder.resolve("study/dossiers/example.yaml"), "--for", "evidence"));
    }

    private Program anew(Path out, String... arguments) {
        return anew(out, Path.of(DEMO), arguments);
    }

    private static Program anew(Path out, Path dossier, String... arguments) {
        var command = new ArrayList<>(List.of("build", dossier.toString(), "--out", out.toString(), "--anew"));
        command.addAll(List.of(arguments));
        return Timed.tool(command.toArray(String[]::new));
    }

    private void growth() throws IOException {
        var checks = new double[SIZES.size()];
        var builds = new double[SIZES.size()];
        for (int i = 0; i < SIZES.size(); i++) {
            var dossier = LargeLibrary.write(folder.resolve("size-" + i), SIZES.get(i));
            checks[i] = Timed.median(
                    Timed.alone(2, Timed.tool("check", dossier.getParent().getParent().toString())));
            builds[i] = Timed.median(Timed.alone(2, anew(folder.resolve("out-" + i), dossier, "--for", "evidence")));
        }
        for (int i = 0; i < SIZES.size(); i++) {
            var size = SIZES.get(i);
            say("| %,d | %,d | %,d | %d | %.2f | %.2f | %s | %s |"
                    .formatted(
                            size.values(),
                            size.papers(),
                            size.devices(),
                            size.dossiers(),
                            checks[i],
                            builds[i],
                            growth(checks, i),
                            growth(builds, i)));
        }
    }

    /** Seconds beyond the smallest over n log n, against the same at 10,000. */
    private static String growth(double[] seconds, int i) {
        int tenThousand = 1;
        return i == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        "%.2f",
                        (seconds[i] - seconds[0])
                                / (seconds[tenThousand] - seconds[0])
                                * added(tenThousand)
                                / added(i));
    }

    private static double added(int i) {
        double n = SIZES.get(i).values();
        double least = SIZES.get(0).values();
        return n * Math.log(n) - least * Math.log(least);
    }

    private void parts() {
        try {
            for (var result :
                    new Runner(new OptionsBuilder().include("comparand\\.benchmark\\..*").build()).run()) {
                var score = result.getPrimaryResult();
                var study = result.getParams().getParam("study");
                say("| %s%s | %.2f | %.2f |"
                        .formatted(
                                result.getParams().getBenchmark().replaceFirst(".*benchmark\\.", ""),
                                study == null ? "" : ", " + study,
                                score.getScore(),
                                score.getScoreError()));
            }
        } catch (RunnerException e) {
            throw new IllegalStateException(e);
        }
    }

    private void pair(String what, Program ours, Program other, String aim) throws IOException {
        var timed = Timed.inTurns(TURNS, ours, other);
        say("| %s | %s | %s | **%.2f** | %s |"
                .formatted(what, Timed.said(timed.ours()), Timed.said(timed.other()), timed.ratio(), aim));
    }

    private void line(String what, Program program) throws IOException {
        say("| %s | %s |".formatted(what, Timed.said(Timed.alone(TURNS, program))));
    }

    private void say(String line) {
        text.append(line).append('\n');
    }

    private static void delete(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(path -> {
                try {
                    Files.delete(path);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
