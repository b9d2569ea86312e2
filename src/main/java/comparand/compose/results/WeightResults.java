package comparand.compose.results;

import static java.util.Objects.requireNonNull;

import comparand.compose.text.Kebab;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.WeightsResult;
import comparand.document.result.WeightsResult.ScoreResult;
import comparand.document.result.WeightsResult.WeightedMetricResult;
import comparand.metric.Better;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Summary;
import comparand.model.library.QuestionRecord;
import comparand.model.library.WeightRecord;
import comparand.model.library.WeightsRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Scores by the weights of a dossier. A metric counts only if every device has a result that may be compared with the one of
 * the present device at one and the same step; of several such steps the first is taken. A score is the position of the
 * result between the worst device (0) and the best (1) in the favourable direction, 1 for all where they are the same.
 */
final class WeightResults {

    private final Run run;

    WeightResults(Run run) {
        this.run = run;
    }

    Optional<WeightsResult> of() {
        return run.dossier().weights().map(this::weighed);
    }

    private WeightsResult weighed(WeightsRecord weights) {
        var metrics = weights.of().stream().map(this::metric).toList();
        return new WeightsResult(
                weights.setBy().map(Located::value).orElseThrow(),
                weights.on().value().toString(),
                run.words().say("committee.scores"),
                metrics,
                new WeightVariations(run, metrics).all());
    }

    private WeightedMetricResult metric(WeightRecord weight) {
        var entry = run.questions().entrySet().stream()
                .filter(e -> e.getValue().id().equals(weight.metric().value()))
                .findFirst()
                .orElseThrow();
        var metric = entry.getValue();
        var better = run.better(entry.getKey(), metric);
        var step = steps(metric).values().stream()
                .filter(results -> results.keySet()
                        .containsAll(run.dossier().devices().stream()
                                .map(Located::value)
                                .toList()))
                .findFirst();
        double w = weight.weight().value().toDouble();
        return step.map(results -> counted(entry.getKey(), metric, w, better, results))
                .orElseGet(() -> new WeightedMetricResult(
                        metric.id(),
                        w,
                        false,
                        "",
                        Kebab.of(better),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        run.words().say("weights.not-all", "devices", String.join(", ", missing(metric)))));
    }

    /** By the result of the present device, in the order of comparisons: the results that may be compared with it. */
    private Map<String, Map<String, Comparand>> steps(Metric metric) {
        var steps = new LinkedHashMap<String, Map<String, Comparand>>();
        for (var comparison : run.comparisons(metric)) {
            if (isBetweenDevices(comparison) && comparison.pairing().standing().isCompared()) {
                var ours = comparison.pairing().ours();
                var present = comparison.pairing().theirs();
                var step = steps.computeIfAbsent(present.id(), id -> new LinkedHashMap<>());
                put(present, step);
                put(ours, step);
            }
        }
        return steps;
    }

    private static void put(Comparand result, Map<String, Comparand> step) {
        if (value(result).isPresent()) {
            step.putIfAbsent(result.device(), result);
        }
    }

    private static boolean isBetweenDevices(Comparison comparison) {
        var purpose = comparison.pairing().purpose();
        return purpose == Purpose.AGAINST_PRESENT_DEVICE || purpose == Purpose.STATED_AGAINST_PRESENT_DEVICE;
    }

    /** The number a result is scored by: its mean or figure, or the share of events. */
    private static Optional<Double> value(Comparand result) {
        if (result.summary() instanceof Summary.Events events) {
            return Optional.of(events.events() / (double) events.of());
        }
        var centre = result.summary().centre();
        return centre.isPresent() ? Optional.of(centre.getAsDouble()) : Optional.empty();
    }

    private WeightedMetricResult counted(
            QuestionRecord question, Metric metric, double weight, Better better, Map<String, Comparand> results) {
        double least = results.values().stream()
                .mapToDouble(r -> value(r).orElseThrow())
                .min()
                .orElseThrow();
        double most = results.values().stream()
                .mapToDouble(r -> value(r).orElseThrow())
                .max()
                .orElseThrow();
        double worst = better == Better.LESS ? most : least;
        double best = better == Better.LESS ? least : most;
        var scores = new ArrayList<ScoreResult>();
        for (var device : run.dossier().devices()) {
            var result = requireNonNull(results.get(device.value()));
            double value = value(result).orElseThrow();
            double score = best == worst ? 1 : Math.abs(value - worst) / Math.abs(best - worst);
            scores.add(new ScoreResult(device.value(), result.id(), value, score, weight * score));
        }
        var step = results.values().iterator().next().origin().fold(p -> "", Origin.Local::group);
        return new WeightedMetricResult(
                metric.id(),
                weight,
                true,
                step,
                Kebab.of(better),
                Optional.of(most - least),
                question.margin()
                        .flatMap(m -> m.value().amount())
                        .map(m -> most - least < m.asDifferenceIn(metric.unit())),
                scores,
                "");
    }

    /** Devices without a result that may be compared, at the step where there are most. */
    private List<String> missing(Metric metric) {
        var there = steps(metric).values().stream()
                .map(Map::keySet)
                .reduce((a, b) -> b.size() > a.size() ? b : a)
                .orElseGet(TreeSet::new);
        return run.dossier().devices().stream()
                .map(Located::value)
                .filter(d -> !there.contains(d))
                .map(run.names()::device)
                .toList();
    }
}
