package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.SourcesTogether;
import comparand.model.SourcesTogether.Several;
import comparand.model.SourcesTogether.Two;
import comparand.stat.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tables of what several sources say together: short for the page, with every number for the sheet. */
public final class TogetherTables {

    /** Columns that only a pool fills. */
    private static final int POOLED = 9;

    private final Run run;
    private final Cells cells;

    public TogetherTables(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
    }

    /** Of one metric, for the page; empty where no two sources can be put together. */
    public Optional<Table> of(Metric metric, String id) {
        var rows = run.compared().together().stream()
                .filter(t -> t.ours().metric().equals(metric))
                .map(this::brief)
                .toList();
        var columns = List.of(
                cells.name("col.device", 12),
                cells.text("col.local", 22),
                cells.text("col.sources", 26),
                cells.text("col.pooled-mean", 22),
                cells.text("col.expected", 20),
                cells.text("col.difference-ci", 22),
                cells.text("col.answer", 84));
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table(id, "", columns, rows, List.of()));
    }

    private List<Cell> brief(SourcesTogether together) {
        var several = together.fold(two -> Optional.<Several>empty(), Optional::of);
        return List.of(
                Cell.words(run.names().brief(together.ours().device())),
                Cell.words(cells.brief(together.ours())),
                Cell.words(sources(together)),
                several.map(s -> Cell.words(run.together().mean(s))).orElseGet(cells::none),
                several.map(s -> Cell.words(run.together().expected(s))).orElseGet(cells::none),
                several.map(s -> Cell.words(run.together().difference(s))).orElseGet(cells::none),
                Cell.words(sentences(together)));
    }

    /** All of them, for the sheet. */
    Table sheet() {
        var columns = List.of(
                cells.name("col.metric", 26),
                cells.text("col.unit", 12),
                cells.name("col.device", 12),
                cells.text("col.sources", 30),
                cells.number("col.k", 9),
                cells.number("col.pooled", 10),
                cells.number("col.pooled-low", 10),
                cells.number("col.pooled-high", 10),
                cells.number("col.tau", 10),
                cells.number("col.tau-low", 10),
                cells.number("col.tau-high", 10),
                cells.number("col.i2", 10),
                cells.number("col.expected-low", 10),
                cells.number("col.expected-high", 10),
                cells.number("col.difference", 10),
                cells.number("col.difference-low", 10),
                cells.number("col.difference-high", 10),
                cells.text("col.answer", 80),
                cells.text("col.id", 44));
        var rows = new ArrayList<List<Cell>>();
        run.compared().together().forEach(t -> rows.add(row(t)));
        return new Table(
                "Together", "", columns, rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows, List.of());
    }

    private List<Cell> row(SourcesTogether together) {
        var row = new ArrayList<Cell>(List.of(
                cells.metric(together.ours().metric()),
                cells.unit(together.ours().metric()),
                Cell.words(run.names().brief(together.ours().device())),
                Cell.words(sources(together)),
                number(together.each().size(), 0)));
        row.addAll(together.fold(this::apart, this::pooled));
        row.add(Cell.words(sentences(together)));
        row.add(Cell.verbatim(together.ours().id()));
        return row;
    }

    /** Of two, what sets them apart stands where the difference from the mean of sources would. */
    private List<Cell> apart(Two two) {
        return Stream.concat(
                        Stream.generate(cells::none).limit(POOLED),
                        difference(two, two.apart().value(), two.apart().interval(Answer.LEVEL)))
                .toList();
    }

    private List<Cell> pooled(Several several) {
        int decimals = run.together().decimals(several);
        var pool = several.pool();
        var tau2 = pool.tau2Interval(Answer.LEVEL);
        var against = several.againstMean();
        return Stream.of(
                        Stream.of(number(pool.mean().mean(), decimals)),
                        range(pool.mean().interval(Answer.LEVEL), decimals),
                        Stream.of(number(Math.sqrt(pool.random().tau2()), decimals)),
                        range(new Interval(Math.sqrt(tau2.low()), Math.sqrt(tau2.high())), decimals),
                        Stream.of(number(pool.common().i2(), 2)),
                        range(several.expected(), decimals),
                        difference(several, against.difference().value(), against.interval()))
                .flatMap(c -> c)
                .toList();
    }

    private Stream<Cell> difference(SourcesTogether together, double value, Interval interval) {
        var metric = together.ours().metric();
        return Stream.of(
                cells.difference(metric, value, Optional.of(interval), 0),
                cells.limitOfDifference(metric, interval, true),
                cells.limitOfDifference(metric, interval, false));
    }

    private Stream<Cell> range(Interval interval, int decimals) {
        return Stream.of(number(interval.low(), decimals), number(interval.high(), decimals));
    }

    private Cell number(double value, int decimals) {
        return run.figures().cell(value, decimals, "", "");
    }

    private String sources(SourcesTogether together) {
        return together.each().stream().map(run.together()::locator).collect(Collectors.joining(", "));
    }

    private String sentences(SourcesTogether together) {
        return String.join(". ", run.together().of(together));
    }
}
