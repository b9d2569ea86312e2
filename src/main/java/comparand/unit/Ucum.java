package comparand.unit;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads UCUM terms in their case-sensitive form, by the grammar of the UCUM specification, section 2 (syntax rules)
 * and the definitions of its tables, version 2.2.
 *
 * <pre>
 * term      := ["/"] component { ("." | "/") component }
 * component := simple [exponent] [annotation] | annotation | digits | "(" term ")"
 * simple    := atom | prefix metric-atom
 * </pre>
 */
final class Ucum {

    private static final int MAX_EXPONENT = 40;
    private static final int MAX_DEPTH = 20;

    private final String text;
    private int at;
    private int depth;

    private Ucum(String text) {
        this.text = text;
    }

    /** Reads a whole term; the spelling of the unit is the term itself. */
    static Parsed<Unit> read(String term) {
        if (term.isEmpty()) {
            return Parsed.fault(0, 1, "there is no unit here", "write a unit, or `1` for a bare number");
        }
        try {
            var reader = new Ucum(term);
            var unit = reader.term();
            if (reader.at < term.length()) {
                throw new Unreadable(reader.at, 1, "`" + term.charAt(reader.at) + "` does not belong in a unit");
            }
            return Parsed.ok(new Unit(term, term.equals("1") ? "" : term, unit.dimension(), unit.scale()));
        } catch (Unreadable u) {
            return Parsed.fault(
                    u.at, u.length, u.problem, "write it in UCUM or in trade spelling, such as mmHg, L/min, g/dL");
        } catch (ArithmeticException tooLarge) {
            return Parsed.fault(
                    0, term.length(), "`" + term + "` has an exponent beyond any use", "check the exponents");
        }
    }

    private Unit term() {
        if (++depth > MAX_DEPTH) {
            throw new Unreadable(at, 1, "brackets are nested more than %d deep".formatted(MAX_DEPTH));
        }
        var result = at < text.length() && text.charAt(at) == '/' ? Unit.ONE : component();
        while (at < text.length() && (text.charAt(at) == '.' || text.charAt(at) == '/')) {
            int sign = text.charAt(at++) == '/' ? -1 : 1;
            result = product(result, power(component(), sign));
        }
        depth--;
        return result;
    }

    private Unit component() {
        if (at >= text.length()) {
            throw new Unreadable(Math.max(0, text.length() - 1), 1, "the unit `" + text + "` stops in the middle");
        }
        char c = text.charAt(at);
        if (c == '(') {
            at++;
            var inner = term();
            if (at >= text.length() || text.charAt(at) != ')') {
                throw new Unreadable(Math.min(at, text.length() - 1), 1, "a bracket is not closed");
            }
            at++;
            return inner;
        }
        if (c == '{') {
            annotation();
            return Unit.ONE;
        }
        if (Character.isDigit(c) && !text.startsWith("10*", at) && !text.startsWith("10^", at)) {
            return new Unit("", "", Dimension.NONE, number(digits()));
        }
        var simple = simple();
        var raised = at < text.length() && startsExponent() ? power(simple, exponent()) : simple;
        if (at < text.length() && text.charAt(at) == '{') {
            annotation();
        }
        return raised;
    }

    private Scale number(String digits) {
        var value = new BigInteger(digits);
        if (value.signum() == 0) {
            throw new Unreadable(at - digits.length(), digits.length(), "zero is not a size a unit can have");
        }
        return new Scale.Ratio(BigFraction.of(value));
    }

    private boolean startsExponent() {
        char c = text.charAt(at);
        return Character.isDigit(c)
                || ((c == '+' || c == '-') && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1)));
    }

    private int exponent() {
        int start = at;
        int sign = text.charAt(at) == '-' ? -1 : 1;
        if (text.charAt(at) == '-' || text.charAt(at) == '+') {
            at++;
        }
        var digits = digits();
        if (digits.length() > 3 || Integer.parseInt(digits) > MAX_EXPONENT) {
            throw new Unreadable(start, at - start, "the exponent `%s` is beyond any use".formatted(digits));
        }
        return sign * Integer.parseInt(digits);
    }

    private String digits() {
        int start = at;
        while (at < text.length() && Character.isDigit(text.charAt(at)) && text.charAt(at) < 128) {
            at++;
        }
        if (start == at) {
            throw new Unreadable(at, 1, "`" + text.charAt(at) + "` is not a plain digit");
        }
        return text.substring(start, at);
    }

    private void annotation() {
        int close = text.indexOf('}', at);
        if (close < 0) {
            throw new Unreadable(at, 1, "a comment in curly brackets is not closed");
        }
        at = close + 1;
    }

    private Unit simple() {
        int start = at;
        var word = word();
        if (word.isEmpty()) {
            throw new Unreadable(start, 1, "`" + text.charAt(start) + "` does not begin a unit");
        }
        return atom(word)
                .or(() -> prefixed(word))
                .orElseThrow(() -> new Unreadable(start, word.length(), "`" + word + "` is not a unit known here"));
    }

    /** The letters of a simple unit: up to a digit, sign, operator or bracket, square brackets taken whole. */
    private String word() {
        int start = at;
        if (text.startsWith("10*", at) || text.startsWith("10^", at)) {
            at += 3;
            return text.substring(start, at);
        }
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '[') {
                int close = text.indexOf(']', at);
                if (close < 0) {
                    throw new Unreadable(at, 1, "a square bracket is not closed");
                }
                at = close + 1;
            } else if (Character.isLetter(c) || c == '%' || c == '_' || c == '\'') {
                at++;
            } else {
                break;
            }
        }
        return text.substring(start, at);
    }

    private static Optional<Unit> prefixed(String word) {
        return UcumTable.PREFIXES.entrySet().stream()
                .filter(prefix -> word.startsWith(prefix.getKey()) && UcumTable.isMetric(rest(word, prefix.getKey())))
                .findFirst()
                .flatMap(prefix -> atom(rest(word, prefix.getKey()))
                        .map(unit -> new Unit(
                                word,
                                word,
                                unit.dimension(),
                                new Scale.Ratio(ratio(unit).multiply(prefix.getValue())))));
    }

    private static String rest(String word, String prefix) {
        return word.substring(prefix.length());
    }

    private static Optional<Unit> atom(String code) {
        if (UcumTable.BASE.contains(code)) {
            return Optional.of(new Unit(code, code, Dimension.base(code), Scale.ONE));
        }
        var special = Optional.ofNullable(UcumTable.SPECIAL.get(code));
        return special.or(() -> Optional.ofNullable(UcumTable.ATOMS.get(code)).map(row -> {
            var definition = new Ucum(row.expression()).term();
            var factor = ratio(definition).multiply(UcumTable.fraction(row.value()));
            return new Unit(code, code, definition.dimension(), new Scale.Ratio(factor));
        }));
    }

    private static Unit product(Unit a, Unit b) {
        return new Unit(
                "",
                "",
                a.dimension().times(b.dimension()),
                a.isNumber() ? b.scale() : b.isNumber() ? a.scale() : new Scale.Ratio(ratio(a).multiply(ratio(b))));
    }

    private static Unit power(Unit unit, int n) {
        return n == 1
                ? unit
                : new Unit(
                        "",
                        "",
                        unit.dimension().power(n),
                        new Scale.Ratio(ratio(unit).pow(n)));
    }

    /**
     * Within a product a unit counts by its step: {@code J/Cel} means per kelvin of difference (UCUM, section on special
     * units: they take part in products only through their corresponding proper unit).
     */
    private static BigFraction ratio(Unit unit) {
        return unit.scale().step();
    }

    /** Leaves the recursive reader at the offending character; never escapes {@link #read}. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int at;
        private final int length;
        private final String problem;

        Unreadable(int at, int length, String problem) {
            super(problem, null, false, false);
            this.at = Math.max(0, at);
            this.length = length;
            this.problem = problem;
        }
    }
}
