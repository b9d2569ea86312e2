package comparand.compose.brief;

import comparand.compose.text.Run;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.LocalPart;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.library.QuestionRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which results stand in the rows of the questions: of each question the steps at which most devices can be compared. */
final class QuestionRows {

    /** Steps shown of one question. */
    private static final int MOST_STEPS = 2;

    private final Run run;

    QuestionRows(Run run) {
        this.run = run;
    }

    /**
     * A question at a step.
     *
     * @param step in words; empty where nothing sets it apart
     * @param results by device
     * @param pairs of the devices with the present one, by device
     */
    record Row(
            QuestionRecord question,
            Metric metric,
            String step,
            Map<String, Comparand> results,
            Map<String, Comparison> pairs) {}

    List<Row> rows() {
        var rows = new ArrayList<Row>();
        run.questions().forEach((question, metric) -> {
            var steps = steps(question, metric);
            if (steps.isEmpty()) {
                rows.add(alone(question, metric));
            } else {
                rows.addAll(steps);
            }
        });
        return rows;
    }

    private List<Row> steps(QuestionRecord question, Metric metric) {
        var byPresent = new LinkedHashMap<String, Row>();
        for (var c : run.comparisons(metric)) {
            if (Said.isBetweenDevices(c)) {
                var present = c.pairing().theirs();
                var row = byPresent.computeIfAbsent(
                        present.id(),
                        id -> new Row(question, metric, step(present), new LinkedHashMap<>(), new LinkedHashMap<>()));
                row.results.put(present.device(), present);
                // of two results of a device at one step, the one that may be compared
                var device = c.pairing().ours().device();
                var before = row.pairs.get(device);
                if (before == null
                        || (c.pairing().standing().isCompared()
                                && !before.pairing().standing().isCompared())) {
                    row.results.put(device, c.pairing().ours());
                    row.pairs.put(device, c);
                }
            }
        }
        return byPresent.values().stream()
                .sorted(Comparator.comparingLong(QuestionRows::compared).reversed())
                .filter(r -> compared(r) > 0 || byPresent.values().stream().noneMatch(o -> compared(o) > 0))
                .limit(MOST_STEPS)
                .toList();
    }

    private static long compared(Row row) {
        return row.pairs.values().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .count();
    }

    private static String step(Comparand result) {
        return result.origin().fold(p -> "", Origin.Local::group);
    }

    /** A question without any two devices side by side: what there is of each. */
    private Row alone(QuestionRecord question, Metric metric) {
        var results = new LinkedHashMap<String, Comparand>();
        var there = metric.nature() == Nature.STATED
                ? run.compared().matched().evidence().published()
                : run.compared().matched().evidence().localResults();
        there.stream()
                .filter(c -> c.metric().equals(metric) && !c.isLocal(LocalPart.CENTRE))
                .forEach(c -> results.putIfAbsent(c.device(), c));
        return new Row(question, metric, "", results, Map.of());
    }

    /** Events of all devices together. */
    Optional<Comparand> together(Metric metric) {
        return run.compared().matched().evidence().localResults().stream()
                .filter(c -> c.metric().equals(metric) && c.device().equals(Comparand.ALL_DEVICES))
                .findFirst();
    }

    /** What was published of a device and set beside its result at the step of a row. */
    List<Comparison> published(Row row, String device) {
        return run.comparisons(row.metric).stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                .filter(c -> c.pairing().ours().device().equals(device))
                .filter(c -> row.step.isEmpty() || step(c.pairing().ours()).equals(row.step))
                .toList();
    }
}
