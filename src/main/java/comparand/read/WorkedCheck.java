package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Citation;
import comparand.metric.Derivation;
import comparand.metric.Input;
import comparand.metric.Inputs;
import comparand.metric.Metric;
import comparand.metric.WorkedValue;
import comparand.model.library.MetricRecord;
import comparand.model.library.WorkedRecord;
import comparand.unit.Rounding;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Worked values of a declared formula: each names every input and nothing else, in units that fit, and comes out. */
final class WorkedCheck {

    private static final int DIGITS_SHOWN = 8;

    private final Derivation way;
    private final Unit unit;
    private final List<Diagnostic> findings;

    WorkedCheck(Derivation way, Unit unit, List<Diagnostic> findings) {
        this.way = way;
        this.unit = unit;
        this.findings = findings;
    }

    /** Adds the worked values that come out; a formula without one, or with one that does not, is a fault. */
    void onto(Metric.Builder card, MetricRecord record, Located<String> formula) {
        if (record.worked().isEmpty()) {
            findings.add(Diagnostic.stop(
                    "worked-missing",
                    formula.span(),
                    "the formula has no worked value",
                    "a slip in a formula shows in every result, and nowhere else",
                    "add `worked:` with a value of each input and the result that must come out"));
        }
        record.worked()
                .forEach(worked -> numbers(worked)
                        .filter(numbers -> comesOut(worked, numbers))
                        .ifPresent(numbers -> card.worked(value(worked))));
    }

    private boolean comesOut(WorkedRecord worked, Map<String, Double> numbers) {
        var printed = worked.result().value();
        double computed = way.computation().of(new Inputs(numbers, way.gives()));
        // half a digit, and a billionth for the last bit of a double
        if (Math.abs(computed - printed.in(unit)) <= printed.halfUnitIn(unit) * (1 + 1e-9)) {
            return true;
        }
        findings.add(
                Diagnostic.stop(
                        "worked-wrong",
                        worked.result().span(),
                        "the formula gives %s, not `%s`".formatted(shown(computed), printed),
                        "either the formula or the worked value is not what was meant",
                        "mend whichever is wrong; units are converted unless `empirical: yes`, so no factor of 10 or 60 is needed"));
        return false;
    }

    private WorkedValue value(WorkedRecord worked) {
        var quantities = new TreeMap<String, String>();
        worked.from().stream()
                .forEach(e -> quantities.put(e.key().value(), e.value().value().toString()));
        var how = worked.how().map(Located::value).orElse("worked value of the record");
        var source = new Citation("Declared in the library", how, Citation.Trust.DECLARED);
        return new WorkedValue(quantities, way.gives(), worked.result().value(), source);
    }

    private String shown(double computed) {
        if (!Double.isFinite(computed)) {
            return "no number";
        }
        var digits = Rounding.significant(computed, DIGITS_SHOWN).stripTrailingZeros();
        return digits.toPlainString() + (unit.isNumber() ? "" : " " + unit);
    }

    /** The inputs as numbers in the units of the formula; empty, with a finding, if they do not fit it. */
    private Optional<Map<String, Double>> numbers(WorkedRecord worked) {
        int before = findings.size();
        var numbers = new HashMap<String, Double>();
        for (var input : way.inputs()) {
            worked.from()
                    .get(input.id())
                    .ifPresentOrElse(
                            quantity -> {
                                if (quantity.value().unit().convertsTo(input.unit())) {
                                    numbers.put(input.id(), quantity.value().in(input.unit()));
                                } else {
                                    dimension(quantity, input.id(), input.unit());
                                }
                            },
                            () -> stop(
                                    "worked-incomplete",
                                    worked.result(),
                                    "the worked value has no `%s`".formatted(input.id()),
                                    "add it under `from:`"));
        }
        var ids = way.inputs().stream().map(Input::id).toList();
        worked.from().stream()
                .filter(e -> !ids.contains(e.key().value()))
                .forEach(e -> stop(
                        "worked-incomplete",
                        e.key(),
                        "the formula has no input `%s`".formatted(e.key().value()),
                        "take it out; the formula takes " + String.join(", ", ids)));
        if (!worked.result().value().unit().convertsTo(unit)) {
            dimension(worked.result(), "the result", unit);
        }
        return findings.size() == before ? Optional.of(numbers) : Optional.empty();
    }

    private void dimension(Located<?> quantity, String what, Unit wanted) {
        stop(
                "unit-dimension",
                quantity,
                "`%s` is not in a unit of %s, which is kept in %s".formatted(quantity.value(), what, wanted),
                "write it in %s".formatted(wanted));
    }

    private void stop(String code, Located<?> at, String message, String fix) {
        findings.add(
                Diagnostic.stop(code, at.span(), message, "a formula that cannot be tried cannot be trusted", fix));
    }
}
