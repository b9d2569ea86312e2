package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines and curves through points. */
class LinesTest {

    private static final double[] X = {1, 2, 3, 4, 5, 6};

    @Provide
    Arbitrary<double[]> ys() {
        return Arbitraries.doubles()
                .between(-90, 90)
                .ofScale(3)
                .array(double[].class)
                .ofSize(6);
    }

    @Property
    void theLineAtAPlaceIsTheInterceptAfterMovingThere(
            @ForAll("ys") double[] y, @ForAll @DoubleRange(min = -10, max = 10) double place) {
        var line = StraightLine.through(X, y);
        var moved = StraightLine.through(Arrays.stream(X).map(x -> x - place).toArray(), y);

        assertThat(moved.at(0).mean()).isCloseTo(line.at(place).mean(), within(1e-8));
        assertThat(moved.at(0).se()).isCloseTo(line.at(place).se(), within(1e-8));
        assertThat(line.at(line.xBar()).mean()).isCloseTo(line.yBar(), within(1e-9));
        assertThat(line.at(line.xBar()).se()).isCloseTo(line.residualSd() / Math.sqrt(6), within(1e-9));
    }

    @Property
    void limitsOfAnInverseAreWhereTheBandReachesTheValue(
            @ForAll("ys") double[] y, @ForAll @DoubleRange(min = -50, max = 50) double y0) {
        var line = StraightLine.through(X, y);
        double t = Quantiles.tTwoSided(0.95, 4);

        var limits = InversePrediction.ofFixed(line, y0, 0.95);
        limits.value().ifPresent(interval -> {
            for (double x : new double[] {interval.low(), interval.high()}) {
                assertThat(Math.abs(line.at(x).mean() - y0))
                        .isCloseTo(t * line.at(x).se(), within(1e-5 * (1 + Math.abs(x)) * 90));
            }
            assertThat(interval.contains(InversePrediction.place(line, y0))).isTrue();
            var ofOne = InversePrediction.ofMean(line, y0, 1, 0.95).orElseThrow();
            var ofMany = InversePrediction.ofMean(line, y0, 1_000_000, 0.95).orElseThrow();
            assertThat(ofOne.halfWidth()).isGreaterThanOrEqualTo(interval.halfWidth());
            assertThat(ofMany.halfWidth()).isCloseTo(interval.halfWidth(), within(1e-3 * (1 + interval.halfWidth())));
        });
        boolean clear = Math.abs(line.slope()) > t * line.slopeSe();
        assertThat(limits.value().isPresent()).isEqualTo(clear);
        assertThat(InversePrediction.ofMean(line, y0, 3, 0.95).value().isPresent())
                .isEqualTo(clear);
    }

    @Property
    void aPredictionOfManyIsTheIntervalOfTheLine(@ForAll("ys") double[] y) {
        var line = StraightLine.through(X, y);
        var origin = LineThroughOrigin.through(X, y);

        assertThat(line.prediction(3, 100_000_000, 0.95).low())
                .isCloseTo(line.at(3).interval(0.95).low(), within(1e-2));
        assertThat(origin.prediction(3, 100_000_000, 0.95).low())
                .isCloseTo(origin.at(3).interval(0.95).low(), within(1e-2));
        double ratio = line.prediction(3, 1, 0.95).halfWidth()
                / line.at(3).interval(0.95).halfWidth();
        double h = Math.pow(line.at(3).se() / line.residualSd(), 2);
        if (line.residualSd() > 1e-6) {
            assertThat(ratio).isCloseTo(Math.sqrt((1 + h) / h), within(1e-6));
        }
    }

    @Property
    void noLineThroughTheOriginFitsBetter(
            @ForAll("ys") double[] y, @ForAll @DoubleRange(min = -30, max = 30) double slope) {
        var line = LineThroughOrigin.through(X, y);
        double other = 0;
        for (int i = 0; i < X.length; i++) {
            other += Math.pow(y[i] - slope * X[i], 2);
        }

        assertThat(line.residual()).isLessThanOrEqualTo(other + 1e-9);
        assertThat(line.at(2).mean()).isCloseTo(2 * line.slope(), within(1e-12));
        assertThat(line.at(-2).se()).isCloseTo(2 * line.slopeSe(), within(1e-12));
        if (line.squaresOfYAboutMean() > 1e-6) {
            assertThat(line.rSquaredAboutMean()).isLessThanOrEqualTo(line.rSquaredAboutZero() + 1e-9);
        }
    }

    @Property
    void noCurveWithoutNegativePartsFitsBetter(
            @ForAll("ys") double[] y,
            @ForAll @DoubleRange(min = 0, max = 30) double a,
            @ForAll @DoubleRange(min = 0, max = 8) double b) {
        var curve = FlowCurve.through(X, y);
        double other = 0;
        for (int i = 0; i < X.length; i++) {
            other += Math.pow(y[i] - a * X[i] - b * X[i] * X[i], 2);
        }

        assertThat(curve.a()).isNotNegative();
        assertThat(curve.b()).isNotNegative();
        assertThat(curve.residual()).isLessThanOrEqualTo(other + 1e-9);
    }

    /** Fits by scipy.optimize.nnls (SciPy 1.17.1). */
    @ParameterizedTest
    @CsvSource({
        "2.3 6.1 11.2 18.4 25.9 36.5, 1.48482143, 0.75982143, 0.6622472563713879",
        "2 3.8 5.5 7 8.3 9.4, 1.67032967, 0, 1.0246414543098037",
        "0.5 3 8.4 16.8 28 43, 0, 1.14501099, 3.5229071411654793",
        "-2.3 -6.1 -11.2 -18.4 -25.9 -36.5, 0, 0, 50.09550878072804"
    })
    void curvesAreThoseOfAReferenceLibrary(String values, double a, double b, double norm) {
        double[] y = Arrays.stream(values.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        var curve = FlowCurve.through(X, y);

        assertThat(curve.a()).isCloseTo(a, within(5e-9));
        assertThat(curve.b()).isCloseTo(b, within(5e-9));
        assertThat(Math.sqrt(curve.residual())).isCloseTo(norm, within(1e-9));
        assertThat(curve.parameters()).isEqualTo(a > 0 && b > 0 ? 2 : 1);
    }

    @Test
    void theCurveAtAFlowHasItsStandardError() {
        // numpy.linalg.lstsq and the covariance by hand (NumPy 2.4.6)
        var curve = FlowCurve.through(X, new double[] {2.3, 6.1, 11.2, 18.4, 25.9, 36.5});
        var viscous = FlowCurve.through(X, new double[] {2, 3.8, 5.5, 7, 8.3, 9.4});
        var inertial = FlowCurve.through(X, new double[] {0.5, 3, 8.4, 16.8, 28, 43});

        assertThat(curve.residualSd()).isCloseTo(0.33112362818569396, within(1e-12));
        assertThat(curve.at(3.5).mean()).isCloseTo(14.504687499999998, within(1e-10));
        assertThat(curve.at(3.5).se()).isCloseTo(0.18004549934929703, within(1e-10));
        assertThat(curve.at(3.5).df()).isEqualTo(4);
        // one coefficient kept: a line through the origin, in the flow or in its square
        var line = LineThroughOrigin.through(X, new double[] {2, 3.8, 5.5, 7, 8.3, 9.4});
        assertThat(viscous.at(3.5).se()).isCloseTo(line.at(3.5).se(), within(1e-12));
        assertThat(viscous.at(3.5).df()).isEqualTo(5);
        var square = LineThroughOrigin.through(
                Arrays.stream(X).map(x -> x * x).toArray(), new double[] {0.5, 3, 8.4, 16.8, 28, 43});
        assertThat(inertial.at(3.5).se()).isCloseTo(square.at(3.5 * 3.5).se(), within(1e-12));
    }

    @Test
    void aPlaceThatIsUncertainWidensTheValueThere() {
        var line = StraightLine.through(X, new double[] {2, 4.1, 5.9, 8.2, 9.8, 12.1});

        assertThat(line.at(3, 0.5).se()).isCloseTo(Math.hypot(line.at(3).se(), 0.5 * line.slope()), within(1e-12));
        assertThat(line.at(3, 0)).isEqualTo(line.at(3));
    }

    @Test
    void aVerdictNeedsEnoughPointsAroundThePlace() {
        double[] y = {2, 4, 7, 8, 10};
        var enough = StraightLine.through(new double[] {1, 2, 3, 3, 3}, y);

        assertThat(enough.supportedAt(1).value()).contains(enough.at(1));
        assertThat(enough.supportedAt(3).value()).contains(enough.at(3));
        assertThat(enough.supportedAt(0.99).refusal()).contains(Refusal.EXTRAPOLATED);
        assertThat(enough.supportedAt(3.01).refusal()).contains(Refusal.EXTRAPOLATED);
        assertThat(StraightLine.through(new double[] {1, 2, 2, 1, 1}, y)
                        .supportedAt(1.5)
                        .refusal())
                .contains(Refusal.TOO_FEW_POINTS);
        assertThat(StraightLine.through(new double[] {1, 2, 3, 4}, Arrays.copyOf(y, 4))
                        .supportedAt(2)
                        .refusal())
                .contains(Refusal.TOO_FEW_POINTS);
    }

    @Test
    void pointsThatMakeNoLineAreRefused() {
        double[] three = {1, 2, 3};
        double[] same = {2, 2, 2};
        double[] two = {1, 2};
        assertThatThrownBy(() -> StraightLine.through(two, two)).hasMessageContaining("not points");
        assertThatThrownBy(() -> StraightLine.through(three, two)).hasMessageContaining("not points");
        assertThatThrownBy(() -> StraightLine.through(same, three)).hasMessageContaining("one place");
        assertThatThrownBy(() -> LineThroughOrigin.through(new double[] {1}, new double[] {1}))
                .hasMessageContaining("not points");
        assertThatThrownBy(() -> LineThroughOrigin.through(three, two)).hasMessageContaining("not points");
        assertThatThrownBy(() -> LineThroughOrigin.through(new double[2], two)).hasMessageContaining("lie at 0");
        assertThatThrownBy(() -> FlowCurve.through(two, two)).hasMessageContaining("not points");
        assertThatThrownBy(() -> FlowCurve.through(three, two)).hasMessageContaining("not points");
        assertThatThrownBy(() -> FlowCurve.through(same, three)).hasMessageContaining("one flow");
        assertThatThrownBy(() -> FlowCurve.through(new double[] {0, 1, 2}, three))
                .hasMessageContaining("above zero");
    }
}
