package comparand.check;

import java.util.regex.Pattern;

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
                .forEach(value -> Context.figure(value.value()).ifPresent(q -> {
                    var digits = bare(q.value().number().text());
                    value.value()
                            .quote()
                            .filter(quote -> !occurs(digits, quote.value()))
                            .ifPresent(quote -> findings.note(
                                    q.span(),
                                    "%s does not occur in the quote \"%s\""
                                            .formatted(q.value().number(), shortened(quote.value())),
                                    "digits may have been swapped, or the quote belongs to another value",
                                    "compare both with the source and correct one of them"));
                    if (!occurs(digits, value.value().printed().value())) {
                        findings.note(
                                q.span(),
                                "%s does not occur in what is recorded as printed, \"%s\""
                                        .formatted(
                                                q.value().number(),
                                                shortened(
                                                        value.value().printed().value())),
                                "the number compared must be the number printed",
                                "compare both with the source and correct one of them");
                    }
                }));
    }

    /** As a whole number of its own: 65 does not occur in 165 or in 6.5. */
    private static boolean occurs(String digits, String text) {
        var bareText = bare(text);
        return Pattern.compile("(?<![\\d.])" + Pattern.quote(digits) + "(?!\\d|\\.\\d)")
                .matcher(bareText)
                .find();
    }

    private static String bare(String text) {
        return text.replace('−', '-')
                .replace('·', '.')
                .replaceAll("(?<=\\d),(?=\\d)", ".")
                .replaceAll("(?<=\\d)[ \u00a0\u202f](?=\\d{3}\\b)", "")
                .replaceAll("^-", "");
    }

    private static String shortened(String text) {
        return text.length() > 80 ? text.substring(0, 77) + "..." : text;
    }
}
