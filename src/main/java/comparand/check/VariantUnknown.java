package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Metric;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;

/**
 * What it checks: a definition that names a variant, or a part, its metric does not know.
 *
 * <p>Why it matters: it cannot be matched with anything.
 *
 * <p>What to write instead: a variant that {@code comparand catalogue METRIC} lists, or {@code not reported}.
 */
final class VariantUnknown implements Rule {

    @Override
    public String code() {
        return "variant-unknown";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachValue((value, metric) -> words(value.value().definition(), metric, true, findings));
        library.eachQuestion((question, metric) -> words(question.definition(), metric, false, findings));
        library.eachGiven((file, metric) -> words(file.definition(), metric, false, findings));
    }

    private static void words(
            Entries<OneOrMore<Located<String>>> definition, Metric metric, boolean mayBeUnknown, Findings findings) {
        for (var entry : definition.list()) {
            metric.aspect(entry.key().value()).ifPresent(aspect -> {
                var words = entry.value().list();
                boolean notReported = words.size() == 1 && words.get(0).value().equals(ConditionText.NOT_REPORTED);
                if (mayBeUnknown && notReported) {
                    return;
                }
                words.stream()
                        .filter(w -> !aspect.words().contains(w.value()))
                        .forEach(w -> findings.stop(
                                w.span(),
                                "`%s` is not a variant of `%s`".formatted(w.value(), aspect.id()),
                                "it cannot be matched with anything",
                                Suggest.instruction(w.value(), aspect.words())));
            });
        }
    }
}
