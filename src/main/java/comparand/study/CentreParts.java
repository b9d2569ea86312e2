package comparand.study;

import comparand.model.Comparand;
import comparand.model.LocalSeries;
import java.util.List;

/** The results of each centre by itself, where a series comes from several. */
final class CentreParts {

    private CentreParts() {}

    static List<Comparand> of(LocalSeries series) {
        var centres = series.centres();
        return centres.size() < 2
                ? List.of()
                : centres.stream().map(series::ofCentre).toList();
    }
}
