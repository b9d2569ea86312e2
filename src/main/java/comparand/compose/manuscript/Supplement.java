package comparand.compose.manuscript;

import comparand.compose.table.ScenarioTables;
import comparand.compose.table.ScreeningTables;
import comparand.compose.table.SharedTables;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ResultSet;
import comparand.model.Comparand;
import comparand.model.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a journal keeps beside the paper: values set aside, the way from print to number, other choices, formulas. */
final class Supplement {

    private final Writing writing;
    private final Run run;
    private final ResultSet results;
    private final Cells cells;
    private final Legends legends;

    Supplement(Writing writing, ResultSet results) {
        this.writing = writing;
        this.run = writing.run();
        this.results = results;
        this.cells = new Cells(run);
        this.legends = new Legends(writing);
    }

    List<Block> tables() {
        var blocks = new ArrayList<Block>();
        results.screening().map(s -> new ScreeningTables(run, cells, s)).ifPresent(t -> {
            blocks.add(legends.complete(Numbering.SEARCHES, say("ms.caption.searches"), t.searches()));
            blocks.add(legends.complete(Numbering.SCREENED, say("ms.caption.screened"), t.leftOut()));
        });
        blocks.add(
                legends.complete(Numbering.ASIDE, say("ms.caption.aside"), new SharedTables(run, results).setAside()));
        blocks.add(legends.complete(Numbering.TRAIL, say("ms.caption.trail"), trail()));
        blocks.add(legends.complete(
                Numbering.SCENARIOS,
                say("ms.caption.scenarios"),
                new ScenarioTables(run, cells, results.scenarios()).changes()));
        blocks.add(legends.complete(Numbering.FORMULAS, say("ms.caption.formulas"), formulas()));
        return blocks;
    }

    private Table trail() {
        var columns = List.of(
                cells.name("col.id", 10),
                cells.text("col.locator", 12),
                cells.text("col.device", 13),
                cells.text("col.metric", 24),
                cells.text("ms.col.steps", 110));
        var rows = run.comparands().stream()
                .filter(c -> !c.isLocal())
                .map(this::steps)
                .toList();
        return new Table("Trail", "", columns, rows.isEmpty() ? List.of(cells.nothing(5)) : rows, List.of());
    }

    private List<Cell> steps(Comparand c) {
        return List.of(
                Cell.verbatim(c.id()),
                Cell.words(run.names().locator(c)),
                Cell.words(run.names().brief(c.device())),
                Cell.words(run.terms().metric(c.metric())),
                Cell.words(String.join(". ", run.trails().of(c))));
    }

    /** Every formula by which a number was made, once. */
    private Table formulas() {
        var columns = List.of(cells.name("ms.col.made", 60), cells.text("ms.col.formula", 80));
        var all = new LinkedHashMap<String, String>();
        for (var c : run.comparands()) {
            c.trail().stream()
                    .filter(s -> !s.formula().isBlank())
                    .forEach(s -> all.putIfAbsent(run.trails().formula(c, s), made(s, c)));
        }
        var rows = all.entrySet().stream().map(this::formula).toList();
        return new Table("Formulas", "", columns, rows.isEmpty() ? List.of(cells.nothing(2)) : rows, List.of());
    }

    private String made(Step step, Comparand c) {
        return step.kind().converts()
                ? say("ms.conversion." + step.kind().name())
                : run.terms().metric(c.metric());
    }

    private List<Cell> formula(Map.Entry<String, String> entry) {
        return List.of(Cell.words(ConditionLine.upperFirst(entry.getValue())), Cell.words(entry.getKey()));
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }
}
