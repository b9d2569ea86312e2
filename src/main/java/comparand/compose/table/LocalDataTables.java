package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.RowLogResult;
import comparand.document.result.RowLogResult.FileResult;
import comparand.document.result.RowLogResult.LabelUseResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the local results were made from: units and cases by centre and device, use outside the label, the row log. */
public final class LocalDataTables {

    private final Run run;
    private final RowLogResult log;
    private final Cells cells;

    public LocalDataTables(Run run, RowLogResult log) {
        this.run = run;
        this.log = log;
        this.cells = new Cells(run);
    }

    boolean isEmpty() {
        return log.files().isEmpty();
    }

    /** Units and cases by centre and device, and how many of them were outside the label. */
    public Table counts() {
        return counts(false);
    }

    /** The same with every step. */
    Table countsAtSteps() {
        return counts(true);
    }

    private Table counts(boolean steps) {
        var columns = List.of(
                cells.name("col.study", 30),
                cells.text("col.centre", 26),
                cells.name("col.device", 18),
                cells.text("col.step", 34),
                cells.text("col.counted", 14),
                cells.number("col.members", 12),
                cells.number("col.rows", 12),
                cells.text("col.outside", 50));
        var rows = new ArrayList<List<Cell>>();
        for (var c : log.counts()) {
            if (!steps && !c.step().isEmpty()) {
                continue;
            }
            rows.add(List.of(
                    Cell.verbatim(c.study()),
                    c.centre().isEmpty() ? cells.none() : Cell.words(c.centre()),
                    Cell.words(run.names().device(c.device())),
                    c.step().isEmpty()
                            ? cells.word("rowlog.all-steps")
                            : Cell.words(run.terms().phrases(c.step())),
                    cells.term("level", c.of()),
                    number(c.members()),
                    number(c.rows()),
                    cells.word("rowlog.see-total")));
        }
        log.outsideLabel().forEach(l -> rows.add(outside(l)));
        return new Table("LocalData", "", columns, rows.isEmpty() ? List.of(cells.nothing(8)) : rows, List.of());
    }

    private Cell number(Optional<Integer> count) {
        return count.map(n -> (Cell) run.figures().cell(n, 0, "", ""))
                .orElseGet(() -> Cell.words(run.words()
                        .say("rowlog.few", "limit", String.valueOf(run.dossier().smallestGroup()))));
    }

    private List<Cell> outside(LabelUseResult l) {
        return List.of(
                Cell.verbatim(l.study()),
                cells.word("rowlog.all-centres"),
                Cell.words(run.names().device(l.device())),
                cells.word("rowlog.all-steps"),
                cells.term("level", l.level()),
                run.figures().cell(l.of(), 0, "", ""),
                cells.none(),
                Cell.words(run.words()
                        .say(
                                "rowlog.outside",
                                "outside",
                                String.valueOf(l.outside()),
                                "of",
                                String.valueOf(l.of()),
                                "condition",
                                run.terms().named(l.condition()),
                                "limit",
                                run.terms().quantity(l.limit()))));
    }

    /** What became of the rows, file by file, and of each that is not simply kept. */
    Table rowLog() {
        var columns = List.of(
                cells.name("col.file", 46),
                cells.text("col.line", 10),
                cells.text("col.fate", 12),
                cells.text("col.code", 24),
                cells.text("col.reason", 90));
        var rows = new ArrayList<List<Cell>>();
        log.files().forEach(f -> {
            rows.add(total(f));
            f.notes()
                    .forEach(n -> rows.add(List.of(
                            Cell.verbatim(f.file()),
                            Cell.words(String.valueOf(n.line())),
                            cells.word("fate." + n.fate()),
                            Cell.verbatim(n.code()),
                            Cell.words(ConditionLine.upperFirst(n.reason())))));
        });
        return new Table("RowLog", "", columns, rows.isEmpty() ? List.of(cells.nothing(5)) : rows, List.of());
    }

    private List<Cell> total(FileResult f) {
        return List.of(
                Cell.verbatim(f.file()),
                cells.word("rowlog.all"),
                cells.none(),
                cells.none(),
                Cell.words(run.words()
                        .say(
                                "rowlog.total",
                                "rows",
                                String.valueOf(f.rows()),
                                "kept",
                                String.valueOf(f.kept()),
                                "dropped",
                                String.valueOf(f.dropped()),
                                "held",
                                String.valueOf(f.held()))));
    }
}
