package comparand.app;

import comparand.manual.CardWords;
import comparand.manual.GatheringText;
import comparand.metric.Aspect;
import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.ConditionUse;
import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Effect;
import comparand.metric.Gathering;
import comparand.metric.Metric;
import comparand.metric.Variant;
import comparand.metric.WorkedValue;
import java.util.TreeMap;

/** The catalogue as text for a terminal. */
final class CatalogueText {

    private CatalogueText() {}

    static String list(Catalogue catalogue) {
        var out = new StringBuilder("Metrics\n");
        catalogue.all().forEach(m -> out.append("  %-42s %-40s %s%n".formatted(m.id(), m.name(), unit(m))));
        out.append("\n  One of them in full: comparand catalogue METRIC\n");
        out.append("\nConditions\n");
        catalogue
                .conditions()
                .values()
                .forEach(c -> out.append("  %-42s %-40s %s%n".formatted(c.id(), c.name(), kind(c))));
        return out.toString().stripTrailing();
    }

    private static String unit(Metric metric) {
        return metric.unit().named();
    }

    private static String kind(Condition condition) {
        return condition
                .unit()
                .map(u -> u.named())
                .orElse(condition.words().isEmpty() ? "words" : String.join(" | ", condition.words()));
    }

    static String metric(Metric m) {
        var out = new StringBuilder(
                "%s: %s (%s), %s%n  %s.%n".formatted(m.id(), m.name(), m.symbol(), unit(m), m.meaning()));
        out.append("  %s; %s is favourable%n".formatted(CardWords.lower(m.nature()), CardWords.lower(m.better())));
        out.append("  plausible %s, possible %s%s%n"
                .formatted(
                        CardWords.bounds(m.plausible()),
                        CardWords.bounds(m.possible()),
                        m.unit().isNumber() ? "" : " " + m.unit().spelling()));
        m.derivations().forEach(d -> derivation(d, out));
        if (!m.definition().isEmpty()) {
            out.append("\nDefinition\n");
            m.definition().forEach(a -> aspect(a, out));
        }
        if (!m.conditions().isEmpty()) {
            out.append("\nConditions\n");
            m.conditions().forEach(u -> condition(u, out));
            m.interpolatesOver()
                    .ifPresent(over ->
                            out.append("  values may be read off between two neighbours along %s%n".formatted(over)));
        }
        out.append("\nSources\n");
        m.citations().stream().distinct().forEach(c -> out.append("  %s%n".formatted(c)));
        if (!m.worked().isEmpty()) {
            out.append("\nWorked values\n");
            m.worked().forEach(w -> worked(w, out));
        }
        if (!m.confusedWith().isEmpty()) {
            out.append("\nNot to be confused with: %s%n".formatted(String.join(", ", m.confusedWith())));
        }
        return out.toString().stripTrailing();
    }

    private static void derivation(Derivation d, StringBuilder out) {
        out.append("\nFormula\n  %s%n".formatted(d.formula()));
        d.inputs()
                .forEach(i -> out.append("    %-10s %s, in %s (%s)%n"
                        .formatted(i.symbol(), i.meaning(), i.unit().isNumber() ? "1" : i.unit(), i.id())));
        d.gives()
                .aspects()
                .forEach((aspect, words) ->
                        out.append("    gives %s: %s%n".formatted(aspect, String.join(" + ", words))));
        if (!(d.gathering() instanceof Gathering.EachRow)) {
            out.append("    rows: %s%n".formatted(GatheringText.of(d.gathering())));
        }
        d.applies().forEach(a -> out.append("    %s%n".formatted(a)));
        out.append("    after %s%n".formatted(d.citation()));
    }

    private static void aspect(Aspect aspect, StringBuilder out) {
        out.append("  %s: %s; %s%n".formatted(aspect.id(), aspect.name(), CardWords.role(aspect.role())));
        aspect.fold(
                choice -> {
                    for (Variant v : choice.variants()) {
                        out.append("    %-24s %s%s%n"
                                .formatted(v.id(), v.meaning(), v.id().equals(choice.usual()) ? " (standard)" : ""));
                    }
                    choice.conversions()
                            .forEach(c ->
                                    out.append("    %s becomes %s: %s%n".formatted(c.from(), c.to(), c.formula())));
                    return true;
                },
                parts -> {
                    out.append("    %s%s%n"
                            .formatted(
                                    String.join(", ", parts.words()),
                                    parts.additive() ? " (the whole is the sum of its parts)" : ""));
                    return true;
                });
    }

    private static void condition(ConditionUse use, StringBuilder out) {
        var influence = use.influence();
        var effect = influence.more() == Effect.NOT_PREDICTABLE
                ? ""
                : "; more of it %s the value%s"
                        .formatted(
                                CardWords.lower(influence.more()),
                                influence.because().isEmpty() ? "" : ": " + influence.because());
        out.append("  %-22s %s, %s%s%n"
                .formatted(
                        use.condition().id(),
                        CardWords.role(use.role()),
                        use.tolerance().words(),
                        effect));
        new TreeMap<>(influence.instead())
                .forEach((word, e) -> out.append("  %-22s   under %s it %s the value: %s%n"
                        .formatted("", word, CardWords.lower(e), influence.because())));
    }

    private static void worked(WorkedValue w, StringBuilder out) {
        var inputs = new TreeMap<>(w.inputs());
        var under = w.definition().equals(Definition.NONE) ? "" : " under " + w.definition();
        out.append("  %s from %s%s%n    %s%n".formatted(w.result(), inputs, under, w.citation()));
    }
}
