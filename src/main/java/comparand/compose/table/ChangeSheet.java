package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ChangesResult;
import java.util.ArrayList;
import java.util.List;

/** What changed since the report before this one. */
final class ChangeSheet {

    private ChangeSheet() {}

    static Table table(Run run, Cells cells, ChangesResult changes) {
        var columns = List.of(
                cells.text("col.on", 12),
                cells.name("col.what", 46),
                cells.text("col.stood", 30),
                cells.text("col.stands", 30),
                cells.text("col.cause", 40),
                cells.text("col.affected", 70));
        var rows = new ArrayList<List<Cell>>();
        changes.changes()
                .forEach(c -> rows.add(List.of(
                        Cell.words(c.on()),
                        Cell.words(c.what()),
                        Cell.words(c.before()),
                        Cell.words(c.after()),
                        Cell.words(c.cause()),
                        Cell.words(c.answers()))));
        if (rows.isEmpty()) {
            var row = new ArrayList<>(cells.nothing(columns.size()));
            row.set(
                    1,
                    Cell.words(changes.since()
                            .map(d -> run.words().say("changes.nothing", "since", d))
                            .orElseGet(() -> run.words().say("changes.no-since"))));
            rows.add(row);
        }
        return new Table("Changes", "", columns, rows, List.of());
    }
}
