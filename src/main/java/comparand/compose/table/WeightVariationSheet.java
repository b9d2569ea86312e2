package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.WeightsResult;
import comparand.document.result.WeightsResult.VariationResult;
import java.util.ArrayList;
import java.util.List;

/** The totals of the devices by the weights as set and by others, and whether the order stays. */
final class WeightVariationSheet {

    private static final String TABLE = "WeightsVaried";
    private static final int CHANGED = 1;
    private static final int FACTOR = 2;
    private static final int TOTALS = 3;
    private static final int TOTAL_DIGITS = 3;

    private final Run run;
    private final Cells cells;
    private final WeightsResult weights;
    private final int devices;
    private final int metrics;

    WeightVariationSheet(Run run, Cells cells, WeightsResult weights) {
        this.run = run;
        this.cells = cells;
        this.weights = weights;
        this.devices = run.dossier().devices().size();
        this.metrics = weights.metrics().size();
    }

    Table table() {
        var columns = new ArrayList<Column>(List.of(
                cells.name("col.variation", 54), cells.text("col.weight-of", 30), cells.number("col.factor", 9)));
        var names = run.dossier().devices().stream()
                .map(d -> run.names().brief(d.value()))
                .toList();
        names.forEach(n -> columns.add(ofDevice(run.words().say("weights.total-of", "device", n))));
        names.forEach(n -> columns.add(ofDevice(run.words().say("weights.place-of", "device", n))));
        columns.add(cells.text("col.same-order", 16));
        var rows = new ArrayList<List<Cell>>();
        for (int r = 0; r < weights.variations().size(); r++) {
            rows.add(row(weights.variations().get(r), r));
        }
        if (rows.isEmpty()) {
            var row = new ArrayList<>(cells.nothing(columns.size()));
            row.set(0, cells.word("weights.none-counts"));
            rows.add(row);
        }
        return new Table(TABLE, "", columns, rows, List.of());
    }

    private static Column ofDevice(String heading) {
        return new Column(heading, 12, Align.RIGHT, false);
    }

    private List<Cell> row(VariationResult v, int r) {
        var row = new ArrayList<Cell>(List.of(
                Cell.words(v.what()),
                v.metric()
                        .flatMap(m -> run.library().catalogue().find(m))
                        .map(m -> cells.metric(m))
                        .orElseGet(cells::none),
                run.figures().cell(v.factor(), v.factor() == 0.5 ? 1 : 0, "", "")));
        for (int d = 0; d < devices; d++) {
            row.add(total(v, r, d));
        }
        for (int d = 0; d < devices; d++) {
            row.add(place(v, r, d));
        }
        var same = FormulaDraft.of("IF(AND(");
        for (int d = 0; d < devices; d++) {
            same.sign(d == 0 ? "" : ",")
                    .cell(TABLE, r, TOTALS + devices + d)
                    .sign("=")
                    .cell(TABLE, 0, TOTALS + devices + d);
        }
        row.add(same.sign("),")
                .quoted(run.words().say("weights.same-order"))
                .sign(",")
                .quoted(run.words().say("weights.other-order"))
                .sign(")")
                .gives(cells.word(v.sameOrder() ? "weights.same-order" : "weights.other-order"), 0));
        return row;
    }

    /** (All weighted scores and what the changed weight adds) by (all weights and what the change adds). */
    private Cell total(VariationResult v, int r, int device) {
        var draft = FormulaDraft.of("(");
        sum(draft, v, r, WeightSheets.weighted(device, devices));
        draft.sign(")/(");
        sum(draft, v, r, WeightSheets.COUNTED);
        return draft.sign(")")
                .gives(run.figures().cell(v.totals().get(device).total(), TOTAL_DIGITS, "", ""), TOTAL_DIGITS);
    }

    private void sum(FormulaDraft draft, VariationResult v, int r, int column) {
        boolean withoutSmall = v.factor() == 0;
        draft.sign("SUM(")
                .column(WeightSheets.TABLE, metrics, column)
                .sign(")+(")
                .cell(TABLE, r, FACTOR)
                .sign("-1)*SUMIFS(")
                .column(WeightSheets.TABLE, metrics, column)
                .sign(",")
                .column(WeightSheets.TABLE, metrics, withoutSmall ? WeightSheets.NOTE : WeightSheets.METRIC)
                .sign(",");
        if (withoutSmall) {
            draft.quoted(run.words().say("weights.within"));
        } else {
            draft.cell(TABLE, r, CHANGED);
        }
        draft.sign(")");
    }

    private Cell place(VariationResult v, int r, int device) {
        var draft = FormulaDraft.of("1");
        for (int other = 0; other < devices; other++) {
            if (other != device) {
                draft.sign("+(ROUND(")
                        .cell(TABLE, r, TOTALS + other)
                        .sign("-")
                        .cell(TABLE, r, TOTALS + device)
                        .sign(",9)>0)");
            }
        }
        return draft.gives(run.figures().cell(v.totals().get(device).place(), 0, "", ""), 0);
    }
}
