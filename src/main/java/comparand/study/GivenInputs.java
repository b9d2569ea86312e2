package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Definition;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.metric.Nature;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where the inputs of formulas come from: a row, what is fixed for the file, or the device's label. */
final class GivenInputs {

    private final DataFile file;
    private final Derivations derivations;

    GivenInputs(DataFile file) {
        this.file = file;
        this.derivations = new Derivations(file.library().catalogue(), given(file));
    }

    private static Set<String> given(DataFile file) {
        var given = new HashSet<>(file.columns().quantities().keySet());
        file.fixed().stream()
                .filter(e -> e.value().value().asNumber().isPresent())
                .forEach(e -> given.add(e.key().value()));
        file.library()
                .values()
                .map(v -> v.value().metric().value())
                .filter(id -> file.library()
                        .catalogue()
                        .find(id)
                        .filter(m -> m.nature() == Nature.STATED)
                        .isPresent())
                .forEach(given::add);
        return given;
    }

    /** The way to compute a metric; empty, with a finding, if an input of every way is lacking. */
    Optional<Plan> plan(Metric metric, Definition wanted, Located<String> asked, List<Diagnostic> findings) {
        var plan = derivations.plan(metric, wanted);
        if (plan.isEmpty()) {
            findings.add(lacking(metric, derivations.missing(metric, wanted), asked));
        }
        return plan;
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

    /** A given number in the unit the formula wants. */
    Optional<Double> value(Input input, RowFacts row) {
        var measured = row.numbers().get(input.id());
        if (measured != null) {
            return Optional.of(measured.in(input.unit()));
        }
        return file.fixed()
                .get(input.id())
                .flatMap(c -> c.value().asNumber())
                .map(q -> q.in(input.unit()))
                .or(() -> nominal(input, row.device()));
    }

    private Optional<Double> nominal(Input input, String device) {
        return file.library()
                .device(device)
                .flatMap(d -> file.library().source(d.instructions().value()))
                .flatMap(s -> s.values().stream()
                        .filter(v -> v.device().value().equals(device)
                                && v.metric().value().equals(input.id()))
                        .flatMap(v -> v.value().stream())
                        .findFirst())
                .map(v -> v.value().in(input.unit()));
    }
}
