package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Medians with extremes and quartiles: equivariance, the guard, and the numbers that a normal sample would show. */
class MedianSummaryTest {

    @Property
    void symmetricNumbersHaveTheirMedianAsMean(
            @ForAll @DoubleRange(min = -100, max = 100) double median,
            @ForAll @DoubleRange(min = 0.1, max = 10) double half,
            @ForAll @IntRange(min = 10, max = 300) int n) {
        double wide = 2 * half;
        for (MedianSummary s : List.of(
                new MedianAndRange(median - wide, median, median + wide, n),
                new MedianAndQuartiles(median - half, median, median + half, n),
                new FiveNumbers(median - wide, median - half, median, median + half, median + wide, n))) {
            assertThat(s.mean()).isCloseTo(median, within(1e-9));
            assertThat(s.meanAfterWan()).isCloseTo(median, within(1e-9));
            assertThat(s.looksSkewed()).isFalse();
            var converted = MedianConversion.of(s).orElseThrow();
            assertThat(converted.scale()).isEqualTo(IntervalConversion.Scale.PLAIN);
            assertThat(converted.moments()).isEqualTo(new Moments(s.mean(), s.sd(), n));
        }
    }

    @Property
    void shiftAndScaleGoThrough(
            @ForAll @DoubleRange(min = -100, max = 100) double shift,
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale,
            @ForAll @IntRange(min = 5, max = 300) int n) {
        var plain = new FiveNumbers(1, 2, 3.5, 4, 7, n);
        var moved = new FiveNumbers(
                shift + scale, shift + 2 * scale, shift + 3.5 * scale, shift + 4 * scale, shift + 7 * scale, n);

        assertThat(moved.mean()).isCloseTo(shift + scale * plain.mean(), within(1e-9));
        assertThat(moved.sd()).isCloseTo(scale * plain.sd(), within(1e-9));
        assertThat(moved.sdAfterWan()).isCloseTo(scale * plain.sdAfterWan(), within(1e-9));
        assertThat(moved.looksSkewed()).isEqualTo(plain.looksSkewed());
    }

    @Test
    void quantilesOfANormalSampleGiveItsSpreadBack() {
        // the expected quartiles and extremes of many standard normal values
        int n = 10_001;
        double q = Quantiles.z(0.75);
        double end = SpreadConversion.expectedRange(n) / 2;

        assertThat(new MedianAndQuartiles(-q, 0, q, n).sd()).isCloseTo(1, within(1e-3));
        assertThat(new MedianAndRange(-end, 0, end, n).sd()).isCloseTo(1, within(1e-9));
        assertThat(new FiveNumbers(-end, -q, 0, q, end, n).sd()).isCloseTo(1, within(0.005));
        assertThat(SpreadConversion.sdFromQuartiles(-q, q)).isCloseTo(1, within(1e-12));
        // IQR/1.349, as the Cochrane Handbook 6.5.2.5 has it
        assertThat(SpreadConversion.sdFromQuartiles(0, 1)).isCloseTo(1 / 1.349, within(1e-4));
    }

    @Test
    void theGuardIsThatOfThePaper() {
        // |a+b-2m|/(b-a) against 1.01/ln(n+9) + 2.43/(n+1): 0.3686 for n = 27
        assertThat(SpreadConversion.extremesLookSkewed(0, 0.5 - 0.1840, 1, 27)).isFalse();
        assertThat(SpreadConversion.extremesLookSkewed(0, 0.5 - 0.1845, 1, 27)).isTrue();
        assertThat(1.01 / Math.log(36) + 2.43 / 28).isCloseTo(0.3686, within(5e-5));
    }

    @Test
    void skewedNumbersAreConvertedOnTheirLogarithmsOrNotAtAll() {
        var skewed = new FiveNumbers(1, 3, 9, 27, 81, 60);
        var logs = skewed.logarithms().orElseThrow();

        assertThat(skewed.looksSkewed()).isTrue();
        var converted = MedianConversion.of(skewed).orElseThrow();
        assertThat(converted.scale()).isEqualTo(IntervalConversion.Scale.LOGARITHMIC);
        assertThat(converted.moments()).isEqualTo(new Moments(logs.mean(), logs.sd(), 60));
        assertThat(converted.moments().mean()).isCloseTo(Math.log(9), within(1e-9));

        assertThat(MedianConversion.of(new MedianAndQuartiles(-1, 0, 9, 60)).refusal())
                .contains(Refusal.SKEWED);
        assertThat(MedianConversion.of(new MedianAndQuartiles(1, 1.01, 90, 60)).refusal())
                .contains(Refusal.SKEWED);
        assertThat(MedianConversion.of(new MedianAndRange(1, 3, 9, 400))
                        .orElseThrow()
                        .scale())
                .isEqualTo(IntervalConversion.Scale.LOGARITHMIC);
        assertThat(MedianConversion.of(new MedianAndQuartiles(1, 3, 9, 400))
                        .orElseThrow()
                        .scale())
                .isEqualTo(IntervalConversion.Scale.LOGARITHMIC);
        assertThat(MedianConversion.of(new MedianAndRange(0, 1, 9, 400)).refusal())
                .contains(Refusal.SKEWED);
        assertThat(MedianConversion.of(new FiveNumbers(0, 1, 2, 9, 90, 400)).refusal())
                .contains(Refusal.SKEWED);
    }

    @Test
    void eitherPairOfFiveNumbersMayBeSkewed() {
        assertThat(new FiveNumbers(0, 4, 5, 6, 10, 100).looksSkewed()).isFalse();
        assertThat(new FiveNumbers(4, 4.5, 5, 5.5, 30, 100).looksSkewed()).isTrue();
        assertThat(new FiveNumbers(0, 4.9, 5, 7, 10, 100).looksSkewed()).isTrue();
    }

    @Test
    void tooFewValuesAreRefused() {
        assertThat(MedianConversion.of(new MedianAndRange(1, 2, 3, 4)).refusal())
                .contains(Refusal.TOO_FEW_VALUES);
        assertThat(MedianConversion.of(new MedianAndRange(1, 2, 3, 5)).refusal())
                .isEmpty();
        assertThat(MedianConversion.of(new MedianAndQuartiles(1, 2, 3, 7)).refusal())
                .contains(Refusal.TOO_FEW_VALUES);
        assertThat(MedianConversion.of(new MedianAndQuartiles(1, 2, 3, 8)).refusal())
                .isEmpty();
        assertThat(MedianConversion.of(new FiveNumbers(0, 1, 2, 3, 4, 4)).refusal())
                .contains(Refusal.TOO_FEW_VALUES);
        assertThat(MedianConversion.of(new FiveNumbers(0, 1, 2, 3, 4, 5)).refusal())
                .isEmpty();
    }

    @Test
    void numbersOutOfOrderAreRefused() {
        assertThatThrownBy(() -> new MedianAndRange(2, 1, 3, 9)).hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndRange(1, 4, 3, 9)).hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndQuartiles(2, 1, 3, 9)).hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndQuartiles(1, 4, 3, 9)).hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndQuartiles(Double.NaN, 4, 3, 9)).hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndQuartiles(Double.NEGATIVE_INFINITY, 1, 3, 9))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> new MedianAndRange(0, 1, Double.POSITIVE_INFINITY, 9))
                .hasMessageContaining("not in order");
        for (int swap = 0; swap < 4; swap++) {
            double[] x = {1, 2, 3, 4, 5};
            x[swap] += 1.5;
            assertThatThrownBy(() -> new FiveNumbers(x[0], x[1], x[2], x[3], x[4], 9))
                    .hasMessageContaining("not in order");
        }
        assertThatThrownBy(() -> new FiveNumbers(Double.NEGATIVE_INFINITY, 1, 2, 3, 4, 9))
                .hasMessageContaining("not in order");
        assertThatThrownBy(() -> new FiveNumbers(1, 2, 3, 4, 5, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new MedianAndRange(1, 2, 3, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new MedianAndQuartiles(1, 2, 3, 1)).hasMessageContaining("at least 2");
    }

    @Test
    void proportionsKnowTheirIntervals() {
        var some = new Proportion(4, 20);
        assertThat(some.intervals(0.95)).containsOnlyKeys(ProportionInterval.WILSON);
        assertThat(new Proportion(0, 20).intervals(0.95))
                .containsOnlyKeys(ProportionInterval.WILSON, ProportionInterval.EXACT);
        assertThat(new Proportion(20, 20).intervals(0.95))
                .containsOnlyKeys(ProportionInterval.WILSON, ProportionInterval.EXACT);
        assertThatThrownBy(() -> new Proportion(3, 2)).hasMessageContaining("0 <= x <= n");
        assertThatThrownBy(() -> new Proportion(-1, 2)).hasMessageContaining("0 <= x <= n");
        assertThatThrownBy(() -> new Proportion(0, 0)).hasMessageContaining("0 <= x <= n");
    }
}
