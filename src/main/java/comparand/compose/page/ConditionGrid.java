package comparand.compose.page;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Role;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every pair of a question against every condition: what was found, with both sides. */
final class ConditionGrid {

    /** Columns that name the pair. */
    static final int FIRST = 3;

    private static final double WIDTH = 20;

    private final Run run;
    private final Cells cells;
    private final List<Comparison> comparisons;
    /** The heading of each column, by what it is about. */
    private final Map<String, String> headings = new LinkedHashMap<>();

    ConditionGrid(Run run, Cells cells, List<Comparison> comparisons) {
        this.run = run;
        this.cells = cells;
        this.comparisons = comparisons;
        comparisons.forEach(c -> run.conditions()
                .said(c.pairing())
                .forEach(v -> headings.putIfAbsent(
                        v.id(), v.tolerance().isEmpty() ? v.name() : v.name() + " (" + v.tolerance() + ")")));
    }

    /** What the columns behind {@link #FIRST} are about. */
    List<String> columns() {
        return List.copyOf(headings.keySet());
    }

    Table table(String id) {
        var columns = new ArrayList<Column>(
                List.of(cells.name("col.device", 14), cells.name("col.step", 14), cells.name("col.against", 18)));
        headings.values().forEach(h -> columns.add(new Column(h, WIDTH, Align.LEFT, false)));
        return new Table(id, "", columns, comparisons.stream().map(this::row).toList(), List.of());
    }

    private List<Cell> row(Comparison c) {
        var row = new ArrayList<Cell>(List.of(
                Cell.words(run.names().brief(c.pairing().ours().device())),
                cells.step(c.pairing().ours()),
                Cell.words(cells.against(c.pairing()))));
        var verdicts = new LinkedHashMap<String, ConditionVerdict>();
        run.conditions().said(c.pairing()).forEach(v -> verdicts.putIfAbsent(v.id(), v));
        headings.keySet().forEach(id -> row.add(verdicts.containsKey(id) ? shown(verdicts.get(id)) : cells.none()));
        return row;
    }

    /** The mark with both sides, or the one they share; in brackets where it is not held against the comparison. */
    private static Cell shown(ConditionVerdict v) {
        var sides = v.ours().equals(v.theirs()) ? v.ours() : v.ours() + " | " + v.theirs();
        var text = v.mark().sign() + " " + (sides.isBlank() ? "1" : sides);
        return Cell.words(v.role() == Role.QUALIFIES ? "(" + text + ")" : text);
    }
}
