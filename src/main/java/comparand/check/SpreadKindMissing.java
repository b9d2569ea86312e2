package comparand.check;

import java.util.regex.Pattern;

/**
 * What it checks: a value whose printed words carry a spread, and whose record has none.
 *
 * <p>Why it matters: a mean without its spread can only be shown, and the spread is there in print.
 *
 * <p>What to write instead: {@code spread: {kind: sd, of: 4.6 mmHg}}, with {@code kind: not stated} where the source
 * does not say.
 */
final class SpreadKindMissing implements Rule {

    @Override
    public String code() {
        return "spread-kind-missing";
    }

    private static final Pattern SPREAD = Pattern.compile("±|\\+/-|\\bSD\\b|\\bSE\\b|\\bSEM\\b|\\bCI\\b|\\bIQR\\b");

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .filter(v -> v.value().spread().isEmpty()
                        && Context.figure(v.value()).isPresent())
                .forEach(v -> {
                    var m = SPREAD.matcher(v.value().printed().value());
                    if (m.find()) {
                        findings.hold(
                                v,
                                v.value().printed().span(),
                                "\"%s\" carries a spread that is not recorded"
                                        .formatted(v.value().printed().value()),
                                "read as a standard deviation or as a standard error, the answer may change",
                                "add `spread: {kind: sd, of: ...}`, or `kind: not stated` where the source does not say");
                    }
                });
    }
}
