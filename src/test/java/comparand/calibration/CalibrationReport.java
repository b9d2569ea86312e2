package comparand.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws data whose truth is known, many times over, and writes how often each interval covers it and how often each verdict
 * errs. Takes minutes, so no part of a build; the report is kept beside the tests.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=comparand.calibration.CalibrationReport
 * </pre>
 */
public final class CalibrationReport {

    private static final Path REPORT = Path.of("src/test/resources/reports/calibration.md");

    private static final String REASONS = """

            Why, and what to do:

            - A difference by Welch and Satterthwaite has too many degrees of freedom too often where one side rests on few of
              its own (3 to 6 centres that differ, 3 to 8 cases) and the other on many; Holm inherits the error, because it
              looks further out into the tail. There the tool takes the reference of Cochran and Cox, which keeps 5 % at the
              price of width; the lines "Welch" show what it replaces.
            - The BCa bootstrap is too short up to a few dozen cases; the interval of Fieller holds for a ratio of sums.
            - The interval for a further source takes the variance between sources as known but for its degrees of freedom; with a
              small true variance, estimated as zero in many runs, it is too narrow, whatever the number of sources. The interval
              for an observed mean carries the uncertainty of that mean and holds.
            - An inverse prediction from a slope that is hardly clear covers less among the runs in which it is given at all:
              giving it only where the slope is clear selects steep slopes.
            """;

    private CalibrationReport() {}

    /** Runs every cell and writes the report. */
    public static void main(String[] args) throws IOException {
        var results = cells().parallelStream().map(Cell::run).toList();
        Files.createDirectories(REPORT.getParent());
        Files.writeString(REPORT, report(results));
    }

    static List<Cell> cells() {
        var cells = new ArrayList<Cell>();
        cells.addAll(MeanCells.cells());
        cells.addAll(CentreCells.cells());
        cells.addAll(PairCells.cells());
        cells.addAll(PoolCells.cells());
        cells.addAll(VerdictCells.cells());
        return cells;
    }

    static String report(List<Cell.Result> results) {
        var text = new StringBuilder("""
                # Calibration by simulation

                Data are drawn from a known truth; each line is the share of runs in which the event named happened. Seeded: the
                same program gives the same numbers. Nominal level 95 % (5 % of error) unless said. A claim counts as broken where
                the rate lies outside it by more than two standard errors of the simulation. Refused runs gave a reason in place
                of an interval and are left out of the rate. Proportions are not drawn but enumerated.

                Written by `mvn -q test-compile exec:java -Dexec.classpathScope=test \
                -Dexec.mainClass=comparand.calibration.CalibrationReport`.

                """);
        var broken = results.stream().filter(Cell.Result::broken).toList();
        text.append("## Where a method falls short\n\n");
        if (broken.isEmpty()) {
            text.append("Nowhere among the claims below.\n");
        }
        broken.forEach(r -> text.append("- ")
                .append(r.cell().section())
                .append("; ")
                .append(r.cell().setting())
                .append(": ")
                .append(r.cell().event())
                .append(String.format(
                        Locale.ROOT,
                        " in %.2f %%, claimed %s\n",
                        r.rate(),
                        r.cell().claim().words())));
        text.append(REASONS);
        text.append(ProportionCoverage.section());
        String section = "";
        for (var result : results) {
            if (!result.cell().section().equals(section)) {
                section = result.cell().section();
                text.append("\n## ").append(section).append("\n\n");
                text.append("| setting | event | claim, % | runs | refused | rate, % | ± SE | |\n");
                text.append("|---|---|---|--:|--:|--:|--:|---|\n");
            }
            text.append(result.line()).append('\n');
        }
        return text.toString();
    }
}
