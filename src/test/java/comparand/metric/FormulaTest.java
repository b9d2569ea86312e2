package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import comparand.unit.Dimension;
import comparand.unit.Parsed;
import comparand.unit.Unit;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Formulas as authors of libraries write them: arithmetic as in school, quantities as in physics, and nothing more. */
class FormulaTest {

    private static final Map<String, Double> NUMBERS = Map.of("a", 2.0, "b", 3.0, "c", 5.0);

    private static double value(String text) {
        return Formula.read(text, NUMBERS.keySet()).orThrow().value(NUMBERS);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "1 + 2 * 3 | 7",
                "(1 + 2) * 3 | 9",
                "2 ^ 3 ^ 2 | 512",
                "-2 ^ 2 | -4",
                "(-2) ^ 2 | 4",
                "2 ^ -1 | 0.5",
                "a - b - c | -6",
                "a / b / c | 0.13333333333333333",
                "a · b × c − 1 | 29",
                "c ÷ a | 2.5",
                "--a | 2",
                "1.5e3 / 1E-1 | 15000",
                "sqrt(a + 7) | 3",
                "exp(0) + ln(1) + log10(1000) | 4",
                "min(c, a, b) * 10 + max(a, b) | 23",
                "abs(a - c) | 3"
            })
    void arithmeticIsThatOfSchool(String text, double expected) {
        assertThat(value(text)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest(name = "{0}: at {1}, {2}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "a + | 2 | stops in the middle",
                "(a + b | 5 | not closed",
                "a b | 2 | does not belong",
                "a + d | 4 | `d` is not the symbol",
                "exec(a) | 0 | `exec` is no function",
                "a(b) | 0 | a sign is missing",
                "min(a) | 0 | takes 2 to 8 numbers, got 1",
                "1,5 * a | 1 | does not belong",
                "a ** b | 3 | cannot stand here",
                "a = b | 2 | does not belong",
                "for(;;) | 0 | `for` is no function",
                "a; b | 1 | does not belong",
                "'' | 0 | stops in the middle"
            })
    void whatIsNoFormulaIsFoundAtItsPlace(String text, int at, String problem) {
        var fault = fault(Formula.read(text, NUMBERS.keySet()));

        assertThat(fault.problem()).contains(problem);
        assertThat(fault.at()).isEqualTo(at);
    }

    private static Parsed.Fault<?> fault(Parsed<?> parsed) {
        assertThat(parsed).isInstanceOf(Parsed.Fault.class);
        return (Parsed.Fault<?>) parsed;
    }

    @Test
    @Timeout(5)
    void aFormulaIsBoundedInLengthDepthAndTime() {
        assertThat(fault(Formula.read("(".repeat(100) + "a", Set.of("a"))).problem())
                .contains("30 deep");
        assertThat(fault(Formula.read("-".repeat(100) + "a", Set.of("a"))).problem())
                .contains("30 signs");
        assertThat(fault(Formula.read("a^".repeat(100) + "a", Set.of("a"))).problem())
                .contains("30 powers");
        assertThat(fault(Formula.read("a+".repeat(300) + "a", Set.of("a"))).problem())
                .contains("400 characters");
        assertThat(fault(Formula.read("a+".repeat(150) + "a", Set.of("a"))).problem())
                .contains("200 parts");
        assertThat(value("9 ^ 99999999")).isInfinite();
    }

    private static Parsed<Dimension> dimension(String text) {
        var units = Map.of("q", Unit.of("L/min"), "p", Unit.of("mmHg"), "s", Unit.ONE, "t", Unit.of("°C"));
        return Formula.read(text, units.keySet()).orThrow().dimension(units);
    }

    @ParameterizedTest(name = "{0} is in {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "p / q | mmHg·min/L",
                "2 * p | mmHg",
                "q ^ 2 | L2/min2",
                "sqrt(q * q) | L/min",
                "p * exp(-s) | mmHg",
                "min(p, 3 * p) + abs(p) | mmHg",
                "(t - t) / (t - 2 * t) | 1",
                "q ^ -1 * q | 1"
            })
    void quantitiesKeepTheirDimension(String text, String unit) {
        assertThat(dimension(text).orThrow()).isEqualTo(Unit.of(unit).dimension());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "p + q",
                "p + 1",
                "ln(p)",
                "exp(q)",
                "sqrt(p)",
                "p ^ s",
                "s ^ p",
                "p ^ 0.5",
                "max(p, q)",
                "q ^ 99"
            })
    void unlikeQuantitiesAreNotMixed(String text) {
        assertThat(dimension(text)).isInstanceOf(Parsed.Fault.class);
    }

    @Test
    void unitsAreConvertedSoThatNoFactorIsNeeded() {
        // 10 · 1.2 · (13.8913 - 9.4978) in the usual spelling; principle of Fick
        var units = Map.of("Q", Unit.of("L/min"), "C_in", Unit.of("mL/dL"), "C_out", Unit.of("mL/dL"));
        var transfer = Formula.read("Q * (C_out - C_in)", units.keySet()).orThrow();
        var numbers = Map.of("Q", 1.2, "C_in", 9.4978, "C_out", 13.8913);

        assertThat(transfer.quantity(numbers, units, Unit.of("mL/min"))).isCloseTo(52.722, within(5e-4));
        assertThat(transfer.value(numbers)).isCloseTo(5.2722, within(5e-5));
    }

    @Test
    void shippedFormulasComeOutTheSameWrittenAsText() {
        var units = Map.of("P", Unit.of("mmHg"), "Q", Unit.of("mL/min"));
        var resistance = Formula.read("P / Q", units.keySet()).orThrow();
        assertThat(resistance.quantity(Map.of("P", 51.0, "Q", 1200.0), units, Unit.of("mmHg·min/L")))
                .isCloseTo(42.5, within(1e-9));

        var severinghaus =
                Formula.read("1 / (23400 / (P^3 + 150*P) + 1)", Set.of("P")).orThrow();
        for (double p : new double[] {10, 26.86, 40, 100, 300}) {
            assertThat(severinghaus.value(Map.of("P", p))).isCloseTo(OxygenDissociation.saturation(p), within(1e-14));
        }
    }

    @Test
    void temperaturesSubtractWhateverTheirZero() {
        var units = Map.of("a", Unit.of("°C"), "b", Unit.of("°F"), "w", Unit.of("K"));
        var factor = Formula.read("(b - a) / (w - a)", units.keySet()).orThrow();

        // 30 °C, 96.8 °F = 36 °C, 313.15 K = 40 °C
        assertThat(factor.quantity(Map.of("a", 30.0, "b", 96.8, "w", 313.15), units, Unit.ONE))
                .isCloseTo(0.6, within(1e-9));
    }

    /** A formula as text, and what it is worth. */
    record Sample(String text, ToDoubleFunction<Map<String, Double>> worth) {}

    @Provide
    Arbitrary<Sample> samples() {
        return sample(4);
    }

    private static Arbitrary<Sample> sample(int depth) {
        var leaf = Arbitraries.oneOf(
                Arbitraries.integers().between(0, 99).map(i -> new Sample(String.valueOf(i), n -> i)),
                Arbitraries.of("a", "b", "c").map(l -> new Sample(l, n -> n.getOrDefault(l, Double.NaN))));
        if (depth == 0) {
            return leaf;
        }
        var part = sample(depth - 1);
        return Arbitraries.oneOf(
                leaf,
                Combinators.combine(part, part, Arbitraries.of('+', '-', '*', '/'))
                        .as((l, r, sign) -> new Sample("(%s) %s (%s)".formatted(l.text, sign, r.text), n -> {
                            double x = l.worth.applyAsDouble(n);
                            double y = r.worth.applyAsDouble(n);
                            return switch (sign) {
                                case '+' -> x + y;
                                case '-' -> x - y;
                                case '*' -> x * y;
                                default -> x / y;
                            };
                        })),
                part.map(p -> new Sample("-(" + p.text + ")", n -> -p.worth.applyAsDouble(n))),
                part.map(p -> new Sample("abs(" + p.text + ")", n -> Math.abs(p.worth.applyAsDouble(n)))));
    }

    @Property(tries = 500)
    @Label("a formula is worth what its parts are worth")
    void worth(@ForAll("samples") Sample sample) {
        Formula.read(sample.text, NUMBERS.keySet())
                .fold(
                        formula -> {
                            // boxed, so that what is not a number equals itself
                            assertThat(Double.valueOf(formula.value(NUMBERS)))
                                    .isEqualTo(Double.valueOf(sample.worth.applyAsDouble(NUMBERS)));
                            return true;
                        },
                        fault -> {
                            assertThat(fault.problem()).contains("more than 400 characters");
                            return false;
                        });
    }

    @Property(tries = 500)
    @Label("no text makes the reader fail, and it answers at once")
    void anyText(@ForAll String text) {
        assertTimeout(
                Duration.ofSeconds(1),
                () -> assertThat(Formula.read(text, NUMBERS.keySet())).isInstanceOf(Parsed.class));
    }
}
