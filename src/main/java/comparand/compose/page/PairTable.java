package comparand.compose.page;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.exploration.QuestionShown.Columns;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Comparison;
import java.util.List;

/** Every pair of a question in one table: both numbers, difference, answer, standing, and where each number is from. */
final class PairTable {

    /** Where in {@link #table} what changes with the settings stands. */
    static final Columns COLUMNS = new Columns(4, 5, 6, 7, 8);

    private final Run run;
    private final Cells cells;
    private final Ladders ladders;
    private final Metric metric;

    PairTable(Run run, Cells cells, Ladders ladders, Metric metric) {
        this.run = run;
        this.cells = cells;
        this.ladders = ladders;
        this.metric = metric;
    }

    Table table(String id, List<Comparison> comparisons) {
        var columns = List.of(
                cells.name("col.device", 13),
                cells.name("col.step", 13),
                withUnit("col.ours", 18),
                cells.name("col.against", 18),
                withUnit("col.theirs", 18),
                cells.text("col.difference-ci", 21),
                cells.text("col.answer", 46),
                cells.text("col.standing", 14),
                cells.text("col.remarks", 50),
                cells.text("page.static.ours-from", 18),
                cells.text("page.static.theirs-from", 18));
        return new Table(id, "", columns, comparisons.stream().map(this::row).toList(), List.of());
    }

    private Column withUnit(String heading, double width) {
        var unit = metric.unit().isNumber() || metric.nature() == Nature.EVENT
                ? ""
                : " (" + metric.unit().spelling() + ")";
        return new Column(run.words().say(heading) + unit, width, Align.LEFT, false);
    }

    private List<Cell> row(Comparison c) {
        var pairing = c.pairing();
        var notes = run.remarks().notes(c);
        return List.of(
                Cell.words(run.names().brief(pairing.ours().device())),
                cells.step(pairing.ours()),
                Cell.words(cells.brief(pairing.ours())),
                Cell.words(cells.against(pairing)),
                Cell.words(cells.briefBeside(pairing.theirs(), pairing.standing())),
                cells.differenceInWords(c),
                Cell.words(ConditionLine.upperFirst(run.answers().of(c))),
                cells.standing(pairing),
                notes.isEmpty() ? cells.none() : Cell.words(String.join(" ", notes)),
                new Cell.Link(run.names().locator(pairing.ours()), ladders.name(pairing.ours())),
                new Cell.Link(run.names().locatorAndPayer(pairing.theirs()), ladders.name(pairing.theirs())));
    }
}
