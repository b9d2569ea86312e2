package comparand.study;

import comparand.metric.Condition;
import comparand.model.RowLog.Count;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts the kept members and rows of a study by centre and device, and at each step. */
final class MemberCounts {

    private static final String ALL_STEPS = "";

    private record Cell(String centre, String device, String step) {}

    private static final class Counted {
        private final Set<String> members = new HashSet<>();
        private int rows;
    }

    private final StudyRecord study;
    private final SortedMap<Cell, Counted> cells = new TreeMap<>(
            Comparator.comparing(Cell::centre).thenComparing(Cell::device).thenComparing(Cell::step));

    MemberCounts(StudyRecord study) {
        this.study = study;
    }

    void accept(DataFile file, RowFacts row) {
        count(ALL_STEPS, file, row);
        if (!file.mapping().groupedBy().isEmpty()) {
            count(
                    file.mapping().groupedBy().stream()
                            .map(by -> name(file, by.value()) + " " + row.step(by.value()))
                            .collect(Collectors.joining(", ")),
                    file,
                    row);
        }
    }

    private void count(String step, DataFile file, RowFacts row) {
        var counted = cells.computeIfAbsent(new Cell(row.centre(), row.deviceId(), step), c -> new Counted());
        counted.members.add(file.member(row));
        counted.rows += row.rows();
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
