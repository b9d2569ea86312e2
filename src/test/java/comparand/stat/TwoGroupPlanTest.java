package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans for two groups of one size, and for one group against a published mean. */
class TwoGroupPlanTest {

    private static final ComparedGroups TWO = ComparedGroups.EACH_OF_TWO;

    /** Published: mean with SD 3.1 of 5, SE 3.1/√5 on 4 degrees of freedom. */
    private static final ComparedGroups FIVE = ComparedGroups.against(new Moments(0, 3.1, 5).estimate());

    private static final ComparedGroups FORTY_TWO = ComparedGroups.against(new Moments(0, 13, 42).estimate());

    @ParameterizedTest(name = "d = {0}, power {1}: {2} in each group")
    @CsvSource({"0.2, 0.8, 393", "0.5, 0.8, 64", "0.8, 0.8, 26"})
    @DisplayName(
            "the table of Cohen, Statistical Power Analysis, 2nd ed. 1988, table 2.4.1, two-sided 0.05 (from memory)")
    void cohen(double d, double power, int n) {
        // the book rounds to the nearest whole number: 393.4 is printed as 393
        assertThat(new PowerPlan(d, 1, 0.05, TWO).exactCount(power).orElseThrow())
                .isBetween(n - 1.0, n + 0.5);
    }

    @Test
    @DisplayName(
            "R: power.t.test(delta = 1, sd = 1, power = .90) gives n = 22.02 in each group (from its manual, from memory)")
    void manualOfR() {
        assertThat(new PowerPlan(1, 1, 0.05, TWO).exactCount(0.9).orElseThrow()).isCloseTo(22.02, within(0.005));
    }

    @Test
    @DisplayName(
            "haemolysis with SD 2.4: 5 in each group show 5 and 24 show 2 with 80 %; 9 give a half-width below 2.5")
    void haemolysis() {
        assertThat(new PowerPlan(5, 2.4, 0.05, TWO).count(0.8).orElseThrow()).isEqualTo(5);
        assertThat(new PowerPlan(2, 2.4, 0.05, TWO).count(0.8).orElseThrow()).isEqualTo(24);
        assertThat(PrecisionPlan.count(TWO, 2.4, 2.5, 0.95).orElseThrow()).isEqualTo(9);
        // scipy.stats.nct and t (SciPy 1.17.1)
        assertThat(new PowerPlan(5, 2.4, 0.05, TWO).exactCount(0.8).orElseThrow())
                .isCloseTo(4.796607336737275, within(1e-6));
        assertThat(new PowerPlan(2, 2.4, 0.05, TWO).power(24)).isCloseTo(0.8067669888040837, within(1e-8));
        assertThat(PrecisionPlan.halfWidth(TWO, 9, 2.4, 0.95)).isCloseTo(2.398399060084234, within(1e-8));
        assertThat(PrecisionPlan.halfWidth(TWO, 8, 2.4, 0.95)).isCloseTo(2.5737440255013646, within(1e-8));
    }

    @Test
    @DisplayName("free haemoglobin: 10 mg/dL with SD 15 and 90 % power takes 49 in each group")
    void freeHaemoglobin() {
        assertThat(new PowerPlan(10, 15, 0.05, TWO).count(0.9).orElseThrow()).isEqualTo(49);
        assertThat(new PowerPlan(10, 15, 0.05, TWO).power(48)).isCloseTo(0.8983982154288169, within(1e-8));
    }

    @Test
    @DisplayName("against a published mean: power and half-width after Welch are those of a reference library")
    void againstAPublishedMean() {
        // t and nct with Welch's degrees of freedom, every n tried in turn (SciPy 1.17.1)
        assertThat(PrecisionPlan.halfWidth(FIVE, 6, 3.3, 0.95)).isCloseTo(4.386264794153514, within(1e-8));
        assertThat(new PowerPlan(5, 3.3, 0.05, FIVE).power(10)).isCloseTo(0.7225752229508352, within(1e-8));
        assertThat(PrecisionPlan.count(FORTY_TWO, 14, 5, 0.95).orElseThrow()).isEqualTo(86);
        assertThat(new PowerPlan(10, 14, 0.05, FORTY_TWO).count(0.9).orElseThrow())
                .isEqualTo(38);
        assertThat(new PowerPlan(5, 3.3, 0.05, FIVE).count(0.7).orElseThrow()).isEqualTo(9);
    }

    @Test
    @DisplayName("an interval that grows again with n is met where it is narrow, or nowhere")
    void notMonotone() {
        // Welch's t up to n = 11; beyond, t of both sides weighted by their variances (SciPy 1.17.1)
        assertThat(PrecisionPlan.halfWidth(FIVE, 11, 3.3, 0.95)).isCloseTo(3.9103995682465693, within(1e-8));
        assertThat(PrecisionPlan.halfWidth(FIVE, 12, 3.3, 0.95)).isCloseTo(4.359830104363466, within(1e-8));
        assertThat(PrecisionPlan.halfWidth(FIVE, 1000, 3.3, 0.95)).isCloseTo(3.853670787579633, within(1e-8));
        assertThat(PrecisionPlan.count(FIVE, 3.3, 3.95, 0.95).orElseThrow()).isEqualTo(11);
        assertThat(PrecisionPlan.count(FIVE, 3.3, 3.9, 0.95).orElseThrow()).isEqualTo(93);
        // with any number of ours t(4) 3.1/√5 = 3.849 stays
        assertThat(PrecisionPlan.count(FIVE, 3.3, 3.84, 0.95).refusal()).contains(Refusal.NOT_REACHABLE);
    }

    @Test
    @DisplayName("no number of our own suffices where the published mean alone is too uncertain")
    void outOfReach() {
        // with known SDs the standard error would have to fall to 4/(1.96 + 0.84) = 1.43, and 3.1/√5 = 1.39: just in
        // reach
        assertThat(new PowerPlan(4, 3.3, 0.05, FIVE).normalCount(0.8)).isGreaterThan(50);
        assertThat(new PowerPlan(3.8, 3.3, 0.05, FIVE).normalCount(0.8)).isInfinite();
        assertThat(new PowerPlan(3.8, 3.3, 0.05, FIVE).count(0.8).refusal()).contains(Refusal.NOT_REACHABLE);
        assertThat(new PowerPlan(5, 3.3, 0.05, FIVE).count(0.8).refusal()).contains(Refusal.NOT_REACHABLE);
    }

    @Test
    @DisplayName("a mean known without uncertainty is a fixed value")
    void fixedValue() {
        var exact = ComparedGroups.against(new MeanEstimate(7, 0, Double.POSITIVE_INFINITY));

        assertThat(PrecisionPlan.halfWidth(exact, 12, 7.4, 0.95)).isEqualTo(PrecisionPlan.halfWidth(12, 7.4, 0.95));
        assertThat(new PowerPlan(5, 7.4, 0.05, exact)).isEqualTo(new PowerPlan(5, 7.4, 0.05));
        assertThatThrownBy(() -> new ComparedGroups.AgainstKnown(-1, 4)).hasMessageContaining("not a known mean");
        assertThatThrownBy(() -> new ComparedGroups.AgainstKnown(1, 0)).hasMessageContaining("not a known mean");
    }

    @Test
    @DisplayName("centres of their own for both groups: J so that t(2J-2) √(2 (τ² + s²/m)/J) is small enough")
    void centres() {
        var plan = new CentrePlan(4, 12, 0.95);

        // SciPy 1.17.1
        assertThat(plan.halfWidth(TWO, 10, 8)).isCloseTo(5.478534407153053, within(1e-8));
        assertThat(plan.centres(TWO, 8, 6).orElseThrow()).isEqualTo(9);
    }

    @Property(tries = 60)
    void theNumberFoundSufficesAndOneLessDoesNot(
            @ForAll @DoubleRange(min = 0.5, max = 3) double sd,
            @ForAll @DoubleRange(min = 0.3, max = 2) double wanted,
            @ForAll @IntRange(min = 5, max = 60) int published) {
        var against = ComparedGroups.against(new Moments(0, 1, published).estimate());
        for (var groups : new ComparedGroups[] {TWO, against, ComparedGroups.FIXED_VALUE}) {
            PrecisionPlan.count(groups, sd, wanted, 0.95).value().ifPresent(n -> {
                assertThat(PrecisionPlan.halfWidth(groups, n, sd, 0.95)).isLessThanOrEqualTo(wanted);
                if (n > 2) {
                    assertThat(PrecisionPlan.halfWidth(groups, n - 1, sd, 0.95)).isGreaterThan(wanted);
                }
            });
            var power = new PowerPlan(wanted, sd, 0.05, groups);
            power.count(0.8).value().ifPresent(n -> {
                assertThat(power.power(n)).isGreaterThanOrEqualTo(0.8);
                if (n > 2) {
                    assertThat(power.power(n - 1)).isLessThan(0.8);
                }
            });
        }
    }
}
