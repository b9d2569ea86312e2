package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers that stand beside the main ones: their values, and the guards before them. */
class SmallPrintTest {

    @Test
    void probabilitiesOfSpreadAreThoseOfAReferenceLibrary() {
        // scipy.stats.f_oneway on the data of the NIST/SEMATECH e-Handbook 7.4.3.4, and chi2.sf (SciPy 1.17.1)
        var groups = OneWay.of(
                List.of(new double[] {6.9, 5.4, 5.8, 4.6, 4.0}, new double[] {8.3, 6.8, 7.8, 9.2, 6.5}, new double[] {
                    8.0, 10.5, 8.1, 6.9, 9.3
                }));
        var common = CommonEffect.of(Effects.of(new double[] {1, 2, 4}, new double[] {1, 2, 0.5}));

        assertThat(groups.p()).isCloseTo(P_OF_F, within(1e-9));
        assertThat(common.q()).isCloseTo(Q, within(1e-12));
        assertThat(common.pOfQ()).isCloseTo(P_OF_Q, within(1e-9));
    }

    private static final double P_OF_F = 0.0032482226008593005;
    private static final double Q = 6.428571428571429;
    private static final double P_OF_Q = 0.04018402645107363;

    @Test
    void theRSquaredAboutTheMeanOfALineThroughTheOriginMayBeNegative() {
        // y = 3, 4, 4 at 4, 5, 6: residual 3/11 as by hand, about the mean 2/3
        var line = LineThroughOrigin.through(new double[] {4, 5, 6}, new double[] {3, 4, 4});
        var level = LineThroughOrigin.through(new double[] {1, 2, 3}, new double[] {5, 5.1, 4.9});

        assertThat(line.residual()).isCloseTo(3 / 11.0, within(1e-12));
        assertThat(line.squaresOfYAboutMean()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(line.rSquaredAboutMean()).isCloseTo(1 - 9 / 22.0, within(1e-12));
        assertThat(level.rSquaredAboutMean()).isNegative();
    }

    @Test
    void repeatedReadingsOfALogarithmicAxisScatter() {
        var axis = new AxisCalibration(10, 1, 310, 1000, true);
        var reading = axis.read(0.5, 108, 112);

        // at 110, a third of the way: 10; the scatter of the two is √8
        assertThat(reading.value()).isCloseTo(10, within(1e-9));
        double t = 1 / 3.0;
        double u = 0.01 * Math.hypot(0.5 * Math.sqrt(1 + t * t + (1 - t) * (1 - t)), Math.sqrt(8));
        assertThat(reading.uncertainty()).isCloseTo(10 * Math.log(10) * u, within(1e-9));
        assertThat(new AxisCalibration(10, 1, 310, 7, false).residualOf(160, 4.6))
                .isCloseTo(0.1, within(1e-12));
    }

    @Test
    void roundedLimitsOfAGeometricMeanLeaveTheirUncertaintyOnTheLogarithms() {
        var converted = IntervalConversion.of(0.42, new Interval(0.3, 0.588), 9, 0.95, 0.002)
                .orElseThrow();

        assertThat(converted.scale()).isEqualTo(IntervalConversion.Scale.LOGARITHMIC);
        double width = Math.log(0.588 / 0.3);
        double u = 0.002 / Math.sqrt(3) * Math.sqrt(1 / (0.3 * 0.3) + 1 / (0.588 * 0.588));
        assertThat(converted.relativeRounding()).isCloseTo(u / width, within(1e-12));
    }

    @Test
    void theRestrictedLikelihoodOfCentresIsHighestAtTheFit() {
        // two stages of one likelihood: Harville's form of all values, by brute force over the ratio
        var centres = List.of(new double[] {52, 61, 58, 55, 60}, new double[] {64, 70, 66}, new double[] {60, 68});
        var fit = RandomCentres.of(centres);
        double best = likelihood(centres, fit.varianceBetween() / fit.varianceWithin());

        for (double ratio = 0; ratio < 40; ratio += 0.05) {
            assertThat(likelihood(centres, ratio)).isLessThanOrEqualTo(best + 1e-9);
        }
    }

    /** Up to a constant; from all values, each with its weight. */
    private static double likelihood(List<double[]> centres, double ratio) {
        double weights = 0;
        double sum = 0;
        double logs = 0;
        int n = 0;
        for (double[] c : centres) {
            double w = c.length / (1 + ratio * c.length);
            weights += w;
            sum += w * Moments.of(c).mean();
            logs += Math.log1p(ratio * c.length);
            n += c.length;
        }
        double squares = 0;
        for (double[] c : centres) {
            var m = Moments.of(c);
            squares += m.sd() * m.sd() * (m.n() - 1)
                    + c.length / (1 + ratio * c.length) * Math.pow(m.mean() - sum / weights, 2);
        }
        return -((n - 1) * Math.log(squares) + logs + Math.log(weights)) / 2;
    }

    @Test
    void aCorrelatedFormulaIsComparedWithItsNormalInterval() {
        var inputs = Inputs.independent(List.of(new Input(4, 1, 5, Input.Shape.NORMAL), Input.normal(2, 1)))
                .correlated(0, 1, 0.5);
        var sum = Propagation.of(inputs, x -> x[0] + x[1], 200_000, 4, 0.95);

        assertThat(sum.linear().df().refusal()).contains(Refusal.INPUTS_CORRELATED);
        assertThat(sum.disagree()).isFalse();
    }

    @Test
    void guardsStandBeforeEveryFormula() {
        assertThatThrownBy(() -> SpreadConversion.sdFromQuartiles(1, 2, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> SpreadConversion.meanFromQuartiles(1, 2, 3, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> SpreadConversion.meanFromRange(1, 2, 3, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> SpreadConversion.sdFromRange(1, 2, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> SpreadConversion.sdFromRangeApproximately(1, 2, 1))
                .hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new Moments(1, 1, 4).predictionForMeanOf(0, 0.95))
                .hasMessageContaining("at least 1");
        var line = StraightLine.through(new double[] {1, 2, 3}, new double[] {1, 2, 3.5});
        assertThatThrownBy(() -> line.prediction(1, 0, 0.95)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> InversePrediction.ofMean(line, 1, 0, 0.95)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> line.at(1).interval(1)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> QProfile.of(Effects.of(new double[] {1, 2}, new double[] {1, 1}), 0))
                .hasMessageContaining("between 0 and 1");
        var groups = OneWay.of(List.of(new double[] {1, 2}, new double[] {2, 4}));
        assertThatThrownBy(() -> groups.iccInterval(1.2)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> BcaBootstrap.of(12, cases -> cases[0], 9, 1, 0))
                .hasMessageContaining("between 0 and 1");
        var input = Inputs.independent(List.of(Input.normal(1, 1)));
        assertThatThrownBy(() -> MonteCarloPropagation.of(input, x -> x[0], 1, 1, 0.95))
                .hasMessageContaining("at least 2");
        assertThatThrownBy(() -> MonteCarloPropagation.of(input, x -> x[0], 9, 1, 1))
                .hasMessageContaining("between 0 and 1");
        var open = new Interval(0, 1);
        assertThat(open.insideOf(0, 2)).isFalse();
        assertThat(open.insideOf(-1, 1)).isFalse();
        assertThat(open.insideOf(-1, 2)).isTrue();
    }
}
