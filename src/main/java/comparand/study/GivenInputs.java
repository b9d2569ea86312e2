package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Library;
import comparand.model.library.ConditionText;
import comparand.model.library.Entries;
import comparand.unit.Printed;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** Where the inputs of formulas come from in one file: its rows, what is fixed for it, or the device's label. */
final class GivenInputs {

    private final Library library;
    private final Entries<Located<ConditionText>> fixed;
    private final Set<String> inRows;
    private final Set<String> all;
    private final Derivations derivations;
    /** Asked for by the thread that looks at rows ahead and by the one that computes from them. */
    private final Map<String, Optional<Printed>> nominal = new ConcurrentHashMap<>();

    /**
     * The inputs of a file.
     *
     * @param inRows ids of what the rows give, once they are joined
     */
    GivenInputs(Library library, Entries<Located<ConditionText>> fixed, Set<String> inRows) {
        this.library = library;
        this.fixed = fixed;
        // the very texts that rules and formulas ask by, so that no letters are compared in every row
        this.inRows = inRows.stream().map(String::intern).collect(Collectors.toUnmodifiableSet());
        this.all = given();
        this.derivations = new Derivations(library.catalogue(), all, this::fixedWord, this.inRows);
    }

    private Set<String> given() {
        var given = new HashSet<>(inRows);
        fixed.stream()
                .filter(e -> e.value().value().asNumber().isPresent())
                .forEach(e -> given.add(e.key().value()));
        library.values()
                .map(v -> v.value().metric().value())
                .filter(id -> library.catalogue()
                        .find(id)
                        .filter(m -> m.nature() == Nature.STATED)
                        .isPresent())
                .forEach(given::add);
        return given;
    }

    private Optional<String> fixedWord(String condition) {
        return fixed.get(condition)
                .map(Located::value)
                .filter(ConditionText::isReported)
                .map(ConditionText::text);
    }

    /** Whether the rows give a quantity. */
    boolean isInRows(String id) {
        return inRows.contains(id);
    }

    /** Whether a quantity is given at all. */
    boolean has(String id) {
        return all.contains(id);
    }

    /** The way to compute a metric; empty, with a finding, if an input of every way is lacking. */
    Optional<Plan> plan(Metric metric, Definition wanted, Located<String> asked, List<Diagnostic> findings) {
        var plan = derivations.plan(metric, wanted);
        if (plan.isEmpty()) {
            findings.add(lacking(metric, derivations.missing(metric, wanted), asked));
        }
        return plan;
    }

    /** The way to compute a metric by its id, if there is one. */
    Optional<Plan> plan(String metric, Definition wanted) {
        return library.catalogue()
                .find(metric)
                .filter(m -> !m.derivations().isEmpty())
                .flatMap(m -> derivations.plan(m, over(m.standardDefinition(), wanted)));
    }

    private static Definition over(Definition standard, Definition wanted) {
        var definition = standard;
        for (var aspect : wanted.aspects().entrySet()) {
            definition = definition.with(aspect.getKey(), aspect.getValue());
        }
        return definition;
    }

    /** What one row gives. */
    Plan.Given of(RowFacts row) {
        return new Plan.Given() {
            @Override
            public Optional<Double> number(Input input) {
                var measured = row.numbers().get(input.id());
                if (measured != null) {
                    return Optional.of(measured.in(input.unit()));
                }
                return fixed.get(input.id())
                        .flatMap(c -> c.value().asNumber())
                        .or(() -> row.device().flatMap(device -> nominal(input.id(), device)))
                        .map(q -> q.in(input.unit()));
            }

            @Override
            public Optional<String> word(String condition) {
                return Optional.ofNullable(row.words().get(condition)).or(() -> fixedWord(condition));
            }
        };
    }

    /** A figure the device's instructions for use in force state. */
    private Optional<Printed> nominal(String metric, String device) {
        return nominal.computeIfAbsent(
                metric + "|" + device,
                k -> library.device(device)
                        .flatMap(d -> library.source(d.instructions().value()))
                        .flatMap(s -> s.values().stream()
                                .filter(v -> v.device().value().equals(device)
                                        && v.metric().value().equals(metric))
                                .flatMap(v -> v.value().stream())
                                .findFirst())
                        .map(Located::value));
    }

    private static Diagnostic lacking(Metric metric, List<Input> inputs, Located<String> asked) {
        if (inputs.isEmpty()) {
            return Diagnostic.stop(
                    "input-missing",
                    asked.span(),
                    "`%s` has no formula, and no column gives it".formatted(metric.id()),
                    "a metric is computed from what was measured, or not at all",
                    "map a column to it with `{metric: %s, unit: ...}`, or take it out of `gives:`"
                            .formatted(metric.id()));
        }
        var names = inputs.stream()
                .map(i -> "`%s` (%s)".formatted(i.id(), i.meaning()))
                .toList();
        var first = inputs.get(0);
        return Diagnostic.stop(
                "input-missing",
                asked.span(),
                "`%s` cannot be computed: nothing gives %s".formatted(metric.id(), String.join(", ", names)),
                "a metric is computed from what was measured, or not at all",
                "map a column with `{input: %s, unit: %s}`, state it under `conditions:`, or take `%s` out of `gives:`"
                        .formatted(first.id(), first.unit().code(), metric.id()));
    }
}
