package comparand.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.stat.Derived;
import comparand.stat.ProportionInterval;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The calibration itself, on cells whose rate is known, and the report that is kept. */
class CalibrationTest {

    @Test
    void aCellFindsTheRateThatItsEventHas() {
        var cell = new Cell("s", "t", "e", Claim.AT_MOST_5, 20_000, d -> Derived.of(d.uniform(0, 1) < 0.2));
        var result = cell.run();

        assertThat(result.rate()).isBetween(20 - 4 * 0.283, 20 + 4 * 0.283);
        assertThat(result.error()).isBetween(0.27, 0.29);
        assertThat(result.broken()).isTrue();
        assertThat(cell.run()).isEqualTo(result);
        assertThat(result.line()).endsWith("**falls short** |");
    }

    @Test
    void theExactIntervalOfAProportionNeverCoversLessThanItSays() {
        for (int s = 1; s < 100; s++) {
            assertThat(ProportionCoverage.coverage(ProportionInterval.EXACT, 13, s / 100.0))
                    .isGreaterThanOrEqualTo(0.95);
        }
    }

    @Test
    void theReportKeptHoldsEveryCell() throws IOException {
        var report = Files.readString(Path.of("src/test/resources/reports/calibration.md"));
        var cells = CalibrationReport.cells();

        assertThat(cells).hasSizeGreaterThan(150);
        assertThat(cells)
                .allSatisfy(c -> assertThat(report)
                        .contains("| %s | %s | %s | %d |"
                                .formatted(c.setting(), c.event(), c.claim().words(), c.runs())));
    }
}
