package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a local mean speaks for, and whose spread it takes. */
class LocalMeanTest {

    @Test
    void onlyCasesOfOneCentreTellOfAFurtherCase() {
        double[] runs = {63, 65, 68, 61};
        var unit = LocalMean.ofOneUnit(runs);
        var centre = LocalMean.of(List.of(runs), 0.95).orElseThrow();

        // the same numbers, and another thing to be said of them
        assertThat(unit.interval(0.95)).isEqualTo(centre.interval(0.95));
        assertThat(unit.rule()).isEqualTo(LocalMean.Rule.ONE_UNIT);
        assertThat(unit.cases()).isEqualTo(4);
        assertThat(unit.coversFurther()).isFalse();
        assertThat(centre.coversFurther()).isTrue();
        assertThat(LocalMean.of(List.of(runs, new double[] {70, 72, 69}), 0.95)
                        .orElseThrow()
                        .coversFurther())
                .isFalse();
        assertThat(LocalMean.Rule.values())
                .allSatisfy(rule -> assertThat(rule.formula()).containsAnyOf("SE", "√"));
    }

    @Test
    void centresWithManyCasesKeepTheirOwnSdWhereTheseAreMoreThanTwofoldApart() {
        assertThat(meanOf(4, 7)).isCloseTo(mean(false, 4, 7), within(1e-12));
        assertThat(meanOf(4, 9)).isCloseTo(mean(true, 4, 9), within(1e-12));
        assertThat(mean(true, 4, 9)).isNotCloseTo(mean(false, 4, 9), within(0.05));
    }

    private static double meanOf(double smallest, double largest) {
        return LocalMean.of(tenEach(smallest, largest), 0.95)
                .orElseThrow()
                .estimate()
                .mean();
    }

    /** The mean over centres with their own variances, or with the common one. */
    private static double mean(boolean own, double smallest, double largest) {
        var centres = tenEach(smallest, largest);
        double common = OneWay.of(centres).meanSquareWithin();
        var moments = centres.stream().map(Moments::of).toList();
        var effects = Effects.of(
                moments.stream().mapToDouble(Moments::mean).toArray(),
                moments.stream()
                        .mapToDouble(m -> (own ? m.sd() * m.sd() : common) / 10)
                        .toArray());
        return RandomEffects.of(effects, BetweenVariance.PAULE_MANDEL).mean();
    }

    /** Three centres of ten cases around 50, 53 and 60, two with the smaller SD and one with the larger. */
    private static List<double[]> tenEach(double smallest, double largest) {
        double[] shape = {-9, -7, -5, -3, -1, 1, 3, 5, 7, 9};
        double sd = Moments.of(shape).sd();
        return List.of(
                Arrays.stream(shape).map(x -> 50 + x / sd * smallest).toArray(),
                Arrays.stream(shape).map(x -> 53 + x / sd * smallest).toArray(),
                Arrays.stream(shape).map(x -> 60 + x / sd * largest).toArray());
    }
}
