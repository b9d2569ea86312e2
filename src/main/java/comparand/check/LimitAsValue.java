package comparand.check;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.util.regex.Pattern;

/**
 * What it checks: a value recorded as a figure, whose printed words speak of a limit.
 *
 * <p>Why it matters: a maximum is not a mean: results below it are no shortfall.
 *
 * <p>What to write instead: {@code at-most:} or {@code at-least:} in place of {@code value:} or {@code mean:}.
 */
final class LimitAsValue implements Rule {

    @Override
    public String code() {
        return "limit-as-value";
    }

    private static final Pattern UPPER =
            Pattern.compile("(?i)\\b(up to|at most|no more than|maximum|max\\.?|bis zu|höchstens)\\b");
    /** "min." is minutes unless a number follows. */
    private static final Pattern LOWER =
            Pattern.compile("(?i)\\b(at least|no less than|minimum|mindestens)\\b|\\bmin\\.[\\s\u00a0]*(?=\\d)");

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .forEach(v -> v.value()
                        .value()
                        .or(v.value()::mean)
                        .or(v.value()::median)
                        .ifPresent(q -> {
                            var words = v.value().printed().value();
                            var digits = q.value().number().text();
                            boolean upper = UPPER.matcher(words).find() || signed("≤<", digits, words);
                            boolean lower = LOWER.matcher(words).find() || signed("≥>", digits, words);
                            warn(upper, "at-most", q, words, findings);
                            warn(lower, "at-least", q, words, findings);
                        }));
    }

    /** A sign before the figure itself: "P < 0.05" beside it says nothing about it. */
    private static boolean signed(String signs, String digits, String words) {
        // few texts hold such a sign, and only they need a pattern of their own
        return words.chars().anyMatch(c -> signs.indexOf(c) >= 0)
                && Pattern.compile("[" + signs + "]=?[\\s\u00a0\u202f]*" + Pattern.quote(digits) + "(?!\\d|[.,·]\\d)")
                        .matcher(words)
                        .find();
    }

    private static void warn(boolean found, String key, Located<Printed> q, String words, Findings findings) {
        if (found) {
            findings.note(
                    q.span(),
                    "\"%s\" speaks of a limit, and `%s` is recorded as a figure".formatted(words, q.value()),
                    "a limit is not a mean: a result on its right side is no difference",
                    "write `%s: %s`".formatted(key, q.value()));
        }
    }
}
