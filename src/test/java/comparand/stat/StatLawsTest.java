package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws the methods obey whatever the numbers, and the edges at which they refuse. */
class StatLawsTest {

    @Property
    void aDifferenceChangesItsSignWhenTheSidesAreSwapped(
            @ForAll @DoubleRange(min = -100, max = 100) double a,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sa,
            @ForAll @IntRange(min = 2, max = 60) int na,
            @ForAll @DoubleRange(min = -100, max = 100) double b,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sb,
            @ForAll @IntRange(min = 2, max = 60) int nb) {
        var one = MeanDifference.of(new Moments(a, sa, na).estimate(), new Moments(b, sb, nb).estimate());
        var two = MeanDifference.of(new Moments(b, sb, nb).estimate(), new Moments(a, sa, na).estimate());

        assertThat(two.value()).isEqualTo(-one.value());
        assertThat(two.interval(0.95).low()).isCloseTo(-one.interval(0.95).high(), within(1e-9));
        assertThat(one.p()).isCloseTo(two.p(), within(1e-12));
        assertThat(one.df()).isBetween(Math.min(na, nb) - 1 - 1e-9, na + nb - 2 + 1e-9);
    }

    @Property
    void theIntervalLeavesOutZeroExactlyWhenPIsBelowFivePerCent(
            @ForAll @DoubleRange(min = -10, max = 10) double d,
            @ForAll @DoubleRange(min = 0.5, max = 8) double s,
            @ForAll @IntRange(min = 3, max = 30) int n) {
        var difference = MeanDifference.of(new Moments(d, s, n).estimate(), new Moments(0, s, n).estimate());
        var interval = difference.interval(0.95);

        if (Math.abs(difference.p() - 0.05) > 1e-6) {
            assertThat(interval.contains(0)).isEqualTo(difference.p() > 0.05);
        }
    }

    @Property
    void shiftingAndScalingTheDataShiftsAndScalesTheMoments(
            @ForAll @Size(min = 2, max = 20) List<@DoubleRange(min = -50, max = 50) Double> data,
            @ForAll @DoubleRange(min = -1000, max = 1000) double shift,
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        var plain = Moments.of(data.stream().mapToDouble(x -> x).toArray());
        var moved = Moments.of(data.stream().mapToDouble(x -> shift + scale * x).toArray());

        assertThat(moved.mean()).isCloseTo(shift + scale * plain.mean(), within(1e-9));
        assertThat(moved.sd()).isCloseTo(scale * plain.sd(), within(1e-9));
    }

    @Property
    void standardErrorAndIntervalGiveBackTheStandardDeviation(
            @ForAll @DoubleRange(min = -100, max = 100) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 50) double sd,
            @ForAll @IntRange(min = 2, max = 99) int n) {
        var moments = new Moments(mean, sd, n);

        assertThat(SpreadConversion.sdFromSe(moments.se(), n)).isCloseTo(sd, within(1e-9 * sd));
        assertThat(SpreadConversion.sdFromInterval(moments.estimate().interval(0.95), n, 0.95))
                .isCloseTo(sd, within(1e-6 * sd));
    }

    @Property
    void exactProportionIntervalsContainTheShareAndMirror(
            @ForAll @IntRange(min = 1, max = 80) int n, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        int x = (int) Math.round(share * n);
        var interval = ProportionInterval.EXACT.of(x, n, 0.95);
        var mirrored = ProportionInterval.EXACT.of(n - x, n, 0.95);

        assertThat(interval.contains((double) x / n)).isTrue();
        assertThat(mirrored.low()).isCloseTo(1 - interval.high(), within(1e-9));
    }

    @Property
    void holmNeverLowersAPAndKeepsTheirOrder(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 1) Double> p) {
        var adjusted = Holm.adjust(p);

        for (int i = 0; i < p.size(); i++) {
            assertThat(adjusted.get(i)).isBetween(p.get(i), 1.0);
            for (int j = 0; j < p.size(); j++) {
                if (p.get(i) < p.get(j)) {
                    assertThat(adjusted.get(i)).isLessThanOrEqualTo(adjusted.get(j));
                }
            }
        }
    }

    @ParameterizedTest(name = "0 of {0}: up to {1} %")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"54, 6.6", "12, 26.5", "25, 13.7", "17, 19.5"})
    void withNoEventsTheUpperLimitIsOneMinusTheNthRootOfTwoAndAHalfPerCent(int n, double percent) {
        var upper = ProportionInterval.EXACT.of(0, n, 0.95).high();

        assertThat(upper).isCloseTo(1 - Math.pow(0.025, 1.0 / n), within(1e-12));
        assertThat(100 * upper).isCloseTo(percent, within(0.05));
    }

    @Test
    void aFigureCalibratedByTwoTicksIsReadWithItsUncertainty() {
        // 0 at picture point 612, 100 at 148, read at 357 to within 1.5: y = 54.957, u = |S| u √(1 + t² + (1-t)²)
        var reading = new AxisCalibration(612, 0, 148, 100, false).read(1.5, 357);

        assertThat(reading.value()).isCloseTo(100.0 * (612 - 357) / (612 - 148), within(1e-12));
        double t = (612.0 - 357) / (612 - 148);
        assertThat(reading.uncertainty())
                .isCloseTo(100.0 / 464 * 1.5 * Math.sqrt(1 + t * t + (1 - t) * (1 - t)), within(1e-12));
        assertThat(Math.round(reading.uncertainty() * 100) / 100.0).isEqualTo(0.4);
    }

    @Test
    void aLogarithmicAxisIsLinearInTheLogarithm() {
        var axis = new AxisCalibration(0, 1, 300, 1000, true);

        assertThat(axis.read(0.1, 100).value()).isCloseTo(10, within(1e-9));
        assertThat(axis.residualOf(200, 100)).isCloseTo(0, within(1e-12));
        assertThat(axis.residualOf(200, 200)).isCloseTo(Math.log10(2) / 3, within(1e-12));
    }

    @Test
    void whatIsNotDefinedIsRefused() {
        assertThatThrownBy(() -> new Moments(1, 1, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new Moments(Double.NaN, 1, 3)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Moments.of(1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new Interval(2, 1)).hasMessageContaining("upwards");
        assertThatThrownBy(() -> new Interval(Double.NaN, 1)).hasMessageContaining("upwards");
        assertThatThrownBy(() -> ProportionInterval.EXACT.of(3, 2, 0.95)).hasMessageContaining("0 <= x <= n");
        assertThatThrownBy(() -> ProportionInterval.WILSON.of(1, 2, 1.0)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> new AxisCalibration(1, 0, 1, 5, false)).hasMessageContaining("differ");
        assertThatThrownBy(() -> new AxisCalibration(1, 0, 2, 5, true)).hasMessageContaining("positive");
        assertThatThrownBy(() -> SpreadConversion.sdFromSe(1, 1)).hasMessageContaining("at least 2");
    }

    @Test
    void aSpreadOfNothingIsCertain() {
        var a = new Moments(5, 0, 4);

        assertThat(a.estimate().interval(0.95)).isEqualTo(new Interval(5, 5));
        assertThat(MeanDifference.of(a.estimate(), new Moments(5, 0, 3).estimate())
                        .p())
                .isEqualTo(1);
        assertThat(MeanDifference.of(a.estimate(), new Moments(4, 0, 3).estimate())
                        .p())
                .isEqualTo(0);
    }
}
