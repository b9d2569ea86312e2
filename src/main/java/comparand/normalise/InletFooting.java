package comparand.normalise;

import comparand.metric.Condition;
import comparand.metric.InletStandard;
import comparand.metric.Inputs;
import comparand.metric.Metric;
import comparand.model.Circumstance;
import comparand.model.Step;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Brings a published value to standard blood at the inlet, where the metric says how, the outlet was full, and all that
 * is needed is reported. Its spread is scaled as its mean.
 */
final class InletFooting {

    private InletFooting() {}

    /** The footing, and the conditions that now hold. */
    record Standardised(Footing footing, Circumstance inlet) {}

    /**
     * The value at the standard inlet; empty if nothing is to be done or something is lacking.
     *
     * @param stated the value's conditions
     * @param footing the value on its way so far
     * @param printed what is printed, in the metric's unit; nothing for words and counts
     */
    static Optional<Standardised> of(
            Metric metric, Map<String, Circumstance> stated, Footing footing, List<Double> printed) {
        var standard = metric.inletStandard();
        if (standard.isEmpty() || printed.isEmpty()) {
            return Optional.empty();
        }
        var s = standard.get();
        var from = amount(stated, s.inlet().id());
        double to = s.standard().in(unit(s.inlet()));
        boolean full = amount(stated, s.outlet().id())
                .filter(outlet -> outlet.value() >= s.full().in(unit(s.outlet())))
                .isPresent();
        boolean differs = from.isPresent()
                && metric.condition(s.inlet().id())
                        .filter(use -> !use.tolerance().same(to, from.get().value(), unit(s.inlet())))
                        .isPresent();
        return full && differs
                ? inputs(s, stated, from.get().value(), to)
                        .map(numbers -> standardised(
                                metric,
                                s,
                                footing,
                                printed.get(0),
                                numbers,
                                from.get().text(),
                                to))
                : Optional.empty();
    }

    private static Optional<Map<String, Double>> inputs(
            InletStandard s, Map<String, Circumstance> stated, double from, double to) {
        var numbers = new HashMap<String, Double>();
        numbers.put(InletStandard.FROM, from);
        numbers.put(InletStandard.TO, to);
        for (var input : s.needs()) {
            var amount = amount(stated, input.id());
            if (amount.isEmpty()) {
                return Optional.empty();
            }
            numbers.put(input.id(), amount.get().value());
        }
        return Optional.of(numbers);
    }

    private static Standardised standardised(
            Metric metric,
            InletStandard s,
            Footing footing,
            double printed,
            Map<String, Double> numbers,
            String was,
            double to) {
        double before = footing.value(printed);
        double shift = s.shift().of(new Inputs(numbers, footing.definition()));
        double factor = (before + shift) / before;
        var inlet = new Circumstance.Amount(to, s.standard().toString());
        var moved = footing.times(
                factor,
                footing.definition(),
                now -> Step.of(
                        Step.Kind.INLET,
                        s.formula(),
                        "over",
                        s.inlet().name(),
                        "was",
                        was,
                        "at",
                        s.standard().toString(),
                        "value",
                        String.valueOf(now.value(printed)),
                        "unit",
                        metric.unit().spelling(),
                        "source",
                        s.citation().toString()));
        return new Standardised(moved, inlet);
    }

    private static Optional<Circumstance.Amount> amount(Map<String, Circumstance> stated, String condition) {
        return Optional.ofNullable(stated.get(condition)).flatMap(Circumstance::amount);
    }

    private static Unit unit(Condition condition) {
        return condition.unit().orElse(Unit.ONE);
    }
}
