package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Aspect;
import comparand.metric.Metric;
import comparand.model.library.Entries;
import comparand.model.library.OneOrMore;
import java.util.List;

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
        library.library().studies().values().stream()
                .flatMap(s -> s.files().stream())
                .forEach(file -> {
                    var given = file.gives().stream()
                            .flatMap(id -> library.catalogue().find(id.value()).stream())
                            .toList();
                    // an unknown metric is a finding already, and might have had the aspect
                    if (given.size() == file.gives().size()) {
                        keys(file.definition(), "the metrics of this file have", given, findings);
                    }
                });
    }

    private static void keys(Entries<OneOrMore<Located<String>>> definition, Metric metric, Findings findings) {
        keys(definition, "the definition of %s has".formatted(metric.name()), List.of(metric), findings);
    }

    private static void keys(
            Entries<OneOrMore<Located<String>>> definition, String who, List<Metric> metrics, Findings findings) {
        var known = metrics.stream()
                .flatMap(m -> m.definition().stream())
                .map(Aspect::id)
                .distinct()
                .toList();
        definition.stream()
                .map(Entries.Entry::key)
                .filter(k -> !known.contains(k.value()))
                .forEach(k -> findings.stop(
                        k.span(),
                        "%s no aspect `%s`".formatted(who, k.value()),
                        "what it says would be read by nobody",
                        Suggest.instruction(k.value(), known)));
    }
}
