package comparand.compose.brief;

import comparand.compose.text.Run;
import comparand.metric.Metric;
import comparand.model.Unknown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** What is not known, gathered into rows and ranked for a reader with little time. What is to be asked stands elsewhere. */
final class OpenRows {

    private record Key(int rank, String subject) {}

    private OpenRows() {}

    /**
     * First what is open between devices and has a margin; then what was not measured and has one; then what no metric
     * tests; then both without a margin; last what is open against published values.
     */
    static List<OpenRow> of(Run run) {
        var groups = new LinkedHashMap<Key, List<Unknown>>();
        for (var unknown : run.compared().unknowns()) {
            rank(unknown)
                    .ifPresent(rank -> groups.computeIfAbsent(
                                    new Key(
                                            rank,
                                            metric(unknown).map(Metric::id).orElseGet(unknown::id)),
                                    k -> new ArrayList<>())
                            .add(unknown));
        }
        return groups.entrySet().stream()
                .map(e -> new OpenRow(e.getKey().rank(), metric(e.getValue().get(0)), e.getValue()))
                .sorted(Comparator.comparingInt(OpenRow::rank))
                .toList();
    }

    private static Optional<Integer> rank(Unknown unknown) {
        if (unknown instanceof Unknown.Open open) {
            boolean margin = open.comparison().margin().isPresent();
            return switch (open.comparison().pairing().purpose()) {
                case LOCAL_AGAINST_PUBLISHED -> Optional.of(5);
                case WITHIN_CENTRE -> Optional.empty();
                case AGAINST_PRESENT_DEVICE, STATED_AGAINST_PRESENT_DEVICE -> Optional.of(margin ? 0 : 3);
            };
        }
        if (unknown instanceof Unknown.Unmeasured unmeasured) {
            return Optional.of(unmeasured.margin().isPresent() ? 1 : 4);
        }
        return unknown instanceof Unknown.Declared ? Optional.of(2) : Optional.empty();
    }

    private static Optional<Metric> metric(Unknown unknown) {
        if (unknown instanceof Unknown.Open open) {
            return Optional.of(open.comparison().pairing().ours().metric());
        }
        return unknown instanceof Unknown.Unmeasured unmeasured ? Optional.of(unmeasured.metric()) : Optional.empty();
    }
}
