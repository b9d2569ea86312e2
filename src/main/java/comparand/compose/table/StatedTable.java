package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Notes;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import java.util.ArrayList;
import java.util.List;

/** Figures that labels state, on one footing, each beside that of the present device. */
final class StatedTable {

    private final Run run;
    private final Cells cells;
    private final Metric metric;

    StatedTable(Run run, Cells cells, Metric metric) {
        this.run = run;
        this.cells = cells;
        this.metric = metric;
    }

    Table table(List<Comparison> comparisons) {
        var columns = List.of(
                cells.name("col.device", 16),
                cells.text("col.printed", 26),
                cells.text("col.steps", 44),
                cells.text("col.footing", 14),
                cells.text("col.parts", 30),
                cells.text("col.difference", 14),
                cells.text("col.answer", 44),
                cells.text("col.locator", 10));
        var notes = new Notes();
        var rows = new ArrayList<List<Cell>>();
        comparisons.stream()
                .map(c -> c.pairing().theirs())
                .distinct()
                .forEach(p -> rows.add(statedRow(p, cells.none(), cells.none())));
        for (var c : comparisons) {
            var marks = notes.marks(run.remarks().notes(c));
            rows.add(statedRow(
                    c.pairing().ours(),
                    cells.differenceInWords(c),
                    Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks)));
        }
        return new Table("Stated" + metric.id().replace("-", ""), "", columns, rows, notes.list());
    }

    private List<Cell> statedRow(Comparand c, Cell difference, Cell answer) {
        var steps = c.trail().stream()
                .filter(s -> s.kind().converts())
                .map(run.trails()::of)
                .toList();
        var covers = c.metric().definition().stream()
                .flatMap(a -> c.definition().get(a.id()).map(a::text).map(run.terms()::variant).stream())
                .toList();
        return List.of(
                Cell.words(run.names().brief(c.device())),
                Cell.words(SummaryText.printed(c)),
                steps.isEmpty() ? cells.word("none") : Cell.words(String.join("; ", steps)),
                Cell.words(run.summaries().withUnit(c)),
                covers.isEmpty() ? cells.none() : Cell.words(String.join("; ", covers)),
                difference,
                answer,
                Cell.words(run.names().locatorAndPayer(c)));
    }
}
