package comparand.check;

import comparand.diag.Located;
import comparand.model.library.ValueRecord;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What it checks: a value whose digits do not occur in its quote or in what is recorded as printed.
 *
 * <p>Why it matters: digits were swapped, or the quote belongs to another value.
 *
 * <p>What to write instead: the value as the quote prints it, or the quote the value stands in.
 */
final class NumberNotInQuote implements Rule {

    @Override
    public String code() {
        return "number-not-in-quote";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .forEach(value -> digits(value.value())
                        .filter(number -> !isInLetter(number, value.value()))
                        .forEach(number -> {
                            value.value()
                                    .quote()
                                    .filter(quote -> !occurs(number.value(), quote.value()))
                                    .ifPresent(quote -> findings.note(
                                            number.span(),
                                            "%s does not occur in the quote \"%s\""
                                                    .formatted(number.value(), shortened(quote.value())),
                                            "digits may have been swapped, or the quote belongs to another value",
                                            "compare both with the source and correct one of them"));
                            var printed = value.value().printed().value();
                            if (!occurs(number.value(), printed)) {
                                findings.note(
                                        number.span(),
                                        "%s does not occur in what is recorded as printed, \"%s\""
                                                .formatted(number.value(), shortened(printed)),
                                        "the number compared must be the number printed",
                                        "compare both with the source and correct one of them");
                            }
                        }));
    }

    /** A spread that the authors sent later stands in their letter, and not in print. */
    private static boolean isInLetter(Located<String> number, ValueRecord value) {
        return value.letter().isPresent()
                && value.spread().stream()
                        .flatMap(s -> s.figures().stream())
                        .anyMatch(f -> f.span().equals(number.span()))
                && occurs(number.value(), value.letter().get().says().value());
    }

    /** Every number that is recorded as printed: the figure or both ends, the spread, the counts. */
    private static Stream<Located<String>> digits(ValueRecord value) {
        var quantities = Stream.of(
                        Context.figure(value).stream(),
                        Context.range(value),
                        value.spread().stream().flatMap(s -> s.figures().stream()))
                .flatMap(s -> s)
                .map(q -> q.map(p -> p.number().text()));
        var counts = value.count().stream()
                .flatMap(c -> Stream.of(c.map(n -> String.valueOf(n.events())), c.map(n -> String.valueOf(n.of()))));
        return Stream.concat(quantities, counts);
    }

    /** As a whole number of its own, however the thousands are set apart: 65 does not occur in 165 or in 6.5. */
    private static boolean occurs(String number, String text) {
        var digits = bare(number).findFirst().orElseThrow();
        return bare(text).anyMatch(reading -> standsIn(reading, digits));
    }

    /** By hand and not as a pattern: every number of a library is looked for, each would be a pattern of its own. */
    private static boolean standsIn(String text, String digits) {
        for (int at = text.indexOf(digits); at >= 0; at = text.indexOf(digits, at + 1)) {
            int end = at + digits.length();
            boolean goesOn = isDigit(text, at - 1)
                    || isOneOf(".", text, at - 1)
                    || (isOneOf(",", text, at - 1) && isDigit(text, at - 2))
                    || isDigit(text, end)
                    || (isOneOf(".,", text, end) && isDigit(text, end + 1));
            if (!goesOn) {
                return true;
            }
        }
        return false;
    }

    private static boolean isDigit(String text, int at) {
        return isOneOf("0123456789", text, at);
    }

    private static boolean isOneOf(String signs, String text, int at) {
        return at >= 0 && at < text.length() && signs.indexOf(text.charAt(at)) >= 0;
    }

    /** A text with decimal points and without signs; commas and blanks between digits may be either. */
    private static Stream<String> bare(String text) {
        var signed = text.replace('−', '-').replace('·', '.');
        var plain = signed.startsWith("-") ? signed.substring(1) : signed;
        // without a comma both are the same
        return (plain.indexOf(',') < 0 ? Stream.of(DECIMAL_COMMA) : Stream.of(DECIMAL_COMMA, THOUSANDS_COMMA))
                .map(comma -> comma.matcher(plain).replaceAll(comma == DECIMAL_COMMA ? "." : ""))
                .flatMap(t -> Stream.of(t, THOUSANDS_BLANK.matcher(t).replaceAll("")));
    }

    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern THOUSANDS_COMMA = Pattern.compile("(?<=\\d),(?=\\d{3}\\b)");
    private static final Pattern THOUSANDS_BLANK = Pattern.compile("(?<=\\d)[ \u00a0\u2009\u202f'\u2019](?=\\d{3}\\b)");

    private static String shortened(String text) {
        return text.length() > 80 ? text.substring(0, 77) + "..." : text;
    }
}
