package comparand.check;

import comparand.diag.Located;
import comparand.metric.LabelledFlow;
import comparand.model.Library.PublishedValue;
import java.util.regex.Pattern;

/**
 * What it checks: a labelled flow whose quote speaks of the reference flow, or the other way round.
 *
 * <p>Why it matters: the reference flow is found in a gas exchange test and may lie above the largest flow allowed.
 *
 * <p>What to write instead: {@code metric: reference-blood-flow} for the one, {@code metric: labelled-blood-flow} for
 * the other.
 */
final class ReferenceFlowAsLimit implements Rule {

    @Override
    public String code() {
        return "reference-flow-as-limit";
    }

    private static final Pattern NAMED = Pattern.compile(
            "(?i)\\breference[\\s\u00a0-]+(blood[\\s\u00a0-]+)?flow|\\bflow[\\s\u00a0]*\\(reference\\)|\\breferenz-?(blut)?fluss");

    @Override
    public void check(Context library, Findings findings) {
        library.values().forEach(v -> {
            var metric = v.value().metric();
            if (metric.value().equals(LabelledFlow.LIMITS) && speaksOfReference(v)) {
                findings.hold(
                        v,
                        metric.span(),
                        "`%s` is recorded as a labelled flow, and its words speak of a reference flow"
                                .formatted(v.id()),
                        "the reference flow is no limit of use and may lie above it",
                        "write `metric: reference-blood-flow`, and record the labelled flow from its own place");
            } else if (metric.value().equals(LabelledFlow.REFERENCE) && !speaksOfReference(v)) {
                findings.hold(
                        v,
                        metric.span(),
                        "`%s` is recorded as a reference flow, and its words do not say so".formatted(v.id()),
                        "a labelled flow taken for a reference flow misstates both",
                        "quote the words that name it, or write `metric: labelled-blood-flow`");
            }
        });
    }

    private static boolean speaksOfReference(PublishedValue v) {
        var words = v.value().printed().value() + " "
                + v.value().quote().map(Located::value).orElse("");
        return NAMED.matcher(words).find();
    }
}
