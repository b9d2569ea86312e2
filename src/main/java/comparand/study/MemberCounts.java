package comparand.study;

import comparand.model.RowLog.Count;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Counts the kept members and rows of a study by centre and device. */
final class MemberCounts {

    private record Cell(String centre, String device) implements Comparable<Cell> {
        @Override
        public int compareTo(Cell other) {
            int byCentre = centre.compareTo(other.centre);
            return byCentre == 0 ? device.compareTo(other.device) : byCentre;
        }
    }

    private static final class Counted {
        private final Set<String> members = new HashSet<>();
        private int rows;
    }

    private final StudyRecord study;
    private final SortedMap<Cell, Counted> cells = new TreeMap<>();

    MemberCounts(StudyRecord study) {
        this.study = study;
    }

    void accept(DataFile file, RowFacts row) {
        var counted = cells.computeIfAbsent(new Cell(row.centre(), row.deviceId()), c -> new Counted());
        counted.members.add(file.member(row));
        counted.rows++;
    }

    List<Count> counts() {
        var counts = new ArrayList<Count>();
        cells.forEach((cell, counted) -> counts.add(new Count(
                study.id(),
                study.unitOfAnalysis().value().plural(),
                cell.centre,
                cell.device,
                counted.members.size(),
                counted.rows)));
        return counts;
    }
}
