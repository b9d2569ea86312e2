package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.metric.Definition;
import comparand.metric.Metric;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What one file has to do with one metric: how its rows give it, and how many of them do. */
final class FileShare {

    private final Located<String> asked;
    private final Way way;
    private final Definition usual;
    private final Map<Place, GroupDraft> groups = new HashMap<>();
    private int rows;
    private int lacking;
    private int excluded;

    /**
     * No row yet.
     *
     * @param asked where the file's mapping asks for the metric
     * @param usual the definition its own results follow
     */
    FileShare(Located<String> asked, Way way, Definition usual) {
        this.asked = asked;
        this.way = way;
        this.usual = usual;
    }

    /** All that decides which group a row belongs to. */
    private record Place(Optional<String> device, List<Object> step, Definition definition) {}

    /**
     * The group a row belongs to; worked out once for all rows of one place.
     *
     * @param step of the row, by {@link DataFile#step}
     * @param unknown works out the group of a place that was not met yet
     */
    GroupDraft group(RowFacts row, List<Object> step, Function<RowFacts, GroupDraft> unknown) {
        var place = new Place(row.device(), step, row.definition());
        var group = groups.get(place);
        if (group == null) {
            group = unknown.apply(row);
            groups.put(place, group);
        }
        return group;
    }

    Located<String> asked() {
        return asked;
    }

    Way way() {
        return way;
    }

    Definition usual() {
        return usual;
    }

    /** A row that the metric may see. */
    void seen() {
        rows++;
    }

    /** A row that was seen and has no value. */
    void lacks() {
        lacking++;
    }

    /** A row that the metric may not see. */
    void kept() {
        excluded++;
    }

    int excluded() {
        return excluded;
    }

    /** All rows that might have given the metric. */
    int all() {
        return rows + excluded;
    }

    Optional<Diagnostic> lacking(Metric metric, DataFile file) {
        return lacking == 0
                ? Optional.empty()
                : Optional.of(Diagnostic.note(
                        "rows-without-value",
                        asked.span(),
                        "`%s` could not be computed for %d of %d rows of `%s`: a cell is empty or marked missing"
                                .formatted(metric.id(), lacking, rows, file.name()),
                        "fewer results than rows take part",
                        "nothing to mend if the values were never taken"));
    }
}
