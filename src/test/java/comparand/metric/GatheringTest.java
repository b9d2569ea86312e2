package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import comparand.metric.Gathering.Fit;
import comparand.metric.Gathering.Over;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Lines, crossings, and when a formula may be used. */
class GatheringTest {

    private static final double[] FRACTION = {0.40, 0.45, 0.50, 0.60, 0.70};
    private static final double[] UPTAKE = {52, 60, 70, 88, 100};

    private static Fit fit(Fit.Form form) {
        return new Fit("x", "y", form, Fit.Result.SLOPE, Over.GROUP);
    }

    @Test
    @DisplayName("five points: slope 163.79 and intercept -12.81; 140.58 through the origin (computed)")
    void leastSquares() {
        var line = fit(Fit.Form.WITH_INTERCEPT).line(FRACTION, UPTAKE).orElseThrow();
        var origin = fit(Fit.Form.THROUGH_ORIGIN).line(FRACTION, UPTAKE).orElseThrow();

        assertThat(line.slope()).isCloseTo(163.79, within(0.005));
        assertThat(line.intercept()).isCloseTo(-12.81, within(0.005));
        assertThat(origin.slope()).isCloseTo(140.58, within(0.005));
        assertThat(origin.intercept()).isZero();
    }

    @Test
    @DisplayName(
            "oxygen fraction at 80 mL/min: 0.56663 by the line inverted, 0.56907 through the origin, 0.56635 by the"
                    + " line of fraction on uptake (computed): three definitions, three numbers")
    void fractionAtUptake() {
        assertThat(fit(Fit.Form.WITH_INTERCEPT)
                        .line(FRACTION, UPTAKE)
                        .orElseThrow()
                        .inverse(80))
                .isCloseTo(0.56663, within(0.000005));
        assertThat(fit(Fit.Form.THROUGH_ORIGIN)
                        .line(FRACTION, UPTAKE)
                        .orElseThrow()
                        .inverse(80))
                .isCloseTo(0.56907, within(0.000005));
        assertThat(fit(Fit.Form.WITH_INTERCEPT)
                        .line(UPTAKE, FRACTION)
                        .orElseThrow()
                        .at(80))
                .isCloseTo(0.56635, within(0.000005));
    }

    /** Where the origin lies is a matter of the scale: K or °C, pressure above that of the room or above nothing. */
    @Test
    @DisplayName(
            "(1, 2), (2, 4), (4, 7): slope (38 - 91/3) / (21 - 49/3) = 23/14, also with 100 000 000 added to x or y")
    void aLineKeepsItsDigitsFarFromTheOrigin() {
        for (double right : new double[] {0, 1e8}) {
            for (double up : new double[] {0, 1e8}) {
                var x = new double[] {right + 1, right + 2, right + 4};
                var y = new double[] {up + 2, up + 4, up + 7};
                var line = fit(Fit.Form.WITH_INTERCEPT).line(x, y).orElseThrow();

                assertThat(line.slope()).isCloseTo(23.0 / 14, within(1e-12));
                // the middle of the points is on it; at 1e8 doubles stand 1.5e-8 apart
                assertThat(line.at(right + 7.0 / 3)).isCloseTo(up + 13.0 / 3, within(1e-7));
            }
        }
    }

    @Test
    void pointsThatFixNoLineGiveNone() {
        assertThat(fit(Fit.Form.WITH_INTERCEPT).of(new double[] {1}, new double[] {2}))
                .isEmpty();
        assertThat(fit(Fit.Form.WITH_INTERCEPT).of(new double[] {1, 1}, new double[] {2, 3}))
                .isEmpty();
        assertThat(fit(Fit.Form.THROUGH_ORIGIN).of(new double[] {0}, new double[] {2}))
                .isEmpty();
        assertThat(fit(Fit.Form.THROUGH_ORIGIN)
                        .of(new double[] {2}, new double[] {3})
                        .orElseThrow())
                .isEqualTo(1.5);
    }

    @Test
    @DisplayName("oxygen per litre 54, 50, 47, 43.2 at 1.0 to 2.5 L/min falls to 45 at 2.2632 L/min (computed)")
    void crossingBetweenNeighbours() {
        var crossing = new Gathering.Crossing("q", "y", 45);

        // the order of rows does not matter
        var found = crossing.of(new double[] {2.5, 1.0, 2.0, 1.5}, new double[] {43.2, 54, 47, 50});
        assertThat(found).isInstanceOf(Crossed.At.class);
        assertThat(found.x()).isCloseTo(2.2632, within(0.00005));
        assertThat(found.sign()).isEmpty();
    }

    @Test
    void nothingIsReadOffBeyondTheFlowsTested() {
        var crossing = new Gathering.Crossing("q", "y", 45);

        assertThat(crossing.of(new double[] {1, 2}, new double[] {60, 50})).isEqualTo(new Crossed.AboveLargest(2));
        assertThat(crossing.of(new double[] {1, 2}, new double[] {44, 40})).isEqualTo(new Crossed.BelowSmallest(1));
        assertThat(crossing.of(new double[] {1, 2}, new double[] {45, 40})).isEqualTo(new Crossed.At(1));
        assertThat(crossing.of(new double[] {1, 2}, new double[] {50, 45})).isEqualTo(new Crossed.At(2));
        assertThat(new Crossed.AboveLargest(2).sign()).isEqualTo(">");
        assertThatThrownBy(() -> crossing.of(new double[0], new double[0])).hasMessageContaining("points");
    }

    @Test
    void repeatsAtOneFlowAreAveragedFirst() {
        var crossing = new Gathering.Crossing("q", "y", 45);

        assertThat(crossing.of(new double[] {1, 2, 2}, new double[] {50, 38, 42})
                        .x())
                .isCloseTo(1.5, within(1e-12));
    }

    @Test
    void whatLiesBelowAllFlowsComesFirstAndWhatLiesAboveLast() {
        assertThat(List.of(new Crossed.AboveLargest(2), new Crossed.At(2), new Crossed.BelowSmallest(2)).stream()
                        .sorted(Crossed.ORDER)
                        .map(Crossed::sign))
                .containsExactly("<", "", ">");
    }

    @Test
    void aFormulaForHumanBloodIsUsedForNoOtherAndNotForUnknown() {
        var human = new Applies(Conditions.SPECIES, List.of("human"));

        assertThat(human.holds(Optional.of("human"))).isTrue();
        assertThat(human.holds(Optional.of("bovine"))).isFalse();
        assertThat(human.holds(Optional.empty())).isFalse();
        assertThat(human).hasToString("only when blood species is human");
        assertThatThrownBy(() -> new Applies(Conditions.SPECIES, List.of("equine")))
                .hasMessageContaining("species");
    }

    @Test
    void noSaturationIsComputedForAnimalBlood() {
        var blood = Computed.from("outlet-po2=40 mmHg", "outlet-ph=7.4 [pH]").under("saturation-kind", "severinghaus");

        assertThat(blood.tried("outlet-saturation")).isEmpty();
        assertThat(blood.where(Conditions.SPECIES, "bovine").tried("outlet-saturation"))
                .isEmpty();
        assertThat(blood.where(Conditions.SPECIES, "human").tried("outlet-saturation"))
                .isPresent();
    }

    @Test
    void noSaturationIsComputedWhereAMeasuredOneIsAskedFor() {
        assertThat(Computed.from("outlet-po2=40 mmHg", "outlet-ph=7.4 [pH]")
                        .where(Conditions.SPECIES, "human")
                        .tried("outlet-saturation"))
                .isEmpty();
    }

    @Test
    void nothingIsCorrectedForDilutionWhereBloodWasGivenOrMayHaveBeen() {
        var samples = Computed.from(
                "platelet-count-before=280 10⁹/L",
                "platelet-count-after=120 10⁹/L",
                "haematocrit-before=36 %",
                "haematocrit-after=26 %");

        assertThat(samples.tried("corrected-platelet-change")).isEmpty();
        assertThat(samples.where(Conditions.TRANSFUSION, "given").tried("corrected-platelet-change"))
                .isEmpty();
        assertThat(samples.where(Conditions.TRANSFUSION, "none").tried("corrected-platelet-change"))
                .isPresent();
    }

    @Test
    void aMedianIsOfMembersResults() {
        assertThatThrownBy(() -> new Gathering.Median(new Gathering.Sums(Over.GROUP)))
                .hasMessageContaining("median");
        assertThatThrownBy(() -> new Gathering.Lowest(
                        List.of(new Gathering.Crossing("q", "y", 45), new Gathering.Crossing("p", "y", 38))))
                .hasMessageContaining("one x");
    }
}
