package comparand.compose.brief;

import comparand.metric.Metric;
import comparand.model.Unknown;
import java.util.List;
import java.util.Optional;

/**
 * Unknowns that make one row of the brief: all that is open of one metric between devices, or something by itself.
 *
 * @param rank the lower, the sooner it could change the decision
 * @param metric empty for what no metric tests
 */
record OpenRow(int rank, Optional<Metric> metric, List<Unknown> unknowns) {

    OpenRow {
        unknowns = List.copyOf(unknowns);
    }
}
