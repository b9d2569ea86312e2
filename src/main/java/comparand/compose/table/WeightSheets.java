package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Figures;
import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.WeightsResult;
import comparand.document.result.WeightsResult.WeightedMetricResult;
import comparand.metric.Metric;
import comparand.model.Margin;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Weights with the scores of each device: a weight or a result may be changed, and all that rests on it follows. */
final class WeightSheets {

    static final String TABLE = "Weights";
    static final int METRIC = 0;
    static final int COUNTED = 5;
    static final int NOTE = 8;
    private static final int WEIGHT = 4;
    private static final int RANGE = 6;
    private static final int MARGIN = 7;
    private static final int RESULTS = 9;
    private static final int SCORE_DIGITS = 3;

    private final Run run;
    private final Cells cells;
    private final WeightsResult weights;
    private final List<String> devices;

    WeightSheets(Run run, Cells cells, WeightsResult weights) {
        this.run = run;
        this.cells = cells;
        this.weights = weights;
        this.devices = run.dossier().devices().stream().map(Located::value).toList();
    }

    /** The column with weight times score of a device. */
    static int weighted(int device, int devices) {
        return RESULTS + 2 * devices + device;
    }

    private int score(int device) {
        return RESULTS + devices.size() + device;
    }

    Table scores() {
        var columns = new ArrayList<Column>(List.of(
                cells.name("col.metric", 26),
                cells.text("col.unit", 10),
                cells.text("col.better", 12),
                cells.text("col.step", 10),
                cells.number("col.weight", 9),
                cells.number("col.counted-weight", 9),
                cells.number("col.best-worst", 9),
                cells.number("col.margin", 9),
                cells.text("col.range-margin", 14)));
        devices.forEach(d -> columns.add(ofDevice(
                run.words().say("weights.result-of", "device", run.names().brief(d)))));
        devices.forEach(d -> columns.add(ofDevice(
                run.words().say("weights.score-of", "device", run.names().brief(d)))));
        devices.forEach(d -> columns.add(ofDevice(
                run.words().say("weights.weighted-of", "device", run.names().brief(d)))));
        columns.add(cells.text("col.why", 30));
        var rows = new ArrayList<List<Cell>>();
        for (int r = 0; r < weights.metrics().size(); r++) {
            rows.add(row(weights.metrics().get(r), r));
        }
        return new Table(TABLE, "", columns, rows, List.of());
    }

    private static Column ofDevice(String heading) {
        return new Column(heading, 11, Align.RIGHT, false);
    }

    private List<Cell> row(WeightedMetricResult m, int r) {
        var metric = run.library().catalogue().find(m.metric()).orElseThrow();
        var row = new ArrayList<Cell>(List.of(
                cells.metric(metric),
                cells.unit(metric),
                cells.word(m.better().equals("less") ? "favourable.LESS" : "favourable.MORE"),
                m.step().isEmpty() ? cells.none() : Cell.words(run.terms().group(m.step())),
                run.figures().cell(m.weight(), decimals(m), "", ""),
                counted(m, r)));
        row.addAll(range(m, metric, r));
        for (int d = 0; d < devices.size(); d++) {
            int at = d;
            row.add(
                    m.counts()
                            ? run.figures()
                                    .cell(
                                            m.scores().get(at).result(),
                                            resultDecimals(m.scores().get(at).value()),
                                            "",
                                            "")
                            : notScored());
        }
        for (int d = 0; d < devices.size(); d++) {
            row.add(m.counts() ? scored(m, r, d) : notScored());
        }
        for (int d = 0; d < devices.size(); d++) {
            row.add(FormulaDraft.of("IF(ISNUMBER(")
                    .cell(TABLE, r, score(d))
                    .sign("),")
                    .cell(TABLE, r, WEIGHT)
                    .sign("*")
                    .cell(TABLE, r, score(d))
                    .sign(",0)")
                    .gives(
                            run.figures().cell(m.counts() ? m.scores().get(d).weighted() : 0, SCORE_DIGITS, "", ""),
                            SCORE_DIGITS));
        }
        row.add(m.why().isEmpty() ? cells.none() : Cell.words(m.why()));
        return row;
    }

    private Cell notScored() {
        return cells.word("weights.not-scored");
    }

    private Cell counted(WeightedMetricResult m, int r) {
        return FormulaDraft.of("IF(ISNUMBER(")
                .cell(TABLE, r, score(0))
                .sign("),")
                .cell(TABLE, r, WEIGHT)
                .sign(",0)")
                .gives(run.figures().cell(m.counts() ? m.weight() : 0, decimals(m), "", ""), decimals(m));
    }

    /** Best minus worst, the margin, and which of the two is larger. */
    private List<Cell> range(WeightedMetricResult m, Metric metric, int r) {
        var margin = margin(metric);
        if (m.range().isEmpty()) {
            return List.of(
                    notScored(),
                    margin.map(x -> cell(x.value())).orElseGet(() -> cells.word("margin.none")),
                    cells.none());
        }
        int decimals = Rounding.decimalsFor(m.range().get(), 2);
        return List.of(
                FormulaDraft.of("MAX(")
                        .cells(TABLE, r, RESULTS, devices.size())
                        .sign(")-MIN(")
                        .cells(TABLE, r, RESULTS, devices.size())
                        .sign(")")
                        .gives(run.figures().cell(m.range().get(), decimals, "", ""), decimals),
                margin.map(x -> cell(x.value())).orElseGet(() -> cells.word("margin.none")),
                margin.isEmpty()
                        ? cells.none()
                        : FormulaDraft.of("IF(")
                                .cell(TABLE, r, RANGE)
                                .sign("<")
                                .cell(TABLE, r, MARGIN)
                                .sign(",")
                                .quoted(run.words().say("weights.within"))
                                .sign(",")
                                .quoted(run.words().say("weights.beyond"))
                                .sign(")")
                                .gives(
                                        cells.word(
                                                m.withinMargin().orElse(false) ? "weights.within" : "weights.beyond"),
                                        0));
    }

    private Cell cell(double margin) {
        return run.figures().cell(margin, Figures.asSet(margin), "", "");
    }

    private Optional<Margin> margin(Metric metric) {
        return run.comparisons(metric).stream()
                .flatMap(c -> c.margin().stream())
                .findFirst();
    }

    private Cell scored(WeightedMetricResult m, int r, int device) {
        boolean less = m.better().equals("less");
        var draft = FormulaDraft.of("IF(MAX(")
                .cells(TABLE, r, RESULTS, devices.size())
                .sign(")=MIN(")
                .cells(TABLE, r, RESULTS, devices.size())
                .sign("),1,(");
        if (less) {
            draft.sign("MAX(")
                    .cells(TABLE, r, RESULTS, devices.size())
                    .sign(")-")
                    .cell(TABLE, r, RESULTS + device);
        } else {
            draft.cell(TABLE, r, RESULTS + device)
                    .sign("-MIN(")
                    .cells(TABLE, r, RESULTS, devices.size())
                    .sign(")");
        }
        return draft.sign(")/(MAX(")
                .cells(TABLE, r, RESULTS, devices.size())
                .sign(")-MIN(")
                .cells(TABLE, r, RESULTS, devices.size())
                .sign(")))")
                .gives(run.figures().cell(m.scores().get(device).score(), SCORE_DIGITS, "", ""), SCORE_DIGITS);
    }

    private int resultDecimals(String value) {
        var result = run.comparand(value);
        return result.summary().centre().isPresent()
                ? run.figures().of(result, result.summary().centre().getAsDouble())
                : SCORE_DIGITS;
    }

    private int decimals(WeightedMetricResult m) {
        return run.dossier().weights().stream()
                .flatMap(w -> w.of().stream())
                .filter(w -> w.metric().value().equals(m.metric()))
                .mapToInt(w -> w.weight().value().decimals())
                .max()
                .orElse(0);
    }
}
