package comparand.check;

import comparand.diag.Span;
import comparand.model.Library.PublishedValue;
import comparand.model.library.SpreadKind;

/**
 * What it checks: a spread printed without saying whether it is a standard deviation or a standard error.
 *
 * <p>Why it matters: the conclusion may depend on it.
 *
 * <p>What to write instead: the kind, if methods or legends of the source name it; otherwise both readings are
 * carried through.
 */
final class SpreadUnlabelled implements Rule {

    @Override
    public String code() {
        return "spread-unlabelled";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.values()
                .filter(v -> v.value().spreadKind() == SpreadKind.NOT_STATED)
                .forEach(v -> findings.note(
                        v.value().spread().map(s -> s.kind().span()).orElseGet(() -> bar(v)),
                        "\"%s\" does not say whether the spread is a standard deviation or a standard error"
                                .formatted(v.value().printed().value()),
                        "the two differ by the square root of n, and the answer may change",
                        "look in the methods or the legend; until then both readings are printed"));
    }

    private static Span bar(PublishedValue value) {
        return value.value().readFromFigure().orElseThrow().errorBar().get(0).span();
    }
}
