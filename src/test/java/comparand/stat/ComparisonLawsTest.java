package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two means compared: as a difference, as a ratio, in units of the spread, and against margins. */
class ComparisonLawsTest {

    @Property
    void fromRawDataAndFromSummariesTheDifferenceIsTheSame(
            @ForAll @IntRange(min = 3, max = 9) int n, @ForAll @DoubleRange(min = -5, max = 5) double shift) {
        double[] a = new double[n];
        double[] b = new double[n + 2];
        Arrays.setAll(a, i -> Math.sin(i) + shift);
        Arrays.setAll(b, i -> 2 * Math.cos(i));
        var raw = MeanDifference.of(Moments.of(a).estimate(), Moments.of(b).estimate());
        var summarised = MeanDifference.of(
                new Moments(Moments.of(a).mean(), Moments.of(a).sd(), n).estimate(),
                new Moments(Moments.of(b).mean(), Moments.of(b).sd(), n + 2).estimate());

        assertThat(summarised).isEqualTo(raw);
    }

    @Property
    void bothOneSidedTestsRejectWhereTheIntervalLiesWithin(
            @ForAll @DoubleRange(min = -4, max = 4) double value,
            @ForAll @DoubleRange(min = 0.1, max = 2) double se,
            @ForAll @IntRange(min = 2, max = 50) int df,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double alpha) {
        var test = TwoOneSided.of(new MeanDifference(value, se, df), new Interval(-2, 3), alpha);

        if (Math.abs(test.p() - alpha) > 1e-6) {
            assertThat(test.within()).isEqualTo(test.p() < alpha);
        }
        assertThat(test.p()).isEqualTo(Math.max(test.pLower(), test.pUpper()));
        assertThat(test.tLower() - test.tUpper()).isCloseTo(5 / se, within(1e-9 / se));
    }

    @Property
    void aRatioTurnsOverWithItsSidesAndDoesNotKnowUnits(
            @ForAll @DoubleRange(min = 1, max = 50) double m1,
            @ForAll @DoubleRange(min = 1, max = 50) double m2,
            @ForAll @DoubleRange(min = 0.1, max = 100) double unit) {
        var a = new MeanEstimate(m1, m1 / 9, 7);
        var b = new MeanEstimate(m2, m2 / 20, 12);
        var scaled = RatioOfMeans.of(
                        new MeanEstimate(unit * m1, unit * m1 / 9, 7), new MeanEstimate(unit * m2, unit * m2 / 20, 12))
                .orElseThrow();
        var ratio = RatioOfMeans.of(a, b).orElseThrow();
        var turned = RatioOfMeans.of(b, a).orElseThrow();

        assertThat(ratio.value()).isCloseTo(m1 / m2, within(1e-9 * m1));
        assertThat(turned.interval(0.95).low())
                .isCloseTo(1 / ratio.interval(0.95).high(), within(1e-9));
        assertThat(scaled.interval(0.95).low()).isCloseTo(ratio.interval(0.95).low(), within(1e-9));
        assertThat(RatioOfMeans.fieller(a, b, 0.95).orElseThrow().contains(m1 / m2))
                .isTrue();
    }

    @Property
    void theCautiousIntervalIsNeverNarrowerThanWelchs(
            @ForAll @DoubleRange(min = 0.1, max = 5) double se1,
            @ForAll @DoubleRange(min = 0.1, max = 5) double se2,
            @ForAll @IntRange(min = 1, max = 40) int df1,
            @ForAll @IntRange(min = 1, max = 40) int df2) {
        var a = new MeanEstimate(7, se1, df1);
        var b = new MeanEstimate(5, se2, df2);
        var cautious = CochranCox.interval(a, b, 0.95);
        var welch = MeanDifference.welch(a, b).interval(0.95);

        assertThat(cautious.halfWidth()).isGreaterThanOrEqualTo(welch.halfWidth() * (1 - 1e-6));
        assertThat((cautious.low() + cautious.high()) / 2).isCloseTo(2, within(1e-9));
        double v1 = se1 * se1;
        double v2 = se2 * se2;
        double t = (v1 * Quantiles.t(0.975, df1) + v2 * Quantiles.t(0.975, df2)) / (v1 + v2);
        assertThat(cautious.halfWidth()).isCloseTo(t * Math.sqrt(v1 + v2), within(1e-6 * t * Math.sqrt(v1 + v2)));
        assertThat(CochranCox.interval(new MeanEstimate(7, 0, 3), new MeanEstimate(5, 0, 3), 0.95))
                .isEqualTo(new Interval(2, 2));
    }

    @Property
    void aFewDegreesOfFreedomAgainstManyAreMetWithCaution(
            @ForAll @IntRange(min = 1, max = 40) int df1, @ForAll @IntRange(min = 1, max = 40) int df2) {
        var a = new MeanEstimate(7, 1.2, df1);
        var b = new MeanEstimate(5, 0.8, df2);
        var d = MeanDifference.of(a, b);
        boolean few = Math.min(df1, df2) <= 7 && Math.max(df1, df2) > 2.5 * Math.min(df1, df2);

        assertThat(d.interval(0.9))
                .isEqualTo(
                        few
                                ? CochranCox.interval(a, b, 0.9)
                                : MeanDifference.welch(a, b).interval(0.9));
        // an interval of a level just leaves out zero where p is what is left of it
        var just = d.interval(1 - d.p());
        assertThat(just.low()).isCloseTo(0, within(1e-6 * just.halfWidth()));
        // a figure without uncertainty leaves Student's t of the other side
        var figure = MeanDifference.of(a, new MeanEstimate(5, 0, Double.POSITIVE_INFINITY));
        assertThat(figure.cautious()).isEmpty();
        assertThat(figure.df()).isCloseTo(df1, within(1e-9));
    }

    @Property
    void theCautiousTailTurnsItsQuantileBack(
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double level) {
        var reference = new CochranCox(share, 2, 19);
        double t = reference.factor(level);

        assertThat(reference.tail(t)).isCloseTo((1 - level) / 2, within(1e-9));
        assertThat(reference.tail(-t)).isCloseTo((1 + level) / 2, within(1e-9));
        assertThat(reference.tail(0)).isEqualTo(0.5);
    }

    @Test
    void aRatioOfMeansNearZeroIsRefused() {
        var clear = new MeanEstimate(10, 1, 9);

        assertThat(RatioOfMeans.of(clear, new MeanEstimate(10, 1.99, 9)).refusal())
                .isEmpty();
        assertThat(RatioOfMeans.of(clear, new MeanEstimate(10, 2, 9)).refusal()).contains(Refusal.MEAN_NEAR_ZERO);
        assertThat(RatioOfMeans.of(new MeanEstimate(10, 2, 9), clear).refusal()).contains(Refusal.MEAN_NEAR_ZERO);
        assertThat(RatioOfMeans.of(new MeanEstimate(-10, 1, 9), clear).refusal())
                .contains(Refusal.MEAN_NEAR_ZERO);
        assertThat(RatioOfMeans.fieller(clear, new MeanEstimate(1, 1, 9), 0.95).refusal())
                .contains(Refusal.UNBOUNDED);
    }

    @Test
    void fiellersIntervalOfIndependentMeansIsWhereTheirDifferenceIsNotClear() {
        var a = new MeanEstimate(10, 1, 9);
        var b = new MeanEstimate(8, 2, 9);
        double t = Quantiles.tTwoSided(0.95, MeanDifference.of(a, b).df());
        var interval = RatioOfMeans.fieller(a, b, 0.95).orElseThrow();

        for (double r : new double[] {interval.low(), interval.high()}) {
            assertThat(Math.abs(10 - r * 8)).isCloseTo(t * Math.hypot(1, r * 2), within(1e-9));
        }
        assertThat(interval.high()).isGreaterThan(interval.low());
    }

    @Property
    void theExactCorrectionIsCloseToTheOnePrinted(@ForAll @IntRange(min = 4, max = 400) int v) {
        // Hedges 1981: within 0.007 for two degrees of freedom, 0.0004 from 10 on
        assertThat(HedgesG.exactCorrection(v)).isCloseTo(HedgesG.approximateCorrection(v), within(0.004));
        assertThat(HedgesG.exactCorrection(v)).isLessThan(1);
    }

    @Test
    void aDifferenceWithoutSpreadHasNoUnits() {
        assertThat(HedgesG.of(new Moments(1, 0, 4), new Moments(2, 0, 4)).refusal())
                .contains(Refusal.NO_SPREAD);
        // v = 2: J = Γ(1)/(√1 Γ(1/2)) = 1/√π
        assertThat(HedgesG.exactCorrection(2)).isCloseTo(1 / Math.sqrt(Math.PI), within(1e-12));
        assertThatThrownBy(() -> TwoOneSided.of(new MeanDifference(1, 0, 3), new Interval(-1, 1), 0.05))
                .hasMessageContaining("without uncertainty");
    }

    @Property
    void withTheFragilityAddedTheDifferenceIsJustNotClear(
            @ForAll @DoubleRange(min = -20, max = 20) double value,
            @ForAll @DoubleRange(min = 0.1, max = 5) double se) {
        var d = new MeanDifference(value, se, 12);
        double hidden = Fragility.seOfFigure(d, 0.95);

        if (hidden > 0) {
            assertThat(Math.abs(value)).isCloseTo(Quantiles.z(0.975) * Math.hypot(se, hidden), within(1e-9));
        } else {
            assertThat(Math.abs(value)).isLessThanOrEqualTo(Quantiles.z(0.975) * se + 1e-9);
        }
    }

    @ParameterizedTest(name = "n = {0}, share {1}, confidence {2}: k = {3}")
    @CsvSource({
        "10, 0.9, 0.95, 2.354640131829059",
        "20, 0.95, 0.95, 2.3960016837521687",
        "6, 0.99, 0.9, 4.24253289535152"
    })
    void oneSidedFactorsAreThoseOfAReferenceLibrary(int n, double share, double confidence, double k) {
        // scipy.stats.nct.ppf (SciPy 1.17.1)
        assertThat(OneSidedTolerance.factor(n, share, confidence)).isCloseTo(k, within(1e-8));
        var sample = new Moments(100, 10, n);
        assertThat(OneSidedTolerance.lowerLimit(sample, share, confidence)).isCloseTo(100 - 10 * k, within(1e-7));
        assertThat(OneSidedTolerance.upperLimit(sample, share, confidence)).isCloseTo(100 + 10 * k, within(1e-7));
    }

    @ParameterizedTest(name = "P(T({1}; {2}) <= {0}) = {3}")
    @CsvSource({
        "1.5, 10, 0.7, 0.7654035952551429",
        "2.0, 3, 1.2, 0.6889835571148409",
        "-1, 25, 0.5, 0.07002615754055053",
        "5, 60, 3, 0.9643566626967922",
        "0.5, 1, 2, 0.06327688747994675"
    })
    void theNoncentralTIsThatOfAReferenceLibrary(double x, double df, double delta, double p) {
        // scipy.stats.nct.cdf (SciPy 1.17.1)
        assertThat(NoncentralT.cumulative(x, df, delta)).isCloseTo(p, within(1e-10));
        assertThat(NoncentralT.quantile(p, df, delta)).isCloseTo(x, within(1e-7));
    }

    @Property
    void aboutZeroTheNoncentralTIsStudents(
            @ForAll @DoubleRange(min = -6, max = 6) double x, @ForAll @IntRange(min = 1, max = 200) int df) {
        assertThat(NoncentralT.cumulative(x, df, 0)).isCloseTo(1 - Quantiles.tTail(x, df), within(1e-10));
        assertThat(SpreadRatio.expected(u -> 1, df)).isCloseTo(1, within(1e-10));
        assertThat(SpreadRatio.expected(u -> 1, df, 0)).isZero();
    }

    @Test
    void toleranceFactorsFallWithTheNumberAndRiseWithTheShare() {
        double last = Double.POSITIVE_INFINITY;
        for (int n = 2; n < 40; n++) {
            double k = ToleranceFactor.EXACT.of(n, 0.9, 0.95);
            assertThat(k).isLessThan(last).isLessThan(ToleranceFactor.EXACT.of(n, 0.95, 0.95));
            assertThat(ToleranceFactor.HOWE.of(n, 0.9, 0.95)).isCloseTo(k, within(0.06 * k));
            last = k;
        }
        assertThat(ToleranceFactor.EXACT.of(100_000, 0.9, 0.95)).isCloseTo(Quantiles.z(0.95), within(0.01));
        assertThatThrownBy(() -> ToleranceFactor.EXACT.of(1, 0.9, 0.95)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> ToleranceFactor.HOWE.of(9, 1, 0.95)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> ToleranceFactor.HOWE.of(9, 0.9, 0)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> OneSidedTolerance.factor(1, 0.9, 0.9)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> OneSidedTolerance.factor(9, 0, 0.9)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> OneSidedTolerance.factor(9, 0.9, 1)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> OneSidedTolerance.approximateFactor(2, 0.9, 0.95))
                .hasMessageContaining("more values");
    }
}
