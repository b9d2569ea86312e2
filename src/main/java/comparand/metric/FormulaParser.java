package comparand.metric;

import comparand.unit.Parsed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads a formula by this grammar; {@code ^} binds to the right and before a sign, so that {@code -x^2} is
 * {@code -(x^2)}:
 *
 * <pre>
 * sum     := product { ("+" | "-") product }
 * product := signed { ("*" | "/") signed }
 * signed  := "-" signed | power
 * power   := atom [ "^" signed ]
 * atom    := number | letter | function "(" sum { "," sum } ")" | "(" sum ")"
 * </pre>
 */
final class FormulaParser {

    static final List<String> FUNCTIONS =
            Arrays.stream(FormulaFunction.values()).map(FormulaFunction::word).toList();

    private static final int MOST_CHARACTERS = 400;
    private static final int MOST_PARTS = 200;
    private static final int DEEPEST = 30;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,20}(?:\\.\\d{1,20})?(?:[eE][+-]?\\d{1,3})?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\p{N}_']*");

    private final String text;
    private final Set<String> letters;
    private int at;
    /** Of brackets, signs and powers one in another; the formula itself is none. */
    private int depth = -1;

    private int parts;

    private FormulaParser(String text, Set<String> letters) {
        this.text = text;
        this.letters = letters;
    }

    /** Whether a letter can stand in a formula. */
    static boolean isLetter(String word) {
        return WORD.matcher(word).matches() && FormulaFunction.called(word).isEmpty();
    }

    static Parsed<Formula> read(String text, Set<String> letters) {
        if (text.length() > MOST_CHARACTERS) {
            return Parsed.fault(
                    MOST_CHARACTERS,
                    text.length() - MOST_CHARACTERS,
                    "the formula has more than %d characters".formatted(MOST_CHARACTERS),
                    "compute a part of it in a metric of its own");
        }
        // one character for one, so that places stay where they are
        var plain = text.replace('·', '*').replace('×', '*').replace('−', '-').replace('÷', '/');
        var parser = new FormulaParser(plain, letters);
        try {
            var root = parser.sum();
            if (parser.at < plain.length()) {
                throw parser.unreadable(
                        parser.at, 1, "`%s` does not belong here".formatted(text.charAt(parser.at)), signs());
            }
            return Parsed.ok(new Formula(text, root));
        } catch (Unreadable u) {
            return Parsed.fault(u.at, u.length, u.problem, u.fix);
        }
    }

    private static String signs() {
        return "write a sign, + - * / or ^, between two parts";
    }

    private FormulaNode sum() {
        if (++depth > DEEPEST) {
            throw unreadable(
                    at, 1, "brackets are nested more than %d deep".formatted(DEEPEST), "compute a part of it apart");
        }
        var left = product();
        for (char sign = next(); sign == '+' || sign == '-'; sign = next()) {
            int place = at++;
            left = counted(new FormulaNode.Pair(sign, left, product(), place));
        }
        depth--;
        return left;
    }

    private FormulaNode product() {
        var left = signed();
        for (char sign = next(); sign == '*' || sign == '/'; sign = next()) {
            int place = at++;
            left = counted(new FormulaNode.Pair(sign, left, signed(), place));
        }
        return left;
    }

    private FormulaNode signed() {
        if (next() == '-') {
            if (++depth > DEEPEST) {
                throw unreadable(at, 1, "there are more than %d signs in a row".formatted(DEEPEST), "write one sign");
            }
            at++;
            var negative = counted(new FormulaNode.Negative(signed()));
            depth--;
            return negative;
        }
        return power();
    }

    private FormulaNode power() {
        var base = atom();
        if (next() != '^') {
            return base;
        }
        if (++depth > DEEPEST) {
            throw unreadable(at, 1, "there are more than %d powers in a row".formatted(DEEPEST), "write one exponent");
        }
        int place = at++;
        var whole = counted(new FormulaNode.Pair('^', base, signed(), place));
        depth--;
        return whole;
    }

    private FormulaNode atom() {
        char c = next();
        if (c == '(') {
            at++;
            var inner = sum();
            close("a bracket is not closed");
            return inner;
        }
        var number = NUMBER.matcher(text).region(at, text.length());
        if (number.lookingAt()) {
            at = number.end();
            return counted(new FormulaNode.Literal(Double.parseDouble(number.group())));
        }
        var word = WORD.matcher(text).region(at, text.length());
        if (word.lookingAt()) {
            return named(word.group());
        }
        throw at >= text.length()
                ? unreadable(
                        Math.max(0, text.length() - 1), 1, "the formula stops in the middle", "write what is missing")
                : unreadable(at, 1, "`%s` cannot stand here".formatted(c), "write a number, a letter or a bracket");
    }

    private FormulaNode named(String word) {
        int place = at;
        at += word.length();
        if (next() != '(') {
            if (!letters.contains(word)) {
                throw unreadable(
                        place,
                        word.length(),
                        "`%s` is not the symbol of an input".formatted(word),
                        letters.isEmpty()
                                ? "declare it under `inputs:`"
                                : "use one of "
                                        + String.join(
                                                ", ", letters.stream().sorted().toList())
                                        + ", or declare it under `inputs:`");
            }
            return counted(new FormulaNode.Letter(word));
        }
        var function = FormulaFunction.called(word)
                .orElseThrow(() -> unreadable(
                        place,
                        word.length(),
                        letters.contains(word)
                                ? "between `%s` and the bracket a sign is missing".formatted(word)
                                : "`%s` is no function known here".formatted(word),
                        letters.contains(word) ? signs() : "use one of " + String.join(", ", FUNCTIONS)));
        at++;
        var arguments = new ArrayList<>(List.of(sum()));
        while (next() == ',') {
            at++;
            arguments.add(sum());
        }
        close("the bracket of `%s` is not closed".formatted(word));
        if (!function.takes(arguments.size())) {
            throw unreadable(
                    place,
                    word.length(),
                    "`%s` takes %s, got %d".formatted(word, function.arguments(), arguments.size()),
                    "a decimal is written with a point, and a comma stands between numbers");
        }
        return counted(new FormulaNode.Call(function, arguments, place));
    }

    private void close(String problem) {
        if (next() != ')') {
            throw unreadable(Math.min(at, text.length() - 1), 1, problem, "write `)` where it ends");
        }
        at++;
    }

    private FormulaNode counted(FormulaNode node) {
        if (++parts > MOST_PARTS) {
            throw unreadable(
                    0,
                    text.length(),
                    "the formula has more than %d parts".formatted(MOST_PARTS),
                    "compute a part of it in a metric of its own");
        }
        return node;
    }

    /** The next character that is not blank; NUL at the end. */
    private char next() {
        blanks();
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private Unreadable unreadable(int place, int length, String problem, String fix) {
        return new Unreadable(place, length, problem, fix);
    }

    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final int at;
        private final int length;
        private final String problem;
        private final String fix;

        Unreadable(int at, int length, String problem, String fix) {
            super(problem);
            this.at = at;
            this.length = length;
            this.problem = problem;
            this.fix = fix;
        }
    }
}
