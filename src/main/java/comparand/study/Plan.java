package comparand.study;

import comparand.metric.Definition;
import comparand.metric.Derivation;
import comparand.metric.Input;
import comparand.metric.Inputs;
import comparand.metric.Metric;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

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

    /**
     * The metric from one row, in the metric's unit; empty if the row lacks an input.
     *
     * @param given the number of a given quantity, in the unit its input names
     */
    Optional<Double> value(Function<Input, Optional<Double>> given) {
        var numbers = new HashMap<String, Double>();
        for (var entry : inputs.entrySet()) {
            var input = entry.getKey();
            var number = entry.getValue()
                    .map(plan -> plan.value(given).map(v -> plan.metric.unit().convert(v, input.unit())))
                    .orElseGet(() -> given.apply(input));
            if (number.isEmpty()) {
                return Optional.empty();
            }
            numbers.put(input.id(), number.get());
        }
        return Optional.of(way.computation().of(new Inputs(numbers, wanted)));
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

    /** All formulas on the way, the outermost first. */
    String formulas() {
        var out = new StringBuilder(way.formula());
        inputs.values().forEach(plan -> plan.ifPresent(p -> out.append("; ").append(p.formulas())));
        return out.toString();
    }
}
