package comparand.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Computes a worked value of the catalogue again, from its inputs and the formula of the variant it follows. */
public final class WorkedAgain implements Gathering.Cases<Double> {

    private final Derivation way;
    private final List<Map<String, Double>> rows;
    private final Definition definition;

    private WorkedAgain(Derivation way, List<Map<String, Double>> rows, Definition definition) {
        this.way = way;
        this.rows = rows;
        this.definition = definition;
    }

    /** The result in the unit of the metric. */
    public static double of(Metric metric, WorkedValue worked) {
        var aspects = new TreeMap<>(metric.standardDefinition().aspects());
        aspects.putAll(worked.definition().aspects());
        var wanted = new Definition(aspects);
        var way = metric.derivations().stream()
                .filter(d -> d.gives().aspects().entrySet().stream()
                        .allMatch(e -> e.getValue().equals(aspects.get(e.getKey()))))
                .filter(d -> d.inputs().stream().allMatch(i -> worked.inputs().containsKey(i.id())))
                .max(Comparator.comparingInt(d -> d.inputs().size()))
                .orElseThrow();
        int n = worked.inputs().keySet().stream()
                .mapToInt(id -> worked.rows(id).size())
                .max()
                .orElse(1);
        List<Map<String, Double>> rows = new ArrayList<>();
        for (int row = 0; row < n; row++) {
            var numbers = new HashMap<String, Double>();
            for (var input : way.inputs()) {
                numbers.put(input.id(), worked.rows(input.id()).get(row).in(input.unit()));
            }
            rows.add(numbers);
        }
        return gathered(way, rows, wanted);
    }

    /** Rows taken as those of one member, or, where a line or sum is over a group, as members of one row each. */
    static double gathered(Derivation way, List<Map<String, Double>> rows, Definition wanted) {
        return way.gathering().fold(new WorkedAgain(way, rows, wanted));
    }

    @Override
    public Double eachRow(Gathering.EachRow g) {
        return each().stream().mapToDouble(d -> d).average().orElseThrow();
    }

    @Override
    public Double total(Gathering.Total g) {
        return each().stream().mapToDouble(d -> d).sum();
    }

    @Override
    public Double sums(Gathering.Sums g) {
        var sums = new HashMap<String, Double>();
        rows.forEach(r -> r.forEach((id, x) -> sums.merge(id, x, Double::sum)));
        return formula(sums);
    }

    @Override
    public Double median(Gathering.Median g) {
        var sorted = each().stream().sorted().toList();
        int n = sorted.size();
        return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
    }

    @Override
    public Double fit(Gathering.Fit g) {
        return found(g.of(column(g.xInput()), column(g.yInput())).orElseThrow());
    }

    @Override
    public Double crossing(Gathering.Crossing g) {
        return found(g.of(column(g.xInput()), column(g.yInput())).x());
    }

    @Override
    public Double lowest(Gathering.Lowest g) {
        return found(g.crossings().stream()
                .map(c -> c.of(column(c.xInput()), column(c.yInput())))
                .min(Crossed.ORDER)
                .orElseThrow()
                .x());
    }

    private List<Double> each() {
        return rows.stream().map(this::formula).toList();
    }

    private double formula(Map<String, Double> numbers) {
        return way.computation().of(new Inputs(numbers, definition));
    }

    private double found(double x) {
        return way.computation().of(new Inputs(Map.of(Gathering.FOUND, x), definition));
    }

    private double[] column(String id) {
        return rows.stream().mapToDouble(r -> r.getOrDefault(id, Double.NaN)).toArray();
    }
}
