package comparand.intake;

import comparand.diag.Diagnostic;
import comparand.model.library.ConditionText;
import comparand.unit.DecimalSign;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers as people type them: with a decimal point or comma, alone, or two with {@code ±} or {@code to} between them. What may
 * be read in two ways is refused and not guessed.
 */
final class NumberText {

    private static final String ONE = "[+\\-−]?\\d+(?:[.,]\\d+)?";
    private static final Pattern TWO = Pattern.compile("(" + ONE + ")\\s*(±|\\+/-|to|-|–)\\s*(" + ONE + ")");
    private static final Pattern SINGLE = Pattern.compile(ONE);
    /** 1,234 may be one and a bit, or more than a thousand. */
    private static final Pattern AMBIGUOUS = Pattern.compile("[+\\-−]?[1-9]\\d{0,2}[.,]\\d{3}");
    /** 1.234,5 and 1,234.5: the last sign is the decimal one, the others part thousands. */
    private static final Pattern GROUPED =
            Pattern.compile("[+\\-−]?\\d{1,3}(?:(?:\\.\\d{3})+,\\d+|(?:,\\d{3})+\\.\\d+)");

    /** A number, two, or words, and what follows: the unit. */
    private static final Pattern WITH_UNIT =
            Pattern.compile("((?:" + ONE + ")(?:\\s*(?:±|\\+/-|to|–)\\s*(?:" + ONE + "))?)\\s*(.*)");

    /** The text of a quantity in two parts. */
    record Split(String number, String unit) {}

    private NumberText() {}

    /** As a file with this decimal sign writes it; empty if it is no number, or may be two. */
    static Optional<String> read(String typed, DecimalSign sign) {
        if (typed.equals(ConditionText.NOT_REPORTED)) {
            return Optional.of(typed);
        }
        var two = TWO.matcher(typed);
        if (two.matches()) {
            var word = two.group(2).equals("+/-") ? "±" : two.group(2).matches("[-–]") ? "to" : two.group(2);
            return one(two.group(1), sign).flatMap(a -> one(two.group(3), sign).map(b -> a + " " + word + " " + b));
        }
        return one(typed, sign);
    }

    private static Optional<String> one(String typed, DecimalSign sign) {
        if (GROUPED.matcher(typed).matches()) {
            char decimal = typed.charAt(Math.max(typed.lastIndexOf(','), typed.lastIndexOf('.')));
            var plain = typed.replace(decimal == ',' ? "." : ",", "");
            return Optional.of(plain.replace(decimal, sign.sign()));
        }
        if (!SINGLE.matcher(typed).matches()
                || (AMBIGUOUS.matcher(typed).matches() && typed.indexOf(sign.other()) >= 0)) {
            return Optional.empty();
        }
        return Optional.of(typed.replace(sign.other(), sign.sign()));
    }

    /** Whether a text is a number by either decimal sign, alone or with its unit. */
    static boolean isReadable(String typed) {
        var number = hasUnit(typed) ? split(typed).number() : typed;
        return read(number, DecimalSign.POINT)
                .or(() -> read(number, DecimalSign.COMMA))
                .isPresent();
    }

    /** Whether a text has a number in front and something else behind it. */
    static boolean hasUnit(String typed) {
        var m = WITH_UNIT.matcher(typed);
        return m.matches() && !m.group(2).isEmpty();
    }

    static Split split(String quantity) {
        var m = WITH_UNIT.matcher(quantity);
        return m.matches() ? new Split(m.group(1), m.group(2)) : new Split(quantity, "");
    }

    static String joined(String number, Optional<String> unit) {
        return number + unit.map(u -> " " + u).orElse("");
    }

    static Diagnostic refused(Answers.Answer answer) {
        var typed = answer.text();
        boolean ambiguous = AMBIGUOUS.matcher(typed).matches();
        return Diagnostic.stop(
                ambiguous ? "number-ambiguous" : "number-unreadable",
                answer.at(),
                ambiguous
                        ? "`%s` may be %s or %s".formatted(typed, typed.replace(',', '.'), typed.replaceAll("[.,]", ""))
                        : "`%s` is not a number".formatted(typed),
                ambiguous ? "the two differ a thousandfold" : "a number that cannot be read cannot be compared",
                ambiguous
                        ? "write %s or %s".formatted(typed.replaceAll("[.,]", ""), typed.replace(',', '.') + "0")
                        : "write digits with one decimal sign, such as 9.3; the unit has a cell of its own");
    }
}
