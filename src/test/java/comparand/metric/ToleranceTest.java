package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far two values of a condition may lie apart, as a person writes it, and what lies just within and just beyond. */
class ToleranceTest {

    private static final Unit GRAMS = Unit.of("g/dL");
    private static final Unit PERCENT = Unit.of("%");
    private static final Unit FLOW = Unit.of("L/min");

    private static Parsed<Tolerance> read(String text, String condition) {
        return Tolerance.read(
                text,
                DecimalSign.POINT,
                Catalogue.shipped().condition(condition).orElseThrow());
    }

    private static Parsed.Fault<?> fault(String text, String condition) {
        assertThat(read(text, condition)).isInstanceOf(Parsed.Fault.class);
        return (Parsed.Fault<?>) read(text, condition);
    }

    @ParameterizedTest(name = "{0} of {1} is printed {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "equal | species | equal",
                "equal | haemoglobin | equal",
                "' equal ' | haemoglobin | equal",
                "1 g/dL | haemoglobin | ± 1 g/dL",
                "10 g/L | haemoglobin | ± 10 g/L",
                "0 g/dL | haemoglobin | ± 0 g/dL",
                "5 % | blood-flow | ± 5 % of the value",
                "5 percent | blood-flow | ± 5 % of the value",
                "5 pct | blood-flow | ± 5 % of the value",
                "5 % of the value | blood-flow | ± 5 % of the value",
                "5 % of the value | haematocrit | ± 5 % of the value",
                "7.5 % of the value | haemoglobin | ± 7.5 % of the value",
                "2 percentage points | inlet-saturation | ± 2 percentage points",
                "2 percentage points | oxygen-fraction | ± 2 percentage points",
                "0.02 | oxygen-fraction | ± 0.02",
                "1 K | temperature | ± 1 K",
                "' 1 °C ' | temperature | ± 1 °C"
            })
    void aToleranceIsReadAsItIsWritten(String text, String condition, String words) {
        assertThat(read(text, condition).orThrow().words()).isEqualTo(words);
    }

    @Test
    void aDecimalCommaIsReadWhereTheFileHasOne() {
        assertThat(Tolerance.read("0,5 g/dL", DecimalSign.COMMA, Conditions.HAEMOGLOBIN)
                        .orThrow()
                        .same(12.0, 12.5, GRAMS))
                .isTrue();
    }

    @ParameterizedTest(name = "{0} of {1} is refused: {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "1 L/min | species | named in words, so its tolerance can only be `equal` | write `equal`",
                "-1 g/dL | haemoglobin | a tolerance is not negative, got `-1 g/dL` | such as `1 g/dL`",
                "-5 % | blood-flow | a tolerance is not negative, got `-5 %` | such as `1 g/dL`",
                "5 g% of the value | haemoglobin | `5 g%` is no share of a value | such as `5 % of the value`",
                "5 % | haematocrit | `5 %` may mean per cent of the value or percentage points | `5 percentage points`",
                "5 percent | haematocrit | may mean per cent of the value or percentage points | `5 % of the value`",
                "5 % | oxygen-fraction | may mean per cent of the value or percentage points | `5 % of the value`",
                "0.05 | haematocrit | `0.05` may be a fraction or percentage points | `0.05 % of the value`",
                "5 vol% of the value | blood-flow | `5 vol%` is no share of a value | such as `5 % of the value`",
                "5 vol% | blood-flow | is not a distance on `blood-flow`, which is kept in L/min | write it in L/min",
                "5 mmHg | blood-flow | is not a distance on `blood-flow`, which is kept in L/min | write it in L/min",
                "0.05 | blood-flow | is not a distance on `blood-flow`, which is kept in L/min | write it in L/min",
                "about right | blood-flow | does not start with a number | write a number and a unit"
            })
    void whatMayMeanTwoThingsOrNothingIsRefused(String text, String condition, String problem, String fix) {
        var fault = fault(text, condition);

        assertThat(fault.problem()).contains(problem);
        assertThat(fault.fix()).contains(fix);
        assertThat(fault.at()).isZero();
        assertThat(fault.length()).isEqualTo(text.length());
    }

    @Test
    @DisplayName("12 and 13 g/dL are within 1 g/dL of each other, and within 10 g/L; 12 and 13.01 are not")
    void aFixedDistance() {
        for (var text : new String[] {"1 g/dL", "10 g/L"}) {
            var tolerance = read(text, "haemoglobin").orThrow();

            assertThat(tolerance.same(12, 13, GRAMS)).isTrue();
            assertThat(tolerance.same(13, 12, GRAMS)).isTrue();
            assertThat(tolerance.same(12, 13.01, GRAMS)).isFalse();
            assertThat(tolerance.same(13.01, 12, GRAMS)).isFalse();
        }
    }

    @Test
    @DisplayName("1 °C is a difference: 36 and 37 °C are within it, 309.15 and 310.15 K too, 36 and 37.1 °C are not")
    void aDistanceOfTemperature() {
        var tolerance = Tolerance.within("1 °C");

        assertThat(tolerance.same(36, 37, Unit.of("°C"))).isTrue();
        assertThat(tolerance.same(309.15, 310.15, Unit.of("K"))).isTrue();
        assertThat(tolerance.same(36, 37.1, Unit.of("°C"))).isFalse();
    }

    @Test
    @DisplayName("5 % of 4.2 L/min is 0.21, of 3.99 L/min it is 0.1995: it is a share of the published value")
    void aShareOfThePublishedValue() {
        var tolerance = Tolerance.percent("5 %");

        assertThat(tolerance.same(3.99, 4.2, FLOW)).isTrue();
        assertThat(tolerance.same(4.2, 3.99, FLOW)).isFalse();
        assertThat(tolerance.same(4.2, 4.0, FLOW)).isTrue();
        assertThat(tolerance.same(4.201, 4.0, FLOW)).isFalse();
        assertThat(tolerance.same(-4.2, -4.0, FLOW)).isTrue();
        assertThat(tolerance.same(-4.2, 4.0, FLOW)).isFalse();
    }

    @Test
    @DisplayName("percentage points on a saturation of 65 %: 67 is within 2, 67.1 is not")
    void percentagePoints() {
        var points = read("2 percentage points", "inlet-saturation").orThrow();

        assertThat(points.same(67, 65, PERCENT)).isTrue();
        assertThat(points.same(67.1, 65, PERCENT)).isFalse();
        assertThat(points.same(0.67, 0.65, Unit.ONE)).isTrue();
        assertThat(points.same(0.68, 0.65, Unit.ONE)).isFalse();
    }

    /** In doubles 0.1 + 0.2 is not 0.3, and 0.4 - 0.3 is more than 0.1; a billionth is allowed on top. */
    @Test
    void theLastBitOfADoubleDoesNotDecide() {
        assertThat(Tolerance.EQUAL.same(0.1 + 0.2, 0.3, FLOW)).isTrue();
        assertThat(Tolerance.within("0.1").same(0.4, 0.3, Unit.ONE)).isTrue();
        assertThat(Tolerance.percent("10 %").same(3.3, 3.0, FLOW)).isTrue();
        assertThat(Tolerance.EQUAL.same(0, 0, FLOW)).isTrue();
    }

    @Test
    @DisplayName("equal are 5 and 5 + 4e-9 (less than a billionth off), not 5 and 5 + 6e-9; so with 1e6 and 1e-3")
    void aBillionthIsAllowedAndNoMore() {
        assertThat(Tolerance.EQUAL.same(5 + 4e-9, 5, FLOW)).isTrue();
        assertThat(Tolerance.EQUAL.same(5 + 6e-9, 5, FLOW)).isFalse();
        assertThat(Tolerance.EQUAL.same(1e6 + 0.9e-3, 1e6, FLOW)).isTrue();
        assertThat(Tolerance.EQUAL.same(1e6 + 1.1e-3, 1e6, FLOW)).isFalse();
        assertThat(Tolerance.within("2").same(7 + 1e-9, 5, Unit.ONE)).isTrue();
        assertThat(Tolerance.within("2").same(7 + 3e-9, 5, Unit.ONE)).isFalse();
        assertThat(Tolerance.percent("10 %").same(5.5 + 0.4e-9, 5, FLOW)).isTrue();
        assertThat(Tolerance.percent("10 %").same(5.5 + 0.6e-9, 5, FLOW)).isFalse();
    }

    @Property(tries = 200)
    @Label("a value is the same as itself, and a wider tolerance never parts what a narrower one joins")
    void wider(
            @ForAll @DoubleRange(min = -100, max = 100) double ours,
            @ForAll @DoubleRange(min = -100, max = 100) double theirs) {
        for (var kind : new String[] {"%d %%", "%d percentage points"}) {
            boolean before = false;
            for (int amount = 0; amount <= 200; amount += 20) {
                var tolerance = kind.contains("points")
                        ? Tolerance.within(kind.formatted(amount))
                        : Tolerance.percent(kind.formatted(amount));
                assertThat(tolerance.same(theirs, theirs, PERCENT)).isTrue();
                boolean now = tolerance.same(ours, theirs, PERCENT);
                assertThat(now || !before).isTrue();
                before = now;
            }
        }
    }
}
