package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.metric.Catalogue;
import comparand.metric.Citation;
import comparand.metric.Computation;
import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Formula;
import comparand.metric.Input;
import comparand.metric.Metric;
import comparand.model.library.AspectRecord;
import comparand.model.library.InputRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.VariantRecord;
import comparand.model.library.YesNo;
import comparand.unit.Parsed;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The formula of a declared metric, with its inputs and worked values. A formula whose dimension is not that of the metric,
 * or whose worked value does not come out, is a fault of the record.
 */
final class DeclaredFormula {

    /** As many as a formula may have parts. */
    private static final int MOST_INPUTS = 200;

    private final MetricRecord record;
    private final Unit unit;
    private final List<Diagnostic> findings;
    private final Map<String, Input> bySymbol = new LinkedHashMap<>();
    private final Map<String, Unit> units = new LinkedHashMap<>();

    DeclaredFormula(MetricRecord record, Unit unit, List<Diagnostic> findings) {
        this.record = record;
        this.unit = unit;
        this.findings = findings;
    }

    /** Adds the formula and its worked values to the metric, if there is one; what is wrong is added to the findings. */
    void onto(Metric.Builder card) {
        if (record.inputs().size() > MOST_INPUTS) {
            stop(
                    "inputs-too-many",
                    record.inputs().get(MOST_INPUTS).input(),
                    "this metric has %d inputs, more than the %d a formula can use"
                            .formatted(record.inputs().size(), MOST_INPUTS),
                    "what no formula can use would only cost time",
                    "take out those that the formula does not use");
            return;
        }
        int before = findings.size();
        record.inputs().forEach(this::input);
        if (record.formula().isEmpty()) {
            withoutFormula();
            return;
        }
        var text = record.formula().get();
        if (findings.size() != before) {
            return;
        }
        Formula.read(text.value(), bySymbol.keySet())
                .fold(Optional::of, fault -> this.<Formula>unreadable(text, "formula-unreadable", fault))
                .filter(formula -> allUsed(formula) && fits(formula, text))
                .ifPresent(formula -> {
                    var way = new Derivation(
                            formula.toString(),
                            List.copyOf(bySymbol.values()),
                            follows(),
                            source(),
                            computation(formula));
                    card.derived(way);
                    new WorkedCheck(way, unit, findings).onto(card, record, text);
                });
    }

    private void withoutFormula() {
        var left = new ArrayList<Located<?>>();
        record.inputs().forEach(i -> left.add(i.input()));
        record.worked().forEach(w -> left.add(w.result()));
        record.empirical().ifPresent(left::add);
        record.formulaFollows().stream().forEach(e -> left.add(e.key()));
        left.stream()
                .findFirst()
                .ifPresent(at -> stop(
                        "formula-missing",
                        at,
                        "`%s` has no formula this could belong to".formatted(record.id()),
                        "what stands here would not be used",
                        "add `formula:`, or take it out"));
    }

    private void input(InputRecord declared) {
        var id = declared.input().value();
        var symbol = declared.symbol().value();
        var read = TradeSpelling.read(declared.unit().value())
                .fold(Optional::of, fault -> this.<Unit>unreadable(declared.unit(), "value-unreadable", fault));
        if (read.isEmpty()) {
            return;
        }
        var known = Optional.ofNullable(Catalogue.shipped().inputs().get(id));
        if (known.isPresent() && !known.get().unit().convertsTo(read.get())) {
            stop(
                    "input-declared-twice",
                    declared.unit(),
                    "`%s` is a quantity the tool knows, in %s"
                            .formatted(id, known.get().unit()),
                    "one word would mean two things",
                    "give it a unit that converts to %s, or another name"
                            .formatted(known.get().unit()));
        } else if (!Formula.isLetter(symbol)) {
            stop(
                    "symbol-unreadable",
                    declared.symbol(),
                    "`%s` cannot stand in a formula".formatted(symbol),
                    "a formula could not tell it from a sign or a function",
                    "use letters, digits and underscores, beginning with a letter, as in `Plt_post`");
        } else if (bySymbol.containsKey(symbol) || bySymbol.values().stream().anyMatch(i -> i.id().equals(id))) {
            stop(
                    "input-declared-twice",
                    declared.input(),
                    "`%s` or its symbol is declared twice".formatted(id),
                    "one letter would mean two quantities",
                    "declare each input once, with a symbol of its own");
        } else {
            bySymbol.put(symbol, new Input(id, symbol, declared.means().value(), read.get()));
            units.put(symbol, read.get());
        }
    }

    private boolean allUsed(Formula formula) {
        var unused = record.inputs().stream()
                .filter(i -> !formula.letters().contains(i.symbol().value()))
                .findFirst();
        unused.ifPresent(i -> stop(
                "input-unused",
                i.symbol(),
                "the formula does not use `%s`".formatted(i.symbol().value()),
                "rows without it would be left out for nothing",
                "use it in the formula, or take it out of `inputs:`"));
        return unused.isEmpty();
    }

    private boolean isEmpirical() {
        return record.empirical().map(Located::value).map(YesNo::isYes).orElse(false);
    }

    private boolean fits(Formula formula, Located<String> text) {
        if (isEmpirical()) {
            return true;
        }
        var logarithmic =
                bySymbol.values().stream().filter(i -> i.unit().isLogarithmic()).findFirst();
        if (logarithmic.isPresent() || unit.isLogarithmic()) {
            stop(
                    "formula-dimension",
                    text,
                    "%s is a logarithm, which no arithmetic over quantities holds for"
                            .formatted(
                                    logarithmic.map(i -> "`" + i.symbol() + "`").orElse("the result")),
                    "a mean of pH values is not the pH of a mean",
                    "declare `empirical: yes`, and let the formula take the bare numbers");
            return false;
        }
        return formula.dimension(units)
                .fold(
                        dimension -> {
                            if (dimension.equals(unit.dimension())) {
                                return true;
                            }
                            stop(
                                    "formula-dimension",
                                    text,
                                    "the formula gives a quantity in %s, and `%s` is kept in %s (%s)"
                                            .formatted(dimension, record.id(), unit, unit.dimension()),
                                    "a result of another dimension is another quantity",
                                    "mend the formula or the units, or declare `empirical: yes`");
                            return false;
                        },
                        fault -> unreadable(text, "formula-dimension", fault).isPresent());
    }

    private Computation computation(Formula formula) {
        var inputs = List.copyOf(bySymbol.values());
        boolean empirical = isEmpirical();
        return in -> {
            var numbers = new HashMap<String, Double>();
            inputs.forEach(i -> numbers.put(i.symbol(), in.of(i)));
            return empirical ? formula.value(numbers) : formula.quantity(numbers, units, unit);
        };
    }

    private Definition follows() {
        var definition = Definition.NONE;
        for (var entry : record.formulaFollows().list()) {
            var aspect = record.definition().stream()
                    .filter(a -> a.aspect().value().equals(entry.key().value()))
                    .findFirst();
            var words = aspect.map(AspectRecord::variants).orElse(List.of()).stream()
                    .map(VariantRecord::variant)
                    .map(Located::value)
                    .toList();
            if (aspect.isEmpty()) {
                stop(
                        "aspect-unknown",
                        entry.key(),
                        "the definition of %s has no aspect `%s`"
                                .formatted(record.name().value(), entry.key().value()),
                        "nobody could say what the formula follows",
                        Suggest.instruction(
                                entry.key().value(),
                                record.definition().stream()
                                        .map(a -> a.aspect().value())
                                        .toList()));
            } else if (!words.contains(entry.value().value())) {
                stop(
                        "variant-unknown",
                        entry.value(),
                        "`%s` is not a variant of `%s`"
                                .formatted(entry.value().value(), entry.key().value()),
                        "nobody could say what the formula follows",
                        Suggest.instruction(entry.value().value(), words));
            } else {
                definition = definition.with(
                        entry.key().value(), List.of(entry.value().value()));
            }
        }
        return definition;
    }

    private Citation source() {
        var first = record.citations().get(0);
        return new Citation(first.work().value(), first.place().value(), Citation.Trust.DECLARED);
    }

    private <T> Optional<T> unreadable(Located<String> text, String code, Parsed.Fault<?> fault) {
        findings.add(Diagnostic.stop(
                code,
                text.span().part(fault.at(), fault.length()),
                fault.problem(),
                "a metric that is not whole cannot be compared",
                fault.fix()));
        return Optional.empty();
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }
}
