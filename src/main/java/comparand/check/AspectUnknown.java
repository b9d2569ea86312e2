package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Aspect;
import comparand.metric.Metric;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;

/**
 * What it checks: a definition that speaks of an aspect its metric does not have.
 *
 * <p>Why it matters: it would be read by nobody.
 *
 * <p>What to write instead: an aspect that {@code comparand catalogue METRIC} lists.
 */
final class AspectUnknown implements Rule {

    @Override
    public String code() {
        return "aspect-unknown";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> keys(value.value().definition(), metric, findings));
        library.eachQuestion((question, metric) -> keys(question.definition(), metric, findings));
    }

    private static void keys(Entries<OneOrMore<Located<String>>> definition, Metric metric, Findings findings) {
        var known = metric.definition().stream().map(Aspect::id).toList();
        definition.stream()
                .map(Entries.Entry::key)
                .filter(k -> !known.contains(k.value()))
                .forEach(k -> findings.stop(
                        k.span(),
                        "the definition of %s has no aspect `%s`".formatted(metric.name(), k.value()),
                        "what it says would be read by nobody",
                        known.isEmpty()
                                ? "take it out: this metric has one definition"
                                : Suggest.instruction(k.value(), known)));
    }
}
