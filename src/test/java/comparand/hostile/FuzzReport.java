package comparand.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A million changed inputs, spread over all readers. Takes from many minutes to an hour, so no part of a build; the report is
 * kept beside the tests, and what fails is left in {@code target/hostile}, to be mended and moved into the corpus.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.hostile.FuzzReport
 * </pre>
 *
 * With {@code -Dexec.args="20000"} it feeds so many and writes no report.
 */
public final class FuzzReport {

    static final Path REPORT = Path.of("src/test/resources/reports/fuzzing.md");
    private static final Path FAILED = Path.of("target/hostile");
    private static final long INPUTS = 1_000_000;
    private static final long SEED = 1;

    private FuzzReport() {}

    public static void main(String[] args) throws IOException {
        long all = args.length == 0 ? INPUTS : Long.parseLong(args[0]);
        long from = System.nanoTime();
        var folder = Files.createTempDirectory("comparand-fuzz");
        var runs = new FuzzedReaders(folder)
                .all().stream().map(r -> new Fuzzing(r, SEED)).toList();
        var watch = new Watch(runs, FAILED);
        watch.start();
        runs.parallelStream().forEach(run -> {
            run.run(Share.of(run.reader(), all));
            System.out.println(run.name() + ": " + run.inputs() + " inputs, "
                    + run.failures().size() + " failures");
        });
        watch.interrupt();
        for (var run : runs) {
            for (var failure : run.failures().entrySet()) {
                var name =
                        run.name() + "-" + Integer.toHexString(failure.getKey().hashCode());
                Files.createDirectories(FAILED);
                Files.write(FAILED.resolve(name), failure.getValue());
                System.out.println(name + ": "
                        + Oracle.judge(run.reader(), failure.getValue()).fault().orElse(failure.getKey()));
            }
        }
        if (args.length == 0) {
            Files.createDirectories(REPORT.getParent());
            Files.writeString(REPORT, report(runs, (System.nanoTime() - from) / 60_000_000_000L));
        }
    }

    private static String report(List<Fuzzing> runs, long minutes) throws IOException {
        return """
                # Hostile input

                Changed inputs, fed to every reader of the tool: bytes flipped, stretches deleted, doubled, repeated and taken from
                other inputs, words of the format and signs that mean something put in, numbers driven to extremes, lines moved with
                those indented under them; in workbooks the XML of the parts. The inputs begin with records of the demo and blank
                libraries. One of which something new is said, by the codes and wording of its findings, is changed further; so the
                search follows what the reader does, and does not look at which lines of it run.

                For every input a value or a finding must come of it and no exception; a finding must stand at a place the input has;
                memory asked for is bounded in proportion to the input; and read again, the same input must give the same findings.

                `library-` is one file of the blank library, with all that `check` and `plan` do with the whole of it. *Whole* are
                inputs that were read without a STOP. *Ways* are those that joined the ones changed further. *Failures* are the kinds of
                fault met in this run; what was mended of them since stands in the last table.

                Written by `mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.hostile.FuzzReport`,
                seed %d, %d inputs in all.

                Took %d minutes.

                | reader | inputs | whole | ways | kinds of findings | failures |
                |---|---:|---:|---:|---:|---:|
                %s
                ## Findings by code

                | code | inputs | in readers |
                |---|---:|---|
                %s
                ## Found by this and by hand, mended, and kept in `src/test/resources/corpus`

                | reader | input | what went wrong |
                |---|---|---|
                %s""".formatted(
                        SEED,
                        runs.stream().mapToLong(Fuzzing::inputs).sum(),
                        minutes,
                        runs.stream().map(FuzzReport::row).collect(Collectors.joining()),
                        codes(runs),
                        Corpus.listed().stream()
                                .map(k -> "| %s | `%s` | %s |\n".formatted(k.reader(), k.input(), k.wrong()))
                                .collect(Collectors.joining()));
    }

    private static String row(Fuzzing run) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d |\n",
                run.name(),
                run.inputs(),
                run.whole(),
                run.kept(),
                run.codes().size(),
                run.failures().size());
    }

    private static String codes(List<Fuzzing> runs) {
        var counts = new TreeMap<String, Integer>();
        var readers = new TreeMap<String, TreeSet<String>>();
        for (var run : runs) {
            run.codes().forEach((code, n) -> {
                counts.merge(code, n, Integer::sum);
                readers.computeIfAbsent(code, c -> new TreeSet<>()).add(run.name());
            });
        }
        return counts.entrySet().stream()
                .map(e -> "| `%s` | %d | %s |\n"
                        .formatted(e.getKey(), e.getValue(), String.join(", ", readers.get(e.getKey()))))
                .collect(Collectors.joining());
    }
}
