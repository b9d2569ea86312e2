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

    private record Seen(int line, int cell, String message, Lines lines) {}

    private final RowSource rows;
    private final Map<Kind, Seen> seen = new LinkedHashMap<>();

    CellFaults(RowSource rows) {
        this.rows = rows;
    }

    /** A fault in a cell: {@code fix} must not depend on the row, so that rows with one fault fall together. */
    void add(String code, String column, int line, int cell, String message, String fix) {
        seen.computeIfAbsent(new Kind(column, code, fix), k -> new Seen(line, cell, message, new Lines()))
                .lines
                .add(line);
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
                                s.lines.count() > 1
                                        ? "; %d rows look like that, %s".formatted(s.lines.count(), s.lines)
                                        : ""),
                "a row read otherwise than meant moves a mean without a word",
                kind.fix)));
        return findings;
    }
}
