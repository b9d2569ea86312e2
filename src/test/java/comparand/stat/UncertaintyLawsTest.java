package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.junit.jupiter.api.Test;

/** Uncertainty carried through formulas, by slopes and by drawing. */
class UncertaintyLawsTest {

    private static final int DRAWS = 200_000;

    @Property
    void aSumOfTwoCorrelatedInputsHasTheVarianceOfTheText(
            @ForAll @DoubleRange(min = 0.1, max = 5) double u1,
            @ForAll @DoubleRange(min = 0.1, max = 5) double u2,
            @ForAll @DoubleRange(min = -1, max = 1) double r) {
        var inputs = Inputs.independent(List.of(Input.normal(3, u1), Input.normal(-7, u2)))
                .correlated(0, 1, r);
        var sum = LinearPropagation.of(inputs, x -> x[0] + x[1]);

        assertThat(sum.value()).isCloseTo(-4, within(1e-12));
        assertThat(sum.uncertainty())
                .isCloseTo(Math.sqrt(Math.max(0, u1 * u1 + u2 * u2 + 2 * r * u1 * u2)), within(1e-6));
        assertThat(sum.df().orElseThrow()).isInfinite();
    }

    @Property
    void twoMeansAsInputsGiveWelchsDifference(
            @ForAll @DoubleRange(min = 0.1, max = 5) double u1,
            @ForAll @DoubleRange(min = 0.1, max = 5) double u2,
            @ForAll @IntRange(min = 2, max = 40) int df) {
        var a = new MeanEstimate(12, u1, df);
        var b = new MeanEstimate(9, u2, 7);
        var inputs = Inputs.independent(List.of(Input.sampled(a), Input.sampled(b)));
        var propagated = LinearPropagation.of(inputs, x -> x[0] - x[1]);
        var welch = MeanDifference.welch(a, b);

        assertThat(propagated.uncertainty()).isCloseTo(welch.se(), within(1e-9));
        assertThat(propagated.df().orElseThrow()).isCloseTo(welch.df(), within(1e-6 * welch.df()));
        assertThat(propagated.interval(0.95).orElseThrow().low())
                .isCloseTo(welch.interval(0.95).low(), within(1e-6));
        assertThat(propagated.truncatedDf().orElseThrow())
                .isEqualTo(Math.floor(propagated.df().orElseThrow()));
    }

    @Test
    void correlatedInputsOfFewReadingsHaveNoDegreesOfFreedom() {
        var inputs = Inputs.independent(List.of(new Input(1, 1, 5, Input.Shape.NORMAL), Input.normal(2, 1)))
                .correlated(0, 1, 0.5);
        var sum = LinearPropagation.of(inputs, x -> x[0] + x[1]);

        assertThat(sum.df().refusal()).contains(Refusal.INPUTS_CORRELATED);
        assertThat(sum.interval(0.95).refusal()).contains(Refusal.INPUTS_CORRELATED);
        assertThat(inputs.correlated()).isTrue();
        assertThat(inputs.correlated(0, 1, 0).correlated()).isFalse();
    }

    @Test
    void anInputWithoutUncertaintyAddsNone() {
        var inputs = Inputs.independent(List.of(Input.normal(3, 0), Input.normal(2, 0.1)));
        var product = LinearPropagation.of(inputs, x -> x[0] * x[1]);

        assertThat(product.contributions().get(0)).isZero();
        assertThat(product.contributions().get(1)).isCloseTo(0.3, within(1e-9));
        assertThat(LinearPropagation.of(Inputs.independent(List.of(Input.normal(3, 0))), x -> x[0])
                        .uncertainty())
                .isZero();
        assertThat(Satterthwaite.df(0, new double[] {0}, new double[] {3})).isInfinite();
        assertThatThrownBy(() -> Satterthwaite.df(1, new double[] {1}, new double[] {3, 4}))
                .hasMessageContaining("degrees of freedom");
    }

    @Test
    void drawnAndLinearAgreeOnALineAndDisagreeOnASquare() {
        // X normal(0, 1): X² has mean 1 and SD √2, where its slope at 0 says that it has no uncertainty at all
        var zero = Inputs.independent(List.of(Input.normal(0, 1)));
        var square = Propagation.of(zero, x -> x[0] * x[0], DRAWS, 11, 0.95);
        var line = Propagation.of(zero, x -> 5 + 3 * x[0], DRAWS, 11, 0.95);

        assertThat(square.disagree()).isTrue();
        assertThat(square.linear().uncertainty()).isCloseTo(0, within(1e-6));
        // standard errors of 200 000 draws: 0.0032 for the mean, 0.012 for the SD
        assertThat(square.drawn().mean()).isCloseTo(1, within(0.013));
        assertThat(square.drawn().uncertainty()).isCloseTo(Math.sqrt(2), within(0.04));
        assertThat(line.disagree()).isFalse();
        assertThat(line.drawn().interval().high()).isCloseTo(5 + 3 * 1.96, within(0.05));
    }

    @Test
    void aSkewedResultWithTheRightUncertaintyStillDisagrees() {
        // exp of normal(0, 0.3): the ends of the intervals differ by more than 5 % of u
        var skewed =
                Propagation.of(Inputs.independent(List.of(Input.normal(0, 0.3))), x -> Math.exp(x[0]), DRAWS, 5, 0.95);

        assertThat(skewed.drawn().interval().high()).isCloseTo(Math.exp(0.3 * 1.959964), within(0.02));
        assertThat(skewed.drawn().interval().low()).isCloseTo(Math.exp(-0.3 * 1.959964), within(0.01));
        assertThat(skewed.disagree()).isTrue();
    }

    @Test
    void theShapesHaveTheirSpreads() {
        var t = Inputs.independent(List.of(new Input(0, 1, 5, Input.Shape.SCALED_T)));
        var flat = Inputs.independent(List.of(Input.rectangular(10, 3)));
        var drawnT = MonteCarloPropagation.of(t, x -> x[0], DRAWS, 3, 0.95);
        var drawnFlat = MonteCarloPropagation.of(flat, x -> x[0], DRAWS, 3, 0.95);

        // Student's t on 5 degrees of freedom: its quantile, and a variance of 5/3
        assertThat(drawnT.interval().high()).isCloseTo(2.570582, within(0.06));
        assertThat(drawnT.uncertainty()).isCloseTo(Math.sqrt(5.0 / 3), within(0.04));
        assertThat(drawnFlat.uncertainty()).isCloseTo(Math.sqrt(3), within(0.01));
        assertThat(drawnFlat.interval().low()).isCloseTo(7 + 0.025 * 6, within(0.01));
        assertThat(drawnFlat.mean()).isCloseTo(10, within(0.02));
    }

    @Test
    void correlatedInputsAreDrawnTogether() {
        var inputs = Inputs.independent(List.of(Input.normal(0, 1), Input.normal(0, 2)))
                .correlated(0, 1, 0.8);
        var sum = MonteCarloPropagation.of(inputs, x -> x[0] + x[1], DRAWS, 9, 0.95);
        var difference = Propagation.of(inputs, x -> x[0] - x[1], DRAWS, 9, 0.95);

        assertThat(sum.uncertainty()).isCloseTo(Math.sqrt(1 + 4 + 2 * 0.8 * 2), within(0.03));
        assertThat(difference.drawn().uncertainty()).isCloseTo(Math.sqrt(1 + 4 - 2 * 0.8 * 2), within(0.02));
        assertThat(difference.disagree()).isFalse();
        assertThat(sum).isEqualTo(MonteCarloPropagation.of(inputs, x -> x[0] + x[1], DRAWS, 9, 0.95));
        assertThat(sum.seed()).isEqualTo(9);
        assertThat(sum.draws()).isEqualTo(DRAWS);
    }

    @Test
    void inputsThatMoveAsOneAreDrawnSoBesideOthersOfTheirOwnShape() {
        var inputs = Inputs.independent(
                        List.of(Input.normal(0, 1), Input.rectangular(0, 3), Input.normal(0, 2), Input.normal(0, 1)))
                .correlated(0, 2, 1);

        assertThat(MonteCarloPropagation.of(inputs, x -> 2 * x[0] - x[2], 1000, 9, 0.95)
                        .uncertainty())
                .isCloseTo(0, within(1e-9));
        assertThat(MonteCarloPropagation.of(inputs, x -> x[0] + x[2], DRAWS, 9, 0.95)
                        .uncertainty())
                .isCloseTo(3, within(0.02));
        var flat = MonteCarloPropagation.of(inputs, x -> x[1], DRAWS, 9, 0.95);
        assertThat(flat.interval().high()).isCloseTo(0.95 * 3, within(0.01));
        assertThat(MonteCarloPropagation.of(inputs, x -> x[0] + x[3], DRAWS, 9, 0.95)
                        .uncertainty())
                .isCloseTo(Math.sqrt(2), within(0.02));
    }

    @Test
    void correlationsThatNoInputsCanHaveAreRefused() {
        var inputs = Inputs.independent(List.of(Input.normal(0, 1), Input.normal(0, 1), Input.normal(0, 1)))
                .correlated(0, 1, 0.9)
                .correlated(1, 2, 0.9)
                .correlated(0, 2, -0.9);

        assertThatThrownBy(() -> MonteCarloPropagation.of(inputs, x -> x[0], 10, 1, 0.95))
                .isInstanceOf(NonPositiveDefiniteMatrixException.class);
        assertThatThrownBy(() -> inputs.correlated(0, 0, 0.5)).hasMessageContaining("two inputs");
        assertThatThrownBy(() -> inputs.correlated(0, 1, 1.5)).hasMessageContaining("two inputs");
        assertThatThrownBy(() -> Inputs.independent(List.of(Input.rectangular(0, 1), Input.normal(0, 1)))
                        .correlated(0, 1, 0.5))
                .hasMessageContaining("only normal");
        assertThatThrownBy(() -> Inputs.independent(List.of(Input.normal(0, 1), Input.rectangular(0, 1)))
                        .correlated(0, 1, 0.5))
                .hasMessageContaining("only normal");
    }

    @Test
    void inputsThatAreNoneAreRefused() {
        assertThatThrownBy(() -> Input.normal(Double.NaN, 1)).hasMessageContaining("not an input");
        assertThatThrownBy(() -> Input.normal(1, -1)).hasMessageContaining("not an input");
        assertThatThrownBy(() -> Input.normal(1, Double.POSITIVE_INFINITY)).hasMessageContaining("not an input");
        assertThatThrownBy(() -> new Input(1, 1, 0, Input.Shape.NORMAL)).hasMessageContaining("not an input");
        assertThatThrownBy(() -> new Input(1, 1, Double.POSITIVE_INFINITY, Input.Shape.SCALED_T))
                .hasMessageContaining("finite degrees");
        assertThat(Input.sampled(new MeanEstimate(1, 2, Double.POSITIVE_INFINITY))
                        .shape())
                .isEqualTo(Input.Shape.NORMAL);
    }

    @Test
    void aPrintedOrReadNumberIsUncertainByItsRounding() {
        assertThat(ReadingUncertainty.halfWidthOfPrinted(2)).isCloseTo(0.005, within(1e-15));
        assertThat(ReadingUncertainty.halfWidthOfPrinted(0)).isEqualTo(0.5);
        assertThat(ReadingUncertainty.halfWidthOfPrinted(-1)).isEqualTo(5);
        var both = ReadingUncertainty.ofTwoReaders(10, 14, 3);
        assertThat(both.value()).isEqualTo(12);
        assertThat(both.uncertainty()).isCloseTo(Math.sqrt(3 + 4), within(1e-12));
        assertThatThrownBy(() -> ReadingUncertainty.rectangular(-1)).hasMessageContaining("not negative");
    }
}
