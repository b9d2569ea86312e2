package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.WeightsResult.TotalResult;
import comparand.document.result.WeightsResult.VariationResult;
import comparand.document.result.WeightsResult.WeightedMetricResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The totals with the weights as set, with each of them halved and doubled, and with some metrics left out. */
final class WeightVariations {

    /** Totals that differ by less than this share a place: it is the noise of the sums. */
    private static final double SAME = 1e-9;

    private final Run run;
    private final List<WeightedMetricResult> counted;
    private final List<VariationResult> all = new ArrayList<>();

    WeightVariations(Run run, List<WeightedMetricResult> metrics) {
        this.run = run;
        this.counted = metrics.stream().filter(WeightedMetricResult::counts).toList();
    }

    List<VariationResult> all() {
        if (counted.isEmpty()) {
            return List.of();
        }
        add(run.words().say("weights.as-set"), Optional.empty(), 1, WeightedMetricResult::weight);
        for (var metric : counted) {
            var name = run.terms()
                    .metric(run.library().catalogue().find(metric.metric()).orElseThrow());
            add(run.words().say("weights.halved", "metric", name), metric, 0.5);
            add(run.words().say("weights.doubled", "metric", name), metric, 2);
        }
        if (counted.stream().anyMatch(this::isSmall) && !counted.stream().allMatch(this::isSmall)) {
            add(run.words().say("weights.without-small"), Optional.empty(), 0, m -> isSmall(m) ? 0 : m.weight());
        }
        add(run.words().say("weights.without-unlike"), Optional.empty(), 1, WeightedMetricResult::weight);
        return List.copyOf(all);
    }

    private boolean isSmall(WeightedMetricResult metric) {
        return metric.withinMargin().orElse(false);
    }

    private void add(String what, WeightedMetricResult changed, double factor) {
        add(
                what,
                Optional.of(changed.metric()),
                factor,
                m -> m.metric().equals(changed.metric()) ? factor * m.weight() : m.weight());
    }

    private void add(
            String what, Optional<String> metric, double factor, ToDoubleFunction<WeightedMetricResult> weight) {
        var totals = totals(weight);
        var before = all.isEmpty() ? totals : all.get(0).totals();
        all.add(new VariationResult(what, metric, factor, totals, places(totals).equals(places(before))));
    }

    private static List<Integer> places(List<TotalResult> totals) {
        return totals.stream().map(TotalResult::place).toList();
    }

    private List<TotalResult> totals(ToDoubleFunction<WeightedMetricResult> weight) {
        double sum = counted.stream().mapToDouble(weight).sum();
        Map<String, Double> totals = new LinkedHashMap<>();
        var devices = run.dossier().devices().stream().map(Located::value).toList();
        for (int d = 0; d < devices.size(); d++) {
            int at = d;
            totals.put(
                    devices.get(d),
                    counted.stream()
                                    .mapToDouble(m -> weight.applyAsDouble(m)
                                            * m.scores().get(at).score())
                                    .sum()
                            / sum);
        }
        return totals.entrySet().stream()
                .map(e -> new TotalResult(
                        e.getKey(),
                        e.getValue(),
                        1
                                + (int) totals.values().stream()
                                        .filter(other -> other - e.getValue() > SAME)
                                        .count()))
                .toList();
    }
}
