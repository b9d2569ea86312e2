package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.RowSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Collects what is wrong with cells. A fault that runs down a whole column is one finding with a count, not a thousand.
 */
final class CellFaults {

    private record Kind(String column, String code, String fix) {}

    private record Seen(int line, int cell, String message, int count) {}

    private final RowSource rows;
    private final Map<Kind, Seen> seen = new LinkedHashMap<>();

    CellFaults(RowSource rows) {
        this.rows = rows;
    }

    /** A fault in a cell: {@code fix} must not depend on the row, so that rows with one fault fall together. */
    void add(String code, String column, int line, int cell, String message, String fix) {
        seen.merge(
                new Kind(column, code, fix),
                new Seen(line, cell, message, 1),
                (old, next) -> new Seen(old.line, old.cell, old.message, old.count + 1));
    }

    List<Diagnostic> findings() {
        var findings = new ArrayList<Diagnostic>();
        seen.forEach((kind, s) -> findings.add(Diagnostic.stop(
                kind.code,
                rows.place(s.line, s.cell),
                "column `%s`: %s%s"
                        .formatted(
                                kind.column,
                                s.message,
                                s.count > 1 ? "; %d rows look like that".formatted(s.count) : ""),
                "a row read otherwise than meant moves a mean without a word",
                kind.fix)));
        return findings;
    }
}
