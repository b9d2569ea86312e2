package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What a dossier's studies give.
 *
 * @param comparands results that take part: of all centres together, of each centre, counts of events
 * @param series the single results behind them
 * @param setAside results set aside
 * @param log what became of every row
 */
public record LocalResults(List<Comparand> comparands, List<LocalSeries> series, List<SetAside> setAside, RowLog log) {

    public LocalResults {
        comparands = List.copyOf(comparands);
        series = List.copyOf(series);
        setAside = List.copyOf(setAside);
        requireNonNull(log, "log");
    }
}
