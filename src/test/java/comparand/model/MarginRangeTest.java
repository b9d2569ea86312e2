package comparand.model;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.stat.Interval;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** An answer is the same for every margin in its range, and another for the margins outside of it. */
class MarginRangeTest {

    @Property
    void theRangeHoldsTheMarginsThatGiveTheSameVerdict(
            @ForAll @DoubleRange(min = -20, max = 20) double low,
            @ForAll @DoubleRange(min = 0, max = 20) double width,
            @ForAll @DoubleRange(min = 0.01, max = 50) double margin,
            @ForAll @DoubleRange(min = 0.01, max = 50) double other) {
        var interval = new Interval(low, low + width);
        var verdict = verdict(interval, margin);
        var range = MarginRange.of(verdict, interval);

        assertThat(margin).isBetween(range.above(), range.below());
        if (range.above() < other && other < range.below()) {
            assertThat(verdict(interval, other)).isEqualTo(verdict);
        } else if (other < range.above() || other > range.below()) {
            assertThat(verdict(interval, other)).isNotEqualTo(verdict);
        }
    }

    private static Verdict verdict(Interval interval, double margin) {
        return Verdict.of(interval, Optional.of(new Margin(margin, "m", "")));
    }
}
