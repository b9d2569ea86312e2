package comparand.simulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Simulated libraries, from files to answers, and how often the answers are wrong. Takes a minute or two, so no part of a
 * build; the report is kept beside the tests.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.simulation.WholeRunReport
 * </pre>
 *
 * With {@code -Dexec.args="17 FOLDER"} it leaves library 17 in a folder and prints what is said of each of its pairs.
 */
public final class WholeRunReport {

    static final Path REPORT = Path.of("src/test/resources/reports/whole-run.md");
    static final int LIBRARIES = 2000;
    /** So many of the first are drawn again by a test. */
    static final int SLICE = 60;

    private WholeRunReport() {}

    /** Writes the report, or one library. */
    public static void main(String[] args) throws IOException {
        if (args.length == 2) {
            Judge.in(Path.of(args[1]), Integer.parseInt(args[0])).forEach(WholeRunReport::print);
            return;
        }
        Files.createDirectories(REPORT.getParent());
        Files.writeString(REPORT, report(LIBRARIES, Judge.libraries(LIBRARIES)));
    }

    private static void print(Judged pair) {
        System.out.printf(
                Locale.ROOT,
                "%s %s: truly %+.1f, margin %.0f mmHg; %s%s; tool %s; side by side %s\n",
                pair.kind(),
                pair.published().map(Published::id).orElse(""),
                pair.truth().difference(),
                pair.truth().margin(),
                pair.cause().map(Cause::words).orElse("two devices"),
                pair.made().map(m -> ", " + m).orElse(""),
                pair.tool(),
                pair.naive().map(Reading::toString).orElse("nothing"));
    }

    static String report(int libraries, List<Judged> pairs) {
        return head(libraries) + slice(pairs) + SummaryTables.all(pairs) + DetailTables.all(pairs) + shortfalls(pairs);
    }

    private static String head(int libraries) {
        return """
                # Wrong answers in whole runs

                %d simulated libraries, written as files and read by the tool and by a naive reader. One device is tested at home,
                on the bench or in one to four hospitals; six sources print its pressure drop; the device in use today is tested
                too in half of them. The true pressure drop is `(a + f) μ/μ₀ Q + b Q²`, with the viscosity of the temperature and
                haemoglobin of the test. The truth of a pair is the difference of the two **under the same conditions**: none in
                half of all pairs, else half the margin, just the margin, or twice it. In one or two hospitals it is the truth of
                these hospitals, from three on of all hospitals like them.

                The naive reader sets numbers side by side: units converted, conditions not looked at but for the nearest step of
                flow, every row independent, ± a standard deviation (so is half of a printed range), a bare figure or a limit exact;
                Welch's or Student's 95 %% interval, read against the same margin, in the same sentences.

                Wrong is *higher* or *lower* where there is no difference or the other one (with *a difference, smaller than m* the
                sign of the difference counts); *no difference as large as m* or *smaller than m* where it is as large; *by more than
                the margin* where it is not. Every ± is one standard error, counted over libraries, because the pairs of a library
                share its local results. Seeded: the same program gives the same numbers.

                Written by `mvn -q test-compile exec:java -Dexec.classpathScope=test \
                -Dexec.mainClass=comparand.simulation.WholeRunReport`.
                """.formatted(libraries);
    }

    /** What a test finds again. */
    static String slice(List<Judged> pairs) {
        var first = pairs.stream().filter(p -> p.library() <= SLICE).toList();
        return "\nIn libraries 1 to %d: %d pairs; the tool gives %d answers, %d wrong; side by side %d, %d wrong.\n"
                .formatted(
                        SLICE,
                        first.size(),
                        Reader.TOOL.answers(first).hits(),
                        Reader.TOOL.wrong(first).hits(),
                        Reader.NAIVE.answers(first).hits(),
                        Reader.NAIVE.wrong(first).hits());
    }

    private static String shortfalls(List<Judged> pairs) {
        var text = new StringBuilder("""

                ## Where the tool falls short, and why

                A direction found in more than one in twenty pairs without a true difference, by two standard errors.

                """);
        var all = Watched.all().stream().filter(w -> w.fallsShort(pairs)).toList();
        all.forEach(w -> text.append("- **%s**, %s %%: %s\n"
                .formatted(w.words(), w.falseDirection(pairs).text(), w.reason())));
        if (all.isEmpty()) {
            text.append("Nowhere among the rows above.\n");
        }
        text.append("\nMore than one in twenty by less than that, which may be chance:\n\n");
        Watched.all().stream()
                .filter(w -> w.isOpen(pairs))
                .forEach(w -> text.append("- %s, %s %%: %s\n"
                        .formatted(w.words(), w.falseDirection(pairs).text(), w.reason())));
        return text.toString();
    }
}
