package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import java.util.ArrayList;
import java.util.List;

/** The questions of a dossier. */
final class QuestionSheet {

    private final Run run;
    private final Cells cells;

    QuestionSheet(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
    }

    /** What was asked, and the margins that were set before the comparison. */
    Table table() {
        var columns = List.of(
                cells.name("col.question", 50),
                cells.text("col.metric", 30),
                cells.text("col.unit", 10),
                cells.text("col.margin", 14),
                cells.text("col.reason", 60),
                cells.text("col.better", 12),
                cells.text("col.fixed", 12));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) -> rows.add(List.of(
                        Cell.words(question.asks().value()),
                        cells.metric(metric),
                        cells.unit(metric),
                        question.margin()
                                .flatMap(m -> m.value().amount())
                                .map(a -> Cell.words(run.terms().quantity(a.toString())))
                                .orElseGet(() -> cells.word("margin.none")),
                        question.reason().map(r -> Cell.words(r.value())).orElseGet(cells::none),
                        cells.word("favourable." + run.better(question, metric).name()),
                        new Cell.Day(run.dossier().fixed().value()))));
        return new Table("Questions", "", columns, rows, List.of());
    }
}
