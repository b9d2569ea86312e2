package comparand.study;

import comparand.metric.Definition;
import comparand.metric.Gathering;
import comparand.metric.Input;
import comparand.metric.Metric;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the rows of one file give a metric: by a column of its own, or by a formula.
 *
 * @param plan the formula; empty where a column gives the metric itself
 * @param inputs the ids of what is gathered from each row: the metric, or the formula's inputs
 * @param columns the headings of the columns that take part, sorted
 */
record Way(Metric metric, Optional<Plan> plan, List<String> inputs, List<String> columns, Definition followed) {

    Way {
        inputs = List.copyOf(inputs);
        columns = List.copyOf(columns);
    }

    static Way column(Metric metric, String heading, Definition wanted) {
        return new Way(metric, Optional.empty(), List.of(metric.id()), List.of(heading), wanted);
    }

    static Way formula(Plan plan, List<String> columns) {
        var inputs = plan.inputs().keySet().stream().map(i -> i.id()).toList();
        return new Way(
                plan.metric(),
                Optional.of(plan),
                isRowByRow(plan.way().gathering()) ? List.of(plan.metric().id()) : inputs,
                columns,
                plan.followed());
    }

    /** How rows become one result. */
    Gathering gathering() {
        return plan.map(p -> p.way().gathering()).orElse(Gathering.EACH_ROW);
    }

    String formula() {
        return plan.map(Plan::formulas).orElse("");
    }

    /** What is gathered from one row, in the order of the inputs; empty if the row lacks any of it. */
    Optional<double[]> gathered(RowFacts row, Plan.Given given) {
        if (plan.isEmpty()) {
            return Optional.ofNullable(row.numbers().get(metric.id())).map(m -> new double[] {m.in(metric.unit())});
        }
        if (isRowByRow(gathering())) {
            return plan.get().value(given).filter(Double::isFinite).map(v -> new double[] {v});
        }
        return plan.get()
                .numbers(given)
                .map(numbers -> inputs.stream()
                        .mapToDouble(id -> numbers.getOrDefault(id, Double.NaN))
                        .toArray());
    }

    /** An input of the formula. */
    Input input(String id) {
        return plan.orElseThrow().inputs().keySet().stream()
                .filter(i -> i.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The formula on gathered inputs. */
    double apply(Map<String, Double> numbers) {
        return plan.orElseThrow().apply(numbers);
    }

    private static boolean isRowByRow(Gathering gathering) {
        return gathering instanceof Gathering.EachRow
                || gathering instanceof Gathering.Total
                || (gathering instanceof Gathering.Median median && median.each() instanceof Gathering.EachRow);
    }
}
