package comparand.compose.brief;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Cell.Words.Frame;
import comparand.document.result.ComparabilityResult;
import comparand.metric.Metric;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What may be compared with something published, metric by metric and device by device: in words, which frames repeat. */
final class ComparabilityMap {

    private static final String TABLE = "BriefComparability";
    private static final int MOST_ACROSS = 12;

    private final Run run;
    private final Cells cells;
    private final List<ComparabilityResult> map;

    ComparabilityMap(Run run, Cells cells, List<ComparabilityResult> map) {
        this.run = run;
        this.cells = cells;
        this.map = map;
    }

    /** Few metrics stand side by side, which saves room; many stand one below the other. */
    List<Block> blocks() {
        var metrics = run.questions().values().stream().filter(m -> !isEmpty(m)).toList();
        var empty = run.questions().values().stream()
                .filter(this::isEmpty)
                .map(run.terms()::metric)
                .collect(Collectors.joining(", "));
        var blocks = new ArrayList<Block>();
        if (!metrics.isEmpty()) {
            blocks.add(metrics.size() <= MOST_ACROSS ? across(metrics) : down(metrics));
        }
        if (!empty.isEmpty()) {
            blocks.add(Brief.small(run.words().say("committee.map-empty", "metrics", empty)));
        }
        return blocks;
    }

    /** A metric of which no source says anything for any device is named in one line. */
    private boolean isEmpty(Metric metric) {
        return map.stream().filter(c -> c.metric().equals(metric.id())).allMatch(c -> c.sources() == 0);
    }

    private Table across(List<Metric> metrics) {
        var columns = new ArrayList<Column>();
        columns.add(cells.name("col.device", 9));
        metrics.forEach(m -> columns.add(new Column(run.terms().metric(m), 12, Align.LEFT, false)));
        var rows = new ArrayList<List<Cell>>();
        for (var device : run.dossier().devices()) {
            var row = new ArrayList<Cell>();
            row.add(Cell.words(run.names().brief(device.value())));
            metrics.forEach(m -> map.stream()
                    .filter(c -> c.device().equals(device.value()) && c.metric().equals(m.id()))
                    .forEach(c -> row.add(cell(c))));
            rows.add(row);
        }
        return new Table(TABLE, "", columns, rows, List.of());
    }

    private Table down(List<Metric> metrics) {
        var columns = new ArrayList<Column>();
        columns.add(cells.name("col.metric", 50));
        run.dossier()
                .devices()
                .forEach(d -> columns.add(new Column(run.names().device(d.value()), 30, Align.LEFT, false)));
        return new Table(TABLE, "", columns, metrics.stream().map(this::row).toList(), List.of());
    }

    private List<Cell> row(Metric metric) {
        var row = new ArrayList<Cell>();
        row.add(cells.metric(metric));
        map.stream().filter(c -> c.metric().equals(metric.id())).forEach(c -> row.add(cell(c)));
        return row;
    }

    private Cell cell(ComparabilityResult c) {
        var text = c.sources() == 0
                ? c.word()
                : run.words()
                        .say(
                                "map.count",
                                "word",
                                c.word(),
                                "n",
                                String.valueOf(c.reaching()),
                                "of",
                                String.valueOf(c.sources()));
        return Cell.framed(text, frame(c.standing()));
    }

    private static Frame frame(String standing) {
        return switch (standing) {
            case "same" -> Frame.SOLID;
            case "same-after-conversion" -> Frame.DOUBLE;
            case "not-reported" -> Frame.DOTTED;
            case "no-data" -> Frame.NONE;
            default -> Frame.DASHED;
        };
    }
}
