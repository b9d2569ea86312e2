package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.unit.Dimension;
import comparand.unit.Parsed;
import comparand.unit.Unit;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The limits of a formula, met and just missed; what an author is told to write; and which words may be letters. */
class FormulaReaderTest {

    private static final Set<String> A = Set.of("a");
    private static final Map<String, Double> TWO = Map.of("a", 2.0);
    private static final Unit FLOW = Unit.of("L/min");
    private static final Unit PRESSURE = Unit.of("mmHg");
    private static final Map<String, Unit> UNITS = Map.of("q", FLOW, "p", PRESSURE, "s", Unit.ONE);

    private static double value(String text) {
        return Formula.read(text, A).orThrow().value(TWO);
    }

    private static Parsed.Fault<?> fault(Parsed<?> parsed) {
        assertThat(parsed).isInstanceOf(Parsed.Fault.class);
        return (Parsed.Fault<?>) parsed;
    }

    @Test
    @DisplayName("400 characters are read; of 403 the last three are too many")
    void length() {
        assertThat(value("a" + " ".repeat(399))).isEqualTo(2);

        var fault = fault(Formula.read("a" + " ".repeat(402), A));
        assertThat(fault.problem()).isEqualTo("the formula has more than 400 characters");
        assertThat(fault.at()).isEqualTo(400);
        assertThat(fault.length()).isEqualTo(3);
    }

    @Test
    @DisplayName("200 parts are read, 201 are not: 100 letters, 99 signs between them, and signs before the first")
    void parts() {
        assertThat(value("-a" + " + a".repeat(98) + "-a")).isEqualTo(2 * (-1 + 98 - 1));

        var fault = fault(Formula.read("--a" + "+a".repeat(99), A));
        assertThat(fault.problem()).isEqualTo("the formula has more than 200 parts");
        assertThat(fault.at()).isZero();
    }

    @Test
    @DisplayName("30 brackets, signs or powers one in another are read, 31 are not")
    void depth() {
        assertThat(value("(".repeat(30) + "a" + ")".repeat(30))).isEqualTo(2);
        assertThat(fault(Formula.read("(".repeat(31) + "a" + ")".repeat(31), A)).problem())
                .isEqualTo("brackets are nested more than 30 deep");
        assertThat(value("-".repeat(30) + "a")).isEqualTo(2);
        assertThat(fault(Formula.read("-".repeat(31) + "a", A)).problem())
                .isEqualTo("there are more than 30 signs in a row");
        assertThat(value("1^".repeat(30) + "a")).isEqualTo(1);
        assertThat(fault(Formula.read("1^".repeat(31) + "a", A)).problem())
                .isEqualTo("there are more than 30 powers in a row");
    }

    @Test
    @DisplayName("40 brackets, signs or powers beside one another are not deep")
    void besideOneAnother() {
        assertThat(value("(a)" + "+(a)".repeat(39))).isEqualTo(80);
        assertThat(value("a" + "- -a".repeat(39))).isEqualTo(80);
        assertThat(value("a^2" + "+a^2".repeat(39))).isEqualTo(160);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            useHeadersInDisplayName = false,
            delimiter = '|',
            value = {
                "a a | write a sign, + - * / or ^, between two parts",
                "a(2) | write a sign, + - * / or ^, between two parts",
                "b | use one of a, or declare it under `inputs:`",
                "sin(a) | use one of sqrt, exp, ln, log10, min, max, abs",
                "(a | write `)` where it ends",
                "sqrt(a | write `)` where it ends",
                "sqrt(1,5) | a decimal is written with a point, and a comma stands between numbers",
                "a * | write what is missing",
                "* a | write a number, a letter or a bracket"
            })
    void anAuthorIsToldWhatToWrite(String text, String fix) {
        assertThat(fault(Formula.read(text, A)).fix()).isEqualTo(fix);
    }

    @Test
    void whereNothingIsDeclaredNoneIsOffered() {
        assertThat(fault(Formula.read("b", Set.of())).fix()).isEqualTo("declare it under `inputs:`");
    }

    @Test
    @DisplayName("ln e = 1, ln 1 = 0, ln(exp a) = a; log10 of 1000 = 3; the square root of 2² is 2")
    void functionsAreThoseOfSchool() {
        assertThat(value("ln(2.718281828459045)")).isCloseTo(1, within(1e-15));
        assertThat(value("ln(exp(a))")).isCloseTo(2, within(1e-15));
        assertThat(value("log10(1000)")).isCloseTo(3, within(1e-15));
        assertThat(value("sqrt(a^2)")).isCloseTo(2, within(1e-15));
        assertThat(value("min(1,2,3,4,5,6,7,8)")).isEqualTo(1);
        assertThat(fault(Formula.read("min(1,2,3,4,5,6,7,8,9)", A)).problem())
                .isEqualTo("`min` takes 2 to 8 numbers, got 9");
        assertThat(fault(Formula.read("ln(a, a)", A)).problem()).isEqualTo("`ln` takes one number, got 2");
    }

    @Test
    void aFormulaIsPrintedAsWrittenAndKnowsItsLetters() {
        var formula = Formula.read("-x · min(y, abs(z)) ÷ 2", Set.of("x", "y", "z", "unused"))
                .orThrow();

        assertThat(formula).hasToString("-x · min(y, abs(z)) ÷ 2");
        assertThat(formula.letters()).containsExactly("x", "y", "z");
        assertThat(Formula.read("1 + 2", A).orThrow().letters()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "Plt_post", "ΔP", "R'", "S2", "minimum", "Ln"})
    void aWordThatBeginsWithALetterIsOne(String word) {
        assertThat(Formula.isLetter(word)).isTrue();
        assertThat(Formula.read("2 * " + word, Set.of(word)).orThrow().value(Map.of(word, 3.0)))
                .isEqualTo(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2a", "_a", "a b", "a-b", "a+", "min", "ln", "log10"})
    void aFunctionOrWhatHasASignInItIsNoLetter(String word) {
        assertThat(Formula.isLetter(word)).isFalse();
    }

    private static Parsed.Fault<?> unlike(String text) {
        return fault(Formula.read(text, UNITS.keySet()).orThrow().dimension(UNITS));
    }

    @Test
    @DisplayName("pressure plus flow: found at the sign, with both quantities named")
    void unlikeSums() {
        var fault = unlike("2 * p + q");

        assertThat(fault.at()).isEqualTo(6);
        assertThat(fault.length()).isEqualTo(1);
        assertThat(fault.problem())
                .isEqualTo("`+` stands between a quantity in %s and a quantity in %s"
                        .formatted(PRESSURE.dimension(), FLOW.dimension()));
        assertThat(fault.fix()).contains("like quantities only", "`empirical: yes`");
        assertThat(unlike("p - 1").problem()).endsWith("and a bare number");
    }

    @Test
    @DisplayName("logarithms, roots and comparisons of what they cannot take: found at the name of the function")
    void unlikeCalls() {
        var fault = unlike("s + log10(p)");
        assertThat(fault.at()).isEqualTo(4);
        assertThat(fault.length()).isEqualTo("log10".length());
        assertThat(fault.problem()).isEqualTo("`log10` is taken of a quantity in " + PRESSURE.dimension());
        assertThat(fault.fix()).startsWith("divide by a quantity of the same kind first");

        assertThat(unlike("sqrt(p)").problem()).endsWith("which is no square");
        assertThat(unlike("max(s, p)").problem()).isEqualTo("`max` compares unlike quantities");
        assertThat(unlike("max(s, p)").fix()).isEqualTo("compare like quantities only");
    }

    @Test
    @DisplayName("a quantity is raised to a whole number of up to 12, a bare number to anything that is bare")
    void powers() {
        var twelfth = Formula.read("q ^ 12 / q ^ 11", UNITS.keySet()).orThrow();
        assertThat(twelfth.dimension(UNITS).orThrow()).isEqualTo(FLOW.dimension());
        for (var bare : new String[] {"s ^ 0.5", "2 ^ s", "s ^ s ^ 99", "(p / p) ^ 13"}) {
            assertThat(Formula.read(bare, UNITS.keySet())
                            .orThrow()
                            .dimension(UNITS)
                            .orThrow())
                    .as(bare)
                    .isEqualTo(Dimension.NONE);
        }
        assertThat(unlike("q ^ 13").problem()).endsWith("is raised to something other than a whole number");
        assertThat(unlike("q ^ -13").problem()).contains("whole number");
        assertThat(unlike("q ^ 2.5").fix()).contains("use `sqrt()`");
        assertThat(unlike("q ^ (s - s)").problem()).contains("whole number");
        assertThat(unlike("2 ^ p").problem())
                .isEqualTo("the exponent is a quantity in %s, not a bare number".formatted(PRESSURE.dimension()));
        assertThat(unlike("2 ^ p").at()).isEqualTo(2);
    }

    @Test
    void anExponentBeyondAnyUseIsRefusedAsAWhole() {
        var text = "(".repeat(9) + "q" + "^12)".repeat(9);
        var fault = unlike(text);

        assertThat(fault.problem()).isEqualTo("an exponent is beyond any use");
        assertThat(fault.at()).isZero();
        assertThat(fault.length()).isEqualTo(text.length());
    }
}
