package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.metric.Aspect;
import comparand.metric.Bounds;
import comparand.metric.Catalogue;
import comparand.metric.Citation;
import comparand.metric.Condition;
import comparand.metric.ConditionUse;
import comparand.metric.Effect;
import comparand.metric.Influence;
import comparand.metric.Metric;
import comparand.metric.Tolerance;
import comparand.metric.Variant;
import comparand.model.library.AspectRecord;
import comparand.model.library.ConditionUseRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.YesNo;
import comparand.unit.DecimalSign;
import comparand.unit.Parsed;
import comparand.unit.PrintedNumber;
import comparand.unit.PrintedRange;
import comparand.unit.TradeSpelling;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns metric records into metrics, the same type as those the tool ships. */
final class DeclaredMetrics {

    private static final int MOST_DECIMALS = 9;

    private final List<Diagnostic> findings;
    private final Map<String, Condition> conditions =
            new LinkedHashMap<>(Catalogue.shipped().conditions());
    private final Map<String, Span> declaredAt = new LinkedHashMap<>();

    private DeclaredMetrics(List<Diagnostic> findings) {
        this.findings = findings;
    }

    /** The shipped catalogue with the declared metrics behind; those with a fault are left out and reported. */
    static Catalogue catalogue(Collection<MetricRecord> records, List<Diagnostic> findings) {
        var reader = new DeclaredMetrics(findings);
        // a condition declared with one metric may be used by another, whichever file comes first
        records.forEach(
                r -> r.conditions().stream().filter(DeclaredMetrics::declares).forEach(reader::declare));
        var metrics = new ArrayList<Metric>();
        for (var record : records) {
            reader.metric(record).ifPresent(metrics::add);
        }
        return Catalogue.shipped().with(metrics);
    }

    private Optional<Metric> metric(MetricRecord record) {
        int before = findings.size();
        if (Catalogue.shipped().find(record.id()).isPresent()) {
            stop(
                    "metric-taken",
                    record.metric(),
                    "`%s` is the name of a metric the tool ships".formatted(record.id()),
                    "two meanings under one name would be mixed",
                    "give it a name of its own");
        }
        var unit = unit(record.unit());
        var card = Metric.named(record.id(), record.name().value())
                .symbol(record.symbol().value())
                .meaning(record.means().value())
                .nature(record.nature().value())
                .better(record.better().value());
        unit.ifPresent(card::unit);
        record.mostDecimals().flatMap(this::decimals).ifPresent(card::mostDecimals);
        unit.ifPresent(u -> {
            record.plausible().flatMap(r -> bounds(r, u)).ifPresent(b -> card.plausible(b.low(), b.high()));
            record.possible().flatMap(r -> bounds(r, u)).ifPresent(b -> card.possible(b.low(), b.high()));
        });
        record.definition().forEach(a -> aspect(a).ifPresent(card::aspect));
        var sign = record.decimal().map(Located::value).orElse(DecimalSign.POINT);
        record.conditions().forEach(c -> use(c, sign).ifPresent(card::condition));
        record.interpolatesOver().ifPresent(over -> {
            if (record.conditions().stream().anyMatch(c -> c.condition().value().equals(over.value()))) {
                Optional.ofNullable(conditions.get(over.value())).ifPresent(card::interpolatesOver);
            } else {
                stop(
                        "condition-unknown",
                        over,
                        "`%s` is not among the conditions of this metric".formatted(over.value()),
                        "values are read off along a condition the metric depends on",
                        Suggest.instruction(
                                over.value(),
                                record.conditions().stream()
                                        .map(c -> c.condition().value())
                                        .toList()));
            }
        });
        record.confusedWith()
                .ifPresent(list -> card.confusedWith(
                        list.list().stream().map(Located::value).toArray(String[]::new)));
        record.citations()
                .forEach(
                        c -> card.cites(new Citation(c.work().value(), c.place().value(), Citation.Trust.DECLARED)));
        unit.ifPresent(u -> new DeclaredFormula(record, u, findings).onto(card));
        return findings.size() == before ? Optional.of(card.build()) : Optional.empty();
    }

    private Optional<Unit> unit(Located<String> text) {
        return TradeSpelling.read(text.value()).fold(Optional::of, fault -> {
            unreadable(text, fault);
            return Optional.empty();
        });
    }

    private Optional<Integer> decimals(Located<PrintedNumber> stated) {
        var number = stated.value();
        if (number.decimals() == 0 && number.value().signum() >= 0 && number.toDouble() <= MOST_DECIMALS) {
            return Optional.of(number.value().intValueExact());
        }
        stop(
                "decimals-unreadable",
                stated,
                "`%s` is not a number of decimals".formatted(number),
                "results could not be printed with it",
                "write a whole number from 0 to %d".formatted(MOST_DECIMALS));
        return Optional.empty();
    }

    private Optional<Bounds> bounds(Located<PrintedRange> range, Unit unit) {
        var r = range.value();
        if (!r.low().unit().convertsTo(unit)) {
            stop(
                    "unit-dimension",
                    range,
                    "`%s` is not in a unit that fits the metric, which is kept in %s".formatted(r, unit.code()),
                    "limits in another quantity would catch nothing",
                    "write the range in the unit of the metric");
            return Optional.empty();
        }
        double low = r.low().in(unit);
        double high = r.high().in(unit);
        if (!(low < high)) {
            stop(
                    "range-empty",
                    range,
                    "the range `%s` holds a single number".formatted(r),
                    "every value would be outside of it",
                    "write two different ends");
            return Optional.empty();
        }
        return Optional.of(new Bounds(low, high));
    }

    private Optional<Aspect> aspect(AspectRecord record) {
        if (record.aspect().value().equals(Aspect.Parts.ID)) {
            if (record.parts().isEmpty()) {
                stop(
                        "key-missing",
                        record.aspect(),
                        "the aspect `parts` names no parts",
                        "values could not say which parts they cover",
                        "add `parts: [...]` with the parts there are");
                return Optional.empty();
            }
            var parts = record.parts().get().list().stream().map(Located::value).toList();
            boolean additive =
                    record.additive().map(Located::value).map(YesNo::isYes).orElse(false);
            return Optional.of(
                    new Aspect.Parts(record.name().value(), record.role().value(), parts, additive));
        }
        var variants = record.variants().stream()
                .map(v -> new Variant(v.variant().value(), v.means().value()))
                .toList();
        var usual = record.usual().map(Located::value).orElse("");
        if (variants.stream().noneMatch(v -> v.id().equals(usual))) {
            stop(
                    "variant-unknown",
                    record.usual().orElse(record.aspect()),
                    "the usual variant of `%s` is not one of its variants"
                            .formatted(record.aspect().value()),
                    "local results need one variant to follow",
                    "add `usual:` with one of: "
                            + String.join(
                                    ", ", variants.stream().map(Variant::id).toList()));
            return Optional.empty();
        }
        return Optional.of(new Aspect.Choice(
                record.aspect().value(),
                record.name().value(),
                record.aspect().value(),
                record.role().value(),
                usual,
                variants,
                List.of()));
    }

    private Optional<ConditionUse> use(ConditionUseRecord record, DecimalSign sign) {
        return condition(record)
                .flatMap(condition -> Tolerance.read(record.tolerance().value(), sign, condition)
                        .fold(
                                tolerance -> Optional.of(new ConditionUse(
                                        condition, record.role().value(), tolerance, influence(record))),
                                fault -> {
                                    unreadable(record.tolerance(), fault);
                                    return Optional.empty();
                                }));
    }

    private static Influence influence(ConditionUseRecord record) {
        return record.more()
                .map(m -> Influence.more(
                        m.value(), record.because().map(Located::value).orElse("")))
                .orElse(Influence.more(Effect.NOT_PREDICTABLE, ""));
    }

    private static boolean declares(ConditionUseRecord record) {
        return record.unit().isPresent()
                || record.words().isPresent()
                || record.name().isPresent();
    }

    /** Declared twice, a condition must be declared alike. */
    private void declare(ConditionUseRecord record) {
        var id = record.condition().value();
        var unit = record.unit().flatMap(this::unit);
        if (record.unit().isPresent() && unit.isEmpty()) {
            return;
        }
        var name = record.name().map(Located::value).orElse(id.replace('-', ' '));
        var words = record.words()
                .map(w -> w.list().stream().map(Located::value).toList())
                .orElse(List.of());
        var declared =
                new Condition(id, name, record.shortName().map(Located::value).orElse(name), unit, words);
        var known = Optional.ofNullable(conditions.putIfAbsent(id, declared));
        if (known.isPresent() && !known.get().equals(declared)) {
            stop(
                    "condition-declared-twice",
                    record.condition(),
                    "`%s` is declared differently %s"
                            .formatted(id, declaredAt.containsKey(id) ? "at " + declaredAt.get(id) : "by the tool"),
                    "one word would mean two things",
                    "leave out `name:`, `short-name:`, `unit:` and `words:` here, or give it another name");
        }
        declaredAt.putIfAbsent(id, record.condition().span());
    }

    private Optional<Condition> condition(ConditionUseRecord record) {
        var id = record.condition().value();
        var known = Optional.ofNullable(conditions.get(id));
        if (known.isEmpty() && !declares(record)) {
            stop(
                    "condition-unknown",
                    record.condition(),
                    "`%s` is not a condition known here".formatted(id),
                    "nobody could say whether two values share it",
                    Suggest.nearest(id, conditions.keySet())
                                    .map(near -> "did you mean `" + near + "`? ")
                                    .orElse("") + "to declare it, add `name:`, `short-name:`, and `unit:` or `words:`");
        }
        return known;
    }

    private void unreadable(Located<String> text, Parsed.Fault<?> fault) {
        findings.add(Diagnostic.stop(
                "value-unreadable",
                text.span().part(fault.at(), fault.length()),
                fault.problem(),
                "a metric that is not whole cannot be compared",
                fault.fix()));
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }
}
