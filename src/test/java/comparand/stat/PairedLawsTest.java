package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Reductions within pairs, ratios, and resampling. */
class PairedLawsTest {

    @Provide
    Arbitrary<double[][]> pairs() {
        return Arbitraries.doubles()
                .between(1, 90)
                .ofScale(2)
                .array(double[].class)
                .ofSize(2)
                .array(double[][].class)
                .ofMinSize(3)
                .ofMaxSize(9);
    }

    private static double[] side(double[][] pairs, int which) {
        return Arrays.stream(pairs).mapToDouble(p -> p[which]).toArray();
    }

    @Property
    void unitsDoNotMatterToAReduction(
            @ForAll("pairs") double[][] pairs, @ForAll @DoubleRange(min = 0.01, max = 100) double unit) {
        var plain = new PairedReduction(side(pairs, 0), side(pairs, 1));
        var scaled = new PairedReduction(
                Arrays.stream(side(pairs, 0)).map(x -> x * unit).toArray(),
                Arrays.stream(side(pairs, 1)).map(x -> x * unit).toArray());

        assertThat(scaled.geometric(0.95).orElseThrow().value())
                .isCloseTo(plain.geometric(0.95).orElseThrow().value(), within(1e-9));
        assertThat(scaled.meanOfEach(0.95).interval().low())
                .isCloseTo(plain.meanOfEach(0.95).interval().low(), within(1e-6));
        assertThat(scaled.ratioOfSums().mean()).isCloseTo(plain.ratioOfSums().mean(), within(1e-9));
        assertThat(scaled.ratioOfSums().se()).isCloseTo(plain.ratioOfSums().se(), within(1e-9));
        assertThat(plain.geometric(0.95).orElseThrow().interval().high()).isLessThan(1);
    }

    @Property
    void fiellersLimitsAreWhereTheDifferenceIsNotClear(@ForAll("pairs") double[][] pairs) {
        var reduction = new PairedReduction(side(pairs, 0), side(pairs, 1));
        var limits = reduction.fieller(0.95);
        int n = pairs.length;
        double t = Quantiles.tTwoSided(0.95, n - 1);

        limits.value().ifPresent(interval -> {
            for (double ratio : new double[] {interval.low(), interval.high()}) {
                // at a limit R the mean of post - R pre is exactly t standard errors from zero
                var d = Moments.of(IntStream.range(0, n)
                        .mapToDouble(i -> pairs[i][1] - ratio * pairs[i][0])
                        .toArray());
                assertThat(Math.abs(d.mean())).isCloseTo(t * d.se(), within(1e-5 * (1 + Math.abs(ratio)) * 90));
            }
            assertThat(interval.contains(reduction.ratioOfSums().mean())).isTrue();
        });
        var pre = Moments.of(side(pairs, 0)).estimate();
        assertThat(limits.refusal().isPresent()).isEqualTo(pre.mean() <= t * pre.se());
    }

    @Test
    void theRatioOfSumsIsFiellersWhereTheMeanBeforeIsNotWellKnown() {
        double[] calm = {40, 41, 42, 43, 44, 45};
        double[] wild = {10, 90, 20, 80, 40, 70};
        double[] post = {19, 20, 21, 22, 24, 25};
        var a = new PairedReduction(calm, post);
        var b = new PairedReduction(wild, post);

        var linear = a.ratioOfSums().interval(0.95);
        assertThat(a.ofSums(0.95).orElseThrow().interval())
                .isEqualTo(new Interval(1 - linear.high(), 1 - linear.low()));
        var fieller = b.fieller(0.95).orElseThrow();
        assertThat(b.ofSums(0.95).orElseThrow().interval())
                .isEqualTo(new Interval(1 - fieller.high(), 1 - fieller.low()));
        assertThat(a.ofSums(0.95).orElseThrow().value()).isCloseTo(1 - 131 / 255.0, within(1e-12));
        assertThat(new PairedReduction(new double[] {1, 100}, new double[] {1, 2})
                        .ofSums(0.95)
                        .refusal())
                .contains(Refusal.UNBOUNDED);
    }

    @Test
    void pairsThatAreNoneAreRefused() {
        assertThatThrownBy(() -> new PairedReduction(new double[] {1, 2}, new double[] {1}))
                .hasMessageContaining("not pairs");
        assertThatThrownBy(() -> new PairedReduction(new double[] {1}, new double[] {1}))
                .hasMessageContaining("not pairs");
        assertThatThrownBy(() -> new PairedReduction(new double[] {1, 0}, new double[] {1, 1}))
                .hasMessageContaining("above zero");
        assertThat(new PairedReduction(new double[] {1, 2}, new double[] {1, 0})
                        .geometric(0.95)
                        .refusal())
                .contains(Refusal.NOT_POSITIVE);
    }

    @Test
    void aSeededBootstrapComesNearTheOneOfAllResamplesAndIsTheSameTwice() {
        double[][] pairs = {{42, 19}, {55, 20}, {38, 21}, {61, 22}, {47, 24}, {70, 25}};
        double[][] twice = Arrays.copyOf(pairs, 12);
        System.arraycopy(pairs, 0, twice, 6, 6);
        ToDoubleFunction<int[]> ratio =
                cases -> Arrays.stream(cases).mapToDouble(c -> twice[c][1]).sum()
                        / Arrays.stream(cases).mapToDouble(c -> twice[c][0]).sum();

        var a = BcaBootstrap.of(12, ratio, BcaBootstrap.RESAMPLES, 42, 0.95).orElseThrow();
        var b = BcaBootstrap.of(12, ratio, BcaBootstrap.RESAMPLES, 42, 0.95).orElseThrow();
        var other = BcaBootstrap.of(12, ratio, BcaBootstrap.RESAMPLES, 43, 0.95).orElseThrow();

        assertThat(a).isEqualTo(b).isNotEqualTo(other);
        // scipy.stats.bootstrap (SciPy 1.17.1), method BCa, 299 999 resamples: 0.38257 to 0.46667
        assertThat(a.low()).isCloseTo(LOW, within(0.003));
        assertThat(a.high()).isCloseTo(HIGH, within(0.003));
        assertThat(other.low()).isCloseTo(LOW, within(0.003));
    }

    private static final double LOW = 0.3826;
    private static final double HIGH = 0.4667;

    @Test
    void aBootstrapIsRefusedWhereItSaysNothing() {
        ToDoubleFunction<int[]> constant = cases -> 3;
        ToDoubleFunction<int[]> length = cases -> cases.length == 10 && cases[9] == 9 && cases[0] == 0 ? 9 : 1;

        assertThat(BcaBootstrap.of(9, constant, 99, 1, 0.95).refusal()).contains(Refusal.TOO_FEW_VALUES);
        assertThat(BcaBootstrap.of(10, constant, 99, 1, 0.95).refusal()).contains(Refusal.NO_SPREAD);
        assertThat(BcaBootstrap.limits(new double[] {1, 1, 1}, 2, new double[] {1, 2, 3}, 0.95)
                        .refusal())
                .contains(Refusal.OUTSIDE_ITS_RESAMPLES);
        assertThat(BcaBootstrap.limits(new double[] {4, 4, 4}, 2, new double[] {1, 2, 3}, 0.95)
                        .refusal())
                .contains(Refusal.OUTSIDE_ITS_RESAMPLES);
        assertThat(length.applyAsDouble(new int[] {1})).isEqualTo(1);
    }

    @Test
    void withoutBiasAndAccelerationTheLimitsAreTheQuantiles() {
        double[] resampled = IntStream.rangeClosed(-500, 500).asDoubleStream().toArray();

        var limits =
                BcaBootstrap.limits(resampled, 0, new double[] {-1, 0, 1}, 0.95).orElseThrow();

        assertThat(limits.z0()).isZero();
        assertThat(limits.a()).isZero();
        assertThat(limits.lowShare()).isCloseTo(0.025, within(1e-9));
        assertThat(limits.highShare()).isCloseTo(0.975, within(1e-9));
        // the value at (1001 + 1) p, counted from one
        assertThat(limits.interval().low()).isCloseTo(1002 * 0.025 - 501, within(1e-6));
        assertThat(limits.interval().high()).isCloseTo(1002 * 0.975 - 501, within(1e-6));
    }

    @Test
    void theWordsOfTheGeneratorAreThoseOfSplitMix64() {
        // the reference implementation of the generator, seed 1234567 (from memory)
        var random = SeededRandom.of(1234567);

        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("6457827717110365317");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("3203168211198807973");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("9817491932198370423");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("4593380528125082431");
        assertThat(Long.toUnsignedString(random.nextLong())).isEqualTo("16408922859458223821");
    }
}
