package comparand.study;

import comparand.metric.Condition;
import comparand.model.RowLog.Count;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts the kept members and rows of a study by centre and device, and at each step. */
final class MemberCounts {

    private static final String ALL_STEPS = "";

    private record Cell(String centre, String device, String step) {}

    private static final class Counted {
        private final Set<Member> members = new HashSet<>();
        private int rows;
    }

    private final StudyRecord study;
    private final SortedMap<Cell, Counted> cells = new TreeMap<>(
            Comparator.comparing(Cell::centre).thenComparing(Cell::device).thenComparing(Cell::step));

    /** Rows of which all of this is the same count in the same places. */
    private record Met(DataFile file, String centre, String device, List<Object> step) {}

    private final Map<Met, List<Counted>> met = new HashMap<>();

    MemberCounts(StudyRecord study) {
        this.study = study;
    }

    /**
     * Counts a row.
     *
     * @param step of the row, by {@link DataFile#step}
     */
    void accept(DataFile file, RowFacts row, List<Object> step) {
        var place = new Met(file, row.centre(), row.deviceId(), step);
        var counting = met.get(place);
        if (counting == null) {
            counting = cellsOf(file, row);
            met.put(place, counting);
        }
        var member = file.member(row);
        for (var counted : counting) {
            counted.members.add(member);
            counted.rows += row.rows();
        }
    }

    /** Where a row counts: among all rows of its device in its centre, and among those at its steps. */
    private List<Counted> cellsOf(DataFile file, RowFacts row) {
        var by = file.mapping().groupedBy();
        var all = counted(row, ALL_STEPS);
        return by.isEmpty()
                ? List.of(all)
                : List.of(
                        all,
                        counted(
                                row,
                                by.stream()
                                        .map(c -> name(file, c.value()) + " " + row.step(c.value()))
                                        .collect(Collectors.joining(", "))));
    }

    private Counted counted(RowFacts row, String step) {
        return cells.computeIfAbsent(new Cell(row.centre(), row.deviceId(), step), c -> new Counted());
    }

    private static String name(DataFile file, String condition) {
        return file.library()
                .catalogue()
                .condition(condition)
                .map(Condition::name)
                .orElse(condition);
    }

    List<Count> counts() {
        var counts = new ArrayList<Count>();
        cells.forEach((cell, counted) -> counts.add(new Count(
                study.id(),
                study.unitOfAnalysis().value().plural(),
                cell.centre,
                cell.device,
                cell.step,
                counted.members.size(),
                counted.rows)));
        return counts;
    }
}
