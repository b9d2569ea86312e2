package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Sources pooled: what each estimator solves, what does not matter, and what is refused. */
class PoolLawsTest {

    @Provide
    Arbitrary<Effects> effects() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-20, 20).ofScale(3),
                        Arbitraries.doubles().between(0.1, 9).ofScale(3))
                .as(Effects.Effect::new)
                .list()
                .ofMinSize(3)
                .ofMaxSize(9)
                .map(Effects::new);
    }

    @Property
    void pauleAndMandelSolveTheirEquation(@ForAll("effects") Effects effects) {
        double tau2 = BetweenVariance.PAULE_MANDEL.of(effects);
        double q = effects.squares(tau2, 1);
        int df = effects.size() - 1;

        if (tau2 > 0) {
            assertThat(q).isCloseTo(df, within(1e-8));
            // with q = 1 the modification changes nothing
            var random = RandomEffects.of(effects, tau2);
            assertThat(random.modifiedHartungKnapp().se())
                    .isCloseTo(random.hartungKnapp().se(), within(1e-8));
        } else {
            assertThat(q).isLessThanOrEqualTo(df);
        }
    }

    @Property
    void noOtherVarianceIsMoreLikelyThanTheLikeliest(
            @ForAll("effects") Effects effects, @ForAll @DoubleRange(min = 0, max = 500) double other) {
        double restricted = BetweenVariance.RESTRICTED_LIKELIHOOD.of(effects);
        double full = BetweenVariance.MAXIMUM_LIKELIHOOD.of(effects);

        assertThat(BetweenVariance.logLikelihood(effects, restricted, true))
                .isGreaterThanOrEqualTo(BetweenVariance.logLikelihood(effects, other, true) - 1e-9);
        assertThat(BetweenVariance.logLikelihood(effects, full, false))
                .isGreaterThanOrEqualTo(BetweenVariance.logLikelihood(effects, other, false) - 1e-9);
        if (restricted > 0) {
            assertThat(BetweenVariance.score(effects, restricted, true)).isCloseTo(0, within(1e-7));
        }
    }

    @Property
    void theScoreIsTheSlopeOfTheLikelihood(
            @ForAll("effects") Effects effects, @ForAll @DoubleRange(min = 0.5, max = 50) double tau2) {
        double h = 1e-4;
        for (boolean restricted : new boolean[] {true, false}) {
            double slope = (BetweenVariance.logLikelihood(effects, tau2 + h, restricted)
                            - BetweenVariance.logLikelihood(effects, tau2 - h, restricted))
                    / (2 * h);
            double score = BetweenVariance.score(effects, tau2, restricted) / 2;
            assertThat(slope).isCloseTo(score, within(1e-4 * (1 + Math.abs(score))));
        }
    }

    @Property
    void withEqualVariancesAllMethodsButFullLikelihoodAgree(
            @ForAll("effects") Effects effects, @ForAll @DoubleRange(min = 0.1, max = 5) double variance) {
        var equal = new Effects(effects.each().stream()
                .map(e -> new Effects.Effect(e.value(), variance))
                .toList());
        double expected = Math.max(0, equal.spread() - variance);

        for (var method : List.of(
                BetweenVariance.DERSIMONIAN_LAIRD,
                BetweenVariance.PAULE_MANDEL,
                BetweenVariance.RESTRICTED_LIKELIHOOD)) {
            assertThat(method.of(equal)).isCloseTo(expected, within(1e-7 * (1 + expected)));
        }
        int k = equal.size();
        assertThat(BetweenVariance.MAXIMUM_LIKELIHOOD.of(equal))
                .isCloseTo(Math.max(0, equal.spread() * (k - 1) / k - variance), within(1e-7 * (1 + expected)));
    }

    @Property
    void shiftScaleAndOrderGoThrough(
            @ForAll("effects") Effects effects,
            @ForAll @DoubleRange(min = -1000, max = 1000) double shift,
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale,
            @ForAll long seed) {
        var list = new ArrayList<Effects.Effect>();
        effects.each()
                .forEach(e -> list.add(new Effects.Effect(shift + scale * e.value(), scale * scale * e.variance())));
        Collections.shuffle(list, new Random(seed));
        var moved = new Effects(list);

        for (var method : BetweenVariance.values()) {
            var a = RandomEffects.of(effects, method);
            var b = RandomEffects.of(moved, method);
            assertThat(b.tau2()).isCloseTo(scale * scale * a.tau2(), within(1e-5 * scale * scale * (1 + a.tau2())));
            assertThat(b.mean()).isCloseTo(shift + scale * a.mean(), within(1e-5 * scale));
            assertThat(b.se()).isCloseTo(scale * a.se(), within(1e-5 * scale));
        }
    }

    @Property
    void theProfileIntervalHasQAtItsQuantilesOrStartsAtZero(@ForAll("effects") Effects effects) {
        var interval = QProfile.of(effects, 0.95);
        int df = effects.size() - 1;

        if (interval.low() > 0) {
            assertThat(Quantiles.chiSquaredTail(effects.squares(interval.low(), 1), df))
                    .isCloseTo(0.025, within(1e-6));
        }
        if (interval.high() > 0) {
            assertThat(Quantiles.chiSquaredTail(effects.squares(interval.high(), 1), df))
                    .isCloseTo(0.975, within(1e-6));
        }
        assertThat(BetweenVariance.PAULE_MANDEL.of(effects)).isLessThanOrEqualTo(interval.high() + 1e-9);
    }

    @Property
    void withoutHeterogeneityRandomEffectsAreTheCommonOne(@ForAll("effects") Effects effects) {
        var common = CommonEffect.of(effects);
        var random = RandomEffects.of(effects, 0);

        assertThat(random.mean()).isEqualTo(common.mean());
        assertThat(random.se()).isEqualTo(common.se());
        assertThat(random.q() * common.df()).isCloseTo(common.q(), within(1e-9));
        assertThat(common.i2()).isBetween(0.0, 1.0);
        assertThat(common.i2()).isCloseTo(Math.max(0, 1 - 1 / common.h2()), within(1e-12));
        assertThat(common.estimate().interval(0.95)).isEqualTo(random.normal().interval(0.95));
    }

    @Property
    void intervalsWidenInTheirOrder(@ForAll("effects") Effects effects) {
        var random = RandomEffects.of(effects, BetweenVariance.RESTRICTED_LIKELIHOOD);
        var local = new MeanEstimate(0, 2, 7);
        double further = random.furtherSource(0.95).orElseThrow().halfWidth();
        double observed = random.furtherObservedMean(local, 0.95).orElseThrow().halfWidth();

        assertThat(observed).isGreaterThan(further);
        double t = Quantiles.tTwoSided(0.95, effects.size() - 2);
        assertThat(observed * observed - further * further).isCloseTo(4 * t * t, within(1e-6 * observed * observed));
        assertThat(random.modifiedHartungKnapp().se())
                .isGreaterThanOrEqualTo(random.hartungKnapp().se());
        assertThat(random.modifiedHartungKnapp().se()).isGreaterThanOrEqualTo(random.se());
    }

    @Test
    void theNumberOfSourcesDecidesWhatIsSaid() {
        var one = new MeanEstimate(60, 2, 20);
        var two = new MeanEstimate(52, 3, 9);
        var three = new MeanEstimate(57, 2.5, 11);

        assertThat(Pool.of(List.of()).refusal()).contains(Refusal.TOO_FEW_SOURCES);
        assertThat(shape(List.of(one))).isEqualTo("1");
        assertThat(shape(List.of(one, two))).isEqualTo("2");
        assertThat(shape(List.of(one, two, three))).isEqualTo("3 rough");
        assertThat(shape(List.of(one, two, three, one))).isEqualTo("4 rough");
        assertThat(shape(List.of(one, two, three, one, two))).isEqualTo("5");
        assertThat(Pool.of(List.of(one, new MeanEstimate(5, 0, 3))).refusal()).contains(Refusal.NO_SPREAD);
    }

    private static String shape(List<MeanEstimate> sources) {
        return Pool.of(sources)
                .orElseThrow()
                .<String>fold(
                        single -> single.source().equals(sources.get(0)) ? "1" : "?",
                        pair -> pair.difference().equals(MeanDifference.of(sources.get(0), sources.get(1))) ? "2" : "?",
                        several -> several.effects().size() + (several.rough() ? " rough" : ""));
    }

    @Test
    void aPredictionHeadsATableFromFiveSourcesOn() {
        var sources = new ArrayList<MeanEstimate>();
        for (int k = 0; k < 5; k++) {
            sources.add(new MeanEstimate(50 + k * k, 2, 10));
        }
        var five = (Pool.Several) Pool.of(sources).orElseThrow();
        var four = (Pool.Several) Pool.of(sources.subList(0, 4)).orElseThrow();

        assertThat(five.furtherSourceForHeadline(0.95)).contains(five.furtherSource(0.95));
        assertThat(four.furtherSourceForHeadline(0.95)).isEmpty();
        assertThat(five.tau2Interval(0.95).contains(five.random().tau2())).isTrue();
        assertThat(five.mean().df()).isEqualTo(4);
        assertThat(five.tau2()).containsOnlyKeys(BetweenVariance.values());
    }

    @Test
    void twoSourcesPredictNothing() {
        var two = RandomEffects.of(Effects.of(new double[] {1, 3}, new double[] {1, 1}), 0.5);

        assertThat(two.furtherSource(0.95).refusal()).contains(Refusal.TOO_FEW_SOURCES);
        assertThat(two.furtherSourceHartungKnapp(0.95).refusal()).contains(Refusal.TOO_FEW_SOURCES);
        assertThat(two.furtherObservedMean(new MeanEstimate(1, 1, 1), 0.95).refusal())
                .contains(Refusal.TOO_FEW_SOURCES);
        var pair = (Pool.Pair) Pool.of(List.of(new MeanEstimate(1, 1, 5), new MeanEstimate(3, 1, 5)))
                .orElseThrow();
        assertThat(pair.ifBothMeasureTheSame().mean()).isEqualTo(2);
    }

    @Test
    void theSourceOnWhichAVerdictDependsIsNamed() {
        var effects = Effects.of(new double[] {1, 1.1, 0.9, 8}, new double[] {0.1, 0.1, 0.1, 0.1});

        assertThat(LeaveOneOut.decisive(effects, e -> CommonEffect.of(e).mean() > 2))
                .containsExactly(3);
        assertThat(LeaveOneOut.decisive(effects, e -> CommonEffect.of(e).mean() > 0))
                .isEmpty();
        assertThatThrownBy(() -> LeaveOneOut.of(Effects.of(new double[] {1, 2}, new double[] {1, 1}), e -> e.size()))
                .hasMessageContaining("at least 3");
    }

    @Test
    void whatIsNoEffectIsRefused() {
        assertThatThrownBy(() -> new Effects.Effect(1, 0)).hasMessageContaining("not an effect");
        assertThatThrownBy(() -> new Effects.Effect(Double.NaN, 1)).hasMessageContaining("not an effect");
        assertThatThrownBy(() -> new Effects.Effect(1, Double.POSITIVE_INFINITY))
                .hasMessageContaining("not an effect");
        assertThatThrownBy(() -> Effects.of(new double[] {1}, new double[] {1})).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> Effects.of(new double[] {1, 2}, new double[] {1}))
                .hasMessageContaining("variances");
    }
}
