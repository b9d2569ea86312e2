package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ComparandResult;
import comparand.document.result.LineResult;
import comparand.document.result.LineResult.LinePointResult;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;

/** The straight lines through cases or units, as a figure needs them: the line and its interval, and no single case. */
final class LineTable {

    private static final int DIGITS = 2;

    private final Run run;
    private final List<ComparandResult> comparands;
    private final Cells cells;

    LineTable(Run run, List<ComparandResult> comparands) {
        this.run = run;
        this.comparands = comparands;
        this.cells = new Cells(run);
    }

    Table table() {
        var columns = List.of(
                cells.name("col.device", 14),
                cells.text("col.along", 50),
                cells.number("col.at", 12),
                cells.text("col.fitted-of", 40),
                cells.number("col.fitted", 12),
                cells.number("col.fitted-low", 12),
                cells.number("col.fitted-high", 12),
                cells.text("col.id", 60));
        var rows = new ArrayList<List<Cell>>();
        for (var c : comparands) {
            c.summary().line().ifPresent(line -> line.points().forEach(point -> rows.add(row(c, line, point))));
        }
        return new Table(
                "Lines", "", columns, rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows, List.of());
    }

    private List<Cell> row(ComparandResult c, LineResult line, LinePointResult point) {
        double apart = line.points().get(1).at() - line.points().get(0).at();
        int decimals = Rounding.decimalsFor((point.high() - point.low()) / 2, DIGITS);
        return List.of(
                Cell.words(run.names().brief(c.device())),
                Cell.words(withUnit(run.terms().named(line.along()), line.alongUnit())),
                figure(point.at(), Rounding.decimalsFor(apart, DIGITS)),
                Cell.words(withUnit(run.terms().named(line.of()), line.ofUnit())),
                figure(point.mean(), decimals),
                figure(point.low(), decimals),
                figure(point.high(), decimals),
                Cell.verbatim(c.id()));
    }

    private Cell figure(double value, int decimals) {
        return run.figures().cell(value, decimals, "", "");
    }

    private static String withUnit(String what, String unit) {
        return unit.equals("1") ? what : what + ", " + unit;
    }
}
