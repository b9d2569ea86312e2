package comparand.compose.text;

import comparand.diag.Severity;
import comparand.metric.Aspect;
import comparand.metric.Catalogue;
import comparand.metric.Condition;
import comparand.metric.Conditions;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.PlanningSd;
import comparand.model.Step;
import comparand.model.library.Block;
import comparand.model.library.Funding;
import comparand.model.library.SampleUnit;
import comparand.model.library.SourceKind;
import comparand.model.library.SourceState;
import comparand.model.library.SpreadKind;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the tool itself names, section by section of the words: read off the catalogue and the kinds of things. */
final class ToolTerms {

    /** What the matcher sets beside the conditions of the catalogue. */
    private static final List<String> OTHER_RESPECTS =
            List.of("unit", "form of the spread", "form of the summary", "use within the label", "quantity");

    private static final Pattern DIGITS = Pattern.compile("[\\d.]+");

    private ToolTerms() {}

    static Map<String, Set<String>> all() {
        var terms = new TreeMap<String, Set<String>>();
        var metrics = Catalogue.shipped().all();
        var conditions = conditions();
        var aspects = metrics.stream().flatMap(m -> m.definition().stream()).toList();
        terms.put("metric", set(metrics, m -> m.name()));
        terms.put("condition", with(set(conditions, Condition::name), OTHER_RESPECTS));
        terms.put("aspect", set(aspects, Aspect::name));
        terms.put("short", with(set(conditions, Condition::shortName), List.of("unit", "spread", "label", "quantity")));
        terms.get("short").addAll(set(aspects, Aspect::shortName));
        terms.put(
                "word",
                Stream.concat(
                                conditions.stream().flatMap(c -> c.words().stream()),
                                aspects.stream().flatMap(a -> a.words().stream()))
                        .filter(w -> !DIGITS.matcher(w).matches())
                        .collect(Collectors.toCollection(TreeSet::new)));
        terms.put(
                "because",
                metrics.stream()
                        .flatMap(m -> m.conditions().stream())
                        .map(u -> u.influence().because())
                        .filter(b -> !b.isEmpty())
                        .collect(Collectors.toCollection(TreeSet::new)));
        terms.put(
                "level",
                Stream.of(SampleUnit.values())
                        .flatMap(u -> Stream.of(u.plural(), u.singular(), "one further " + u.singular()))
                        .collect(Collectors.toCollection(TreeSet::new)));
        terms.put("spread", set(List.of(SpreadKind.values()), SpreadKind::spelling));
        terms.put("funding", set(List.of(Funding.values()), Funding::spelling));
        terms.put("source-kind", spaced(SourceKind.values()));
        terms.put("source-state", spaced(SourceState.values()));
        terms.put("severity", set(List.of(Severity.values()), Severity::name));
        terms.put("block", with(spaced(Block.values()), List.of("label")));
        terms.put("step-kind", spaced(Step.Kind.values()));
        terms.put("groups", spaced(Planned.Groups.values()));
        terms.put("reach", spaced(Planned.Reach.Kind.values()));
        terms.put("aim", spaced(PlanAim.Kind.values()));
        terms.put("sd-from", spaced(PlanningSd.From.values()));
        written().forEach((section, names) -> terms.put(section, new TreeSet<>(names)));
        return terms;
    }

    /** Texts that stages write into what they hand on, each as it stands there. */
    private static Map<String, List<String>> written() {
        return Map.of(
                "form",
                        List.of(
                                "sd",
                                "se",
                                "ci95",
                                "iqr",
                                "range",
                                "mean and sd",
                                "median and iqr",
                                "median and range"),
                "unit", List.of("percentage points", "of the value", "equal", "within the label"),
                "infix", List.of("to", "and", "at", "labelled"),
                "stated",
                        List.of(
                                "not reported",
                                "within",
                                "no place given",
                                "no quote given",
                                "device record, no source given",
                                "all"),
                "made", List.of("chosen at", "line read at", "read off"),
                "place",
                        List.of("page", "PDF-page", "table", "row", "column", "figure", "panel", "equation", "section"),
                "gap-kind", List.of("open", "declared", "unmeasured", "asked", "unlike", "unpublished", "paid-for"),
                "formula", FORMULA_WORDS);
    }

    private static final List<String> FORMULA_WORDS = List.of(
            "mean and SD",
            "mean of all cases",
            "mean of centre means",
            "SD of centre means",
            "mean",
            "exact UCUM factor",
            "least squares, one point per member",
            "leave one out",
            "median",
            "of logarithms",
            "upper",
            "lower",
            "lower of",
            "from the table",
            "factor at",
            "at",
            "over bins with",
            "linear between flows",
            "slope of",
            "on",
            "with intercept",
            "through the origin",
            "standard curve at",
            "part",
            "and");

    private static Collection<Condition> conditions() {
        var all = new LinkedHashSet<>(Conditions.all().values());
        all.addAll(Catalogue.shipped().conditions().values());
        return all;
    }

    private static Set<String> spaced(Enum<?>[] values) {
        return set(List.of(values), v -> v.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private static Set<String> with(Set<String> some, List<String> more) {
        some.addAll(more);
        return some;
    }

    private static <T> Set<String> set(Collection<T> things, Function<T, String> name) {
        return things.stream().map(name).collect(Collectors.toCollection(TreeSet::new));
    }
}
