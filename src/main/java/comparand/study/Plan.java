package comparand.study;

import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Input;
import comparand.metric.Inputs;
import comparand.metric.Metric;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A way to compute a metric that was found once for a file and is then applied to every row.
 *
 * @param inputs each input with the plan that computes it; no plan where a column, a fixed condition or a nominal figure
 *     gives it
 */
record Plan(Metric metric, Derivation way, Definition wanted, Map<Input, Optional<Plan>> inputs) {

    Plan {
        inputs = new LinkedHashMap<>(inputs);
    }

    /** Where the numbers and words of one row come from. */
    interface Given {

        /** A given quantity in the unit its input names. */
        Optional<Double> number(Input input);

        /** A condition in words. */
        Optional<String> word(String condition);
    }

    /** The metric from one row, in the metric's unit; empty if the row lacks an input or the formula must not be used. */
    Optional<Double> value(Given given) {
        var numbers = numbers(given);
        return numbers.isPresent() ? Optional.of(apply(numbers.get())) : Optional.empty();
    }

    /** The inputs of one row, each in the unit its formula wants; empty if one is lacking. */
    Optional<Map<String, Double>> numbers(Given given) {
        // no streams: every row of a large file comes here for every metric
        for (var only : way.applies()) {
            if (!only.holds(given.word(only.condition().id()))) {
                return Optional.empty();
            }
        }
        var numbers = new HashMap<String, Double>();
        for (var entry : inputs.entrySet()) {
            var input = entry.getKey();
            var plan = entry.getValue();
            var number = plan.isPresent() ? plan.get().in(input.unit(), given) : given.number(input);
            if (number.isEmpty() || !Double.isFinite(number.get())) {
                return Optional.empty();
            }
            numbers.put(input.id(), number.get());
        }
        return Optional.of(numbers);
    }

    private Optional<Double> in(Unit unit, Given given) {
        var value = value(given);
        return value.isPresent() ? Optional.of(metric.unit().convert(value.get(), unit)) : value;
    }

    Plan withWanted(Definition other) {
        return new Plan(metric, way, other, inputs);
    }

    /** The formula on numbers. */
    double apply(Map<String, Double> numbers) {
        return way.computation().of(new Inputs(numbers, wanted));
    }

    /** The definition the result follows: what was wanted, and what this way of computing fixes. */
    Definition followed() {
        var all = new TreeMap<>(wanted.aspects());
        all.putAll(way.gives().aspects());
        return new Definition(all);
    }

    /** The ids of all inputs that are given, not computed. */
    Set<String> given() {
        var ids = new TreeSet<String>();
        inputs.forEach((input, plan) -> plan.ifPresentOrElse(p -> ids.addAll(p.given()), () -> ids.add(input.id())));
        return ids;
    }

    /** All formulas on the way, the outermost first, each once. */
    String formulas() {
        return String.join("; ", each());
    }

    private Set<String> each() {
        var all = new LinkedHashSet<String>();
        all.add(way.formula());
        inputs.values().forEach(plan -> plan.ifPresent(p -> all.addAll(p.each())));
        return all;
    }
}
