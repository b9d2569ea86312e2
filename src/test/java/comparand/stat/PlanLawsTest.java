package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Plans: the number found suffices, and one less does not. */
class PlanLawsTest {

    @Property(tries = 100)
    void theCountForAPrecisionIsTheSmallest(
            @ForAll @DoubleRange(min = 0.5, max = 9) double sd, @ForAll @DoubleRange(min = 0.5, max = 4) double half) {
        int n = PrecisionPlan.count(sd, half, 0.95).orElseThrow();

        assertThat(PrecisionPlan.halfWidth(n, sd, 0.95)).isLessThanOrEqualTo(half);
        if (n > 2) {
            assertThat(PrecisionPlan.halfWidth(n - 1, sd, 0.95)).isGreaterThan(half);
        }
        assertThat((double) n).isGreaterThanOrEqualTo(PrecisionPlan.normalCount(sd, half, 0.95));
        assertThat(PrecisionPlan.count(sd, half, 0.95, 0.8).orElseThrow()).isGreaterThanOrEqualTo(n);
    }

    @Test
    void assuranceAndPilotAreThoseOfAReferenceLibrary() {
        // smallest n with t s √(χ²(0.8)/(n-1))/√n <= 3 and s √(9/χ²(0.2, 9)), by SciPy 1.17.1
        assertThat(PrecisionPlan.count(7.4, 3, 0.95, 0.8).orElseThrow()).isEqualTo(31);
        assertThat(PrecisionPlan.upperSd(7.4, 9, 0.8)).isCloseTo(9.571052289099848, within(1e-6));
        assertThat(PrecisionPlan.count(1e6, 1e-3, 0.95).refusal()).contains(Refusal.NOT_REACHABLE);
        assertThatThrownBy(() -> PrecisionPlan.halfWidth(1, 1, 0.95)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> PrecisionPlan.count(1, 1, 0.95, 1)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> PrecisionPlan.upperSd(1, 3, 0)).hasMessageContaining("between 0 and 1");
    }

    @Property(tries = 100)
    void moreCentresBeatMoreCases(
            @ForAll @DoubleRange(min = 0.1, max = 5) double tau,
            @ForAll @DoubleRange(min = 0.1, max = 9) double sd,
            @ForAll @IntRange(min = 2, max = 12) int centres,
            @ForAll @IntRange(min = 1, max = 12) int cases) {
        var plan = new CentrePlan(tau, sd, 0.95);

        assertThat(plan.halfWidth(2 * centres, cases)).isLessThan(plan.halfWidth(centres, 2 * cases));
        assertThat(plan.halfWidth(centres, cases)).isGreaterThan(plan.leastHalfWidth(centres));
        assertThat(plan.halfWidth(centres, 1_000_000_000))
                .isCloseTo(plan.leastHalfWidth(centres), within(1e-3 * plan.leastHalfWidth(centres)));
        double wanted = plan.halfWidth(centres, cases);
        assertThat(plan.centres(cases, wanted).orElseThrow()).isEqualTo(centres);
        assertThat(plan.casesEach(centres, wanted * (1 + 1e-12)).orElseThrow()).isEqualTo(cases);
        assertThat(plan.casesEach(centres, plan.leastHalfWidth(centres)).refusal())
                .contains(Refusal.NOT_REACHABLE);
    }

    @Test
    void centrePlansRefuseWhatIsNoSpreadOrNumber() {
        assertThatThrownBy(() -> new CentrePlan(-1, 1, 0.95)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> new CentrePlan(1, -1, 0.95)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> new CentrePlan(1, 1, 1)).hasMessageContaining("between 0 and 1");
        var plan = new CentrePlan(1, 1, 0.95);
        assertThatThrownBy(() -> plan.halfWidth(1, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> plan.halfWidth(2, 0)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> plan.leastHalfWidth(1)).hasMessageContaining("at least 2");
    }

    @Property(tries = 60)
    void thePowerAtTheExactCountIsTheOneWanted(
            @ForAll @DoubleRange(min = 0.4, max = 2) double effect,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double power) {
        var plan = new PowerPlan(-effect, 1, 0.05);
        double exact = plan.exactCount(power).orElseThrow();
        int whole = plan.count(power).orElseThrow();

        assertThat(whole).isEqualTo((int) Math.ceil(exact - 1e-9));
        if (exact > 2) {
            assertThat(plan.power(exact)).isCloseTo(power, within(1e-9));
        }
        assertThat(exact).isGreaterThan(plan.normalCount(power));
    }

    @Test
    void powerIsThatOfAReferenceLibrary() {
        // scipy.stats.nct, both tails (SciPy 1.17.1)
        var plan = new PowerPlan(5, 7.4, 0.05);
        assertThat(plan.power(20)).isCloseTo(0.8175517060744715, within(1e-8));
        assertThat(plan.power(3)).isCloseTo(0.11135897473873192, within(1e-8));
        // with unrounded quantiles the text-book's 41.99 is 42.03
        assertThat(new PowerPlan(1, 2, 0.05).normalCount(0.9)).isCloseTo(42.03, within(0.005));
        assertThatThrownBy(() -> new PowerPlan(0, 1, 0.05)).hasMessageContaining("a difference");
        assertThatThrownBy(() -> new PowerPlan(1, 0, 0.05)).hasMessageContaining("a spread");
        assertThatThrownBy(() -> new PowerPlan(1, 1, 0)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> plan.count(1)).hasMessageContaining("between 0 and 1");
        assertThat(new PowerPlan(100, 1, 0.05).exactCount(0.5).orElseThrow()).isEqualTo(2);
    }

    @Test
    void aMarginIsReachedByTheSmallestNumberOrNotAtAll() {
        var plan = new EquivalencePlan(5, 1, 7.4, 0.05);
        int n = plan.countOfEachGroup(0.8).orElseThrow();

        assertThat(plan.powerOfTwoGroups(n, n)).isGreaterThanOrEqualTo(0.8);
        assertThat(plan.powerOfTwoGroups(n - 1, n - 1)).isLessThan(0.8);
        int against = plan.countAgainst(100, 0.8).orElseThrow();
        assertThat(plan.powerOfTwoGroups(against, 100)).isGreaterThanOrEqualTo(0.8);
        assertThat(plan.powerOfTwoGroups(against - 1, 100)).isLessThan(0.8);
        // t s/√n₂ = 1.645 · 7.4/√5 > 5: not even without any local uncertainty
        assertThat(plan.countAgainst(5, 0.8).refusal()).contains(Refusal.NOT_REACHABLE);
        // t s/√n₂ = 1.645 · 7.4/√10 = 3.8 < 5, and still out of reach at 80 %
        assertThat(plan.countAgainst(10, 0.8).refusal()).contains(Refusal.NOT_REACHABLE);
    }

    @Test
    void atTheMarginThePowerIsTheErrorAllowed() {
        // with little uncertainty and a true difference just inside the margin, one side alone errs, at α
        double power = new EquivalencePlan(5, 5 - 1e-9, 1, 0.05).powerOfOneGroup(40);

        assertThat(power).isCloseTo(0.05, within(1e-6));
    }

    @Test
    void equivalencePlansRefuseWhatLiesOutside() {
        assertThatThrownBy(() -> new EquivalencePlan(5, 5, 1, 0.05)).hasMessageContaining("inside its margin");
        assertThatThrownBy(() -> new EquivalencePlan(0, 0, 1, 0.05)).hasMessageContaining("inside its margin");
        assertThatThrownBy(() -> new EquivalencePlan(5, 0, 0, 0.05)).hasMessageContaining("a spread");
        assertThatThrownBy(() -> new EquivalencePlan(5, 0, 1, 0.5)).hasMessageContaining("between 0 and 1");
        var plan = new EquivalencePlan(5, 0, 1, 0.05);
        assertThatThrownBy(() -> plan.powerOfOneGroup(1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> plan.powerOfTwoGroups(0, 5)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> plan.powerOfTwoGroups(5, 1)).hasMessageContaining("at least 2");
        assertThatThrownBy(() -> plan.countOfOneGroup(1)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> plan.countOfEachGroup(0)).hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> plan.countAgainst(9, 1)).hasMessageContaining("between 0 and 1");
    }
}
