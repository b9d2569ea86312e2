package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The mean of cases in centres: which rule applies, and what the rules have in common. */
class CentreLawsTest {

    @Provide
    Arbitrary<List<double[]>> centres() {
        return Arbitraries.doubles()
                .between(-50, 50)
                .ofScale(3)
                .array(double[].class)
                .ofMinSize(2)
                .ofMaxSize(7)
                .list()
                .ofMinSize(3)
                .ofMaxSize(7);
    }

    @Provide
    Arbitrary<List<double[]>> balanced() {
        return Arbitraries.doubles()
                .between(-50, 50)
                .ofScale(3)
                .array(double[].class)
                .ofSize(4)
                .list()
                .ofMinSize(3)
                .ofMaxSize(7);
    }

    @Property
    void inABalancedDesignTheIntervalIsStudentsOnTheCentreMeansOrTheFloor(@ForAll("balanced") List<double[]> centres) {
        var means = centres.stream().mapToDouble(c -> Moments.of(c).mean()).toArray();
        var onMeans = Moments.of(means).estimate();
        var naive = Moments.of(centres.stream().flatMapToDouble(Arrays::stream).toArray())
                .estimate();

        var local = LocalMean.of(centres, 0.95).orElseThrow();

        assertThat(local.estimate().mean()).isCloseTo(onMeans.mean(), within(1e-9));
        double wider = Math.max(
                naive.interval(0.95).halfWidth(), onMeans.interval(0.95).halfWidth());
        assertThat(local.interval(0.95).halfWidth()).isCloseTo(wider, within(1e-6 * (1 + wider)));
    }

    @Property
    void theIntervalIsNeverNarrowerThanOverAllCases(@ForAll("centres") List<double[]> centres) {
        var all = centres.stream().flatMapToDouble(Arrays::stream).toArray();
        var local = LocalMean.of(centres, 0.9).orElseThrow();

        assertThat(local.interval(0.9).halfWidth())
                .isGreaterThanOrEqualTo(Moments.of(all).estimate().interval(0.9).halfWidth()
                        * (1 - 1e-12)
                        * (local.spread().isPresent() ? 1 : 0));
        assertThat(local.cases()).isEqualTo(all.length);
        assertThat(local.centreCount()).isEqualTo(centres.size());
    }

    @Property
    void shiftScaleAndOrderGoThrough(
            @ForAll("centres") List<double[]> centres,
            @ForAll @DoubleRange(min = -1000, max = 1000) double shift,
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale,
            @ForAll long seed) {
        var moved = new ArrayList<double[]>();
        centres.forEach(
                c -> moved.add(Arrays.stream(c).map(x -> shift + scale * x).toArray()));
        Collections.shuffle(moved, new Random(seed));

        var a = LocalMean.of(centres, 0.95).orElseThrow().interval(0.95);
        var b = LocalMean.of(moved, 0.95).orElseThrow().interval(0.95);

        assertThat(b.low()).isCloseTo(shift + scale * a.low(), within(1e-5 * scale * (1 + a.halfWidth())));
        assertThat(b.high()).isCloseTo(shift + scale * a.high(), within(1e-5 * scale * (1 + a.halfWidth())));
    }

    @Property
    void componentsFromValuesAndFromMomentsAgree(@ForAll("centres") List<double[]> centres) {
        var a = OneWay.of(centres);
        var b = OneWay.ofMoments(centres.stream().map(c -> Moments.of(c)).toList());

        assertThat(b.squaresBetween()).isCloseTo(a.squaresBetween(), within(1e-8));
        assertThat(b.squaresWithin()).isCloseTo(a.squaresWithin(), within(1e-8));
        assertThat(b.n0()).isEqualTo(a.n0());
        assertThat(b.grandMean()).isCloseTo(a.grandMean(), within(1e-9));
    }

    @Property
    void betweenAndWithinMakeUpTheTotal(@ForAll("centres") List<double[]> centres) {
        var a = OneWay.of(centres);
        var all = Moments.of(centres.stream().flatMapToDouble(Arrays::stream).toArray());

        assertThat(a.squaresBetween() + a.squaresWithin()).isCloseTo(all.sd() * all.sd() * (all.n() - 1), within(1e-7));
        assertThat(a.varianceBetween()).isEqualTo(Math.max(0, a.rawVarianceBetween()));
        if (a.squaresWithin() > 1e-6) {
            assertThat(a.iccInterval(0.95).contains(a.icc())).isTrue();
            assertThat(a.p()).isBetween(0.0, 1.0);
        }
    }

    @Property
    void restrictedLikelihoodIsTheAnalysisOfVarianceInABalancedDesign(@ForAll("balanced") List<double[]> centres) {
        var a = OneWay.of(centres);
        if (a.squaresWithin() > 1e-3) {
            var fit = RandomCentres.of(centres);

            assertThat(fit.mean()).isCloseTo(a.grandMean(), within(1e-9));
            assertThat(fit.varianceBetween()).isCloseTo(a.varianceBetween(), within(1e-6 * (1 + a.varianceBetween())));
            double within = a.rawVarianceBetween() > 0
                    ? a.meanSquareWithin()
                    : (a.squaresBetween() + a.squaresWithin()) / (a.n() - 1);
            assertThat(fit.varianceWithin()).isCloseTo(within, within(1e-6 * (1 + within)));
        }
    }

    @Test
    void oneCentreIsStudentsOverItsCases() {
        var local = LocalMean.of(List.of(new double[] {1, 2, 4}), 0.95).orElseThrow();

        assertThat(local.rule()).isEqualTo(LocalMean.Rule.ONE_CENTRE);
        assertThat(local.estimate()).isEqualTo(Moments.of(1, 2, 4).estimate());
        assertThat(local.spread()).isEmpty();
    }

    @Test
    void twoCentresAreWeighedByTheirCases() {
        double[] a = {1, 2, 4};
        double[] b = {10, 12, 11, 15, 9};
        var local = LocalMean.of(List.of(a, b), 0.95).orElseThrow();
        double va = Math.pow(3 / 8.0 * Moments.of(a).se(), 2);
        double vb = Math.pow(5 / 8.0 * Moments.of(b).se(), 2);

        assertThat(local.rule()).isEqualTo(LocalMean.Rule.THESE_TWO_CENTRES);
        assertThat(local.estimate().mean()).isCloseTo(64 / 8.0, within(1e-12));
        assertThat(local.estimate().se()).isCloseTo(Math.sqrt(va + vb), within(1e-12));
        assertThat(local.estimate().df()).isCloseTo((va + vb) * (va + vb) / (va * va / 2 + vb * vb / 4), within(1e-9));
        assertThat(local.centres()).hasSize(2);
    }

    @Test
    void aCentreOfOneCaseBorrowsTheSpreadOfTheOther() {
        var local = LocalMean.of(List.of(new double[] {7}, new double[] {1, 2, 4}), 0.95)
                .orElseThrow();

        assertThat(local.rule()).isEqualTo(LocalMean.Rule.THESE_TWO_CENTRES);
        assertThat(local.estimate().mean()).isEqualTo(3.5);
        assertThat(local.estimate().se()).isCloseTo(Moments.of(1, 2, 4).sd() / 2, within(1e-12));
        assertThat(local.estimate().df()).isEqualTo(2);
    }

    @Test
    void twoCentresWithoutSpreadAreCertain() {
        var local = LocalMean.of(List.of(new double[] {2, 2}, new double[] {4, 4}), 0.95)
                .orElseThrow();

        assertThat(local.interval(0.95)).isEqualTo(new Interval(3, 3));
    }

    @Test
    void whereThereIsNoSpreadWithinTheCentreMeansStandForThemselves() {
        var single = LocalMean.of(List.of(new double[] {1}, new double[] {3}, new double[] {8}), 0.95)
                .orElseThrow();
        var equal = LocalMean.of(List.of(new double[] {1, 1}, new double[] {3, 3, 3}, new double[] {8}), 0.95)
                .orElseThrow();

        assertThat(single.rule()).isEqualTo(LocalMean.Rule.CENTRE_MEANS);
        assertThat(equal.rule()).isEqualTo(LocalMean.Rule.CENTRE_MEANS);
        assertThat(single.estimate()).isEqualTo(Moments.of(1, 3, 8).estimate());
        assertThat(equal.estimate()).isEqualTo(single.estimate());
    }

    @Test
    void centresThatDifferAndCentresThatAgreeAreToldApart() {
        var differ = LocalMean.of(
                        List.of(new double[] {1, 2, 3}, new double[] {11, 12, 13}, new double[] {31, 32, 33}), 0.95)
                .orElseThrow();
        var agree = LocalMean.of(
                        List.of(new double[] {1, 2, 3}, new double[] {1, 2.1, 3}, new double[] {1, 1.9, 3}), 0.95)
                .orElseThrow();

        assertThat(differ.rule()).isEqualTo(LocalMean.Rule.RANDOM_CENTRES);
        assertThat(differ.estimate().df()).isEqualTo(2);
        assertThat(differ.spread().orElseThrow().tau2().low()).isPositive();
        assertThat(agree.rule()).isEqualTo(LocalMean.Rule.RANDOM_CENTRES_FLOOR);
        assertThat(agree.estimate().df()).isEqualTo(8);
        assertThat(agree.spread().orElseThrow().tau2().low()).isZero();
    }

    @Test
    void centresOfManyCasesWithUnlikeSpreadsKeepTheirOwn() {
        double[] calm = new double[10];
        double[] wild = new double[10];
        double[] middle = new double[10];
        Arrays.setAll(calm, i -> i % 2);
        Arrays.setAll(wild, i -> 50 + 9.0 * (i % 2));
        Arrays.setAll(middle, i -> 20 + 2.0 * (i % 2));

        var own = LocalMean.of(List.of(calm, wild, middle), 0.95).orElseThrow();
        var effects = Effects.ofEstimates(List.of(
                Moments.of(calm).estimate(),
                Moments.of(wild).estimate(),
                Moments.of(middle).estimate()));
        var common = LocalMean.of(List.of(calm, wild, Arrays.copyOf(middle, 9)), 0.95)
                .orElseThrow();

        assertThat(own.spread().orElseThrow().twoStage())
                .isEqualTo(RandomEffects.of(effects, BetweenVariance.PAULE_MANDEL));
        // nine cases in one centre: the common spread again
        double within = common.spread().orElseThrow().components().meanSquareWithin();
        var pooled = Effects.of(
                new double[] {
                    Moments.of(calm).mean(),
                    Moments.of(wild).mean(),
                    Moments.of(Arrays.copyOf(middle, 9)).mean()
                },
                new double[] {within / 10, within / 10, within / 9});
        assertThat(common.spread().orElseThrow().twoStage().tau2())
                .isCloseTo(BetweenVariance.PAULE_MANDEL.of(pooled), within(1e-9));
    }

    @Test
    void whatCannotBeEstimatedIsRefused() {
        assertThat(LocalMean.of(List.of(new double[] {3}), 0.95).refusal()).contains(Refusal.TOO_FEW_VALUES);
        assertThat(LocalMean.of(List.of(new double[] {3}, new double[] {5}), 0.95)
                        .refusal())
                .contains(Refusal.NO_SPREAD_WITHIN_CENTRES);
        assertThatThrownBy(() -> LocalMean.of(List.of(), 0.95)).hasMessageContaining("at least one case");
        assertThatThrownBy(() -> LocalMean.of(List.of(new double[0]), 0.95)).hasMessageContaining("at least one case");
        assertThatThrownBy(() -> new OneWay(0, 1, 1, 1, 5, 2)).hasMessageContaining("2 groups");
        assertThatThrownBy(() -> new OneWay(0, 1, 1, 3, 3, 1)).hasMessageContaining("2 groups");
        assertThatThrownBy(() -> RandomCentres.of(List.of(new double[] {1, 1}, new double[] {2, 2})))
                .hasMessageContaining("no spread");
    }

    @Test
    void samplesOfACaseCountForLessThanTheirNumber() {
        var effect = DesignEffect.of(6, 0.3);

        assertThat(effect.se(2, 48)).isCloseTo(2 * Math.sqrt(2.5 / 48), within(1e-12));
        assertThat(DesignEffect.of(1, 0.9).factor()).isEqualTo(1);
        assertThat(DesignEffect.of(4, 1).effective(8)).isEqualTo(2);
        assertThatThrownBy(() -> DesignEffect.of(0.5, 0.3)).hasMessageContaining("not a cluster");
        assertThatThrownBy(() -> DesignEffect.of(5, 1.1)).hasMessageContaining("not a cluster");
    }
}
