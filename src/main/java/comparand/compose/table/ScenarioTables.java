package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
import comparand.document.result.ScenarioResult;
import comparand.document.result.ScenarioResult.ChangeResult;
import comparand.metric.Metric;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What changes under each scenario: a section of the page, and a sheet. */
public final class ScenarioTables {

    /** The columns of the sheet that are printed, one page wide. */
    private static final int ON_PAPER = 6;

    private final Run run;
    private final Cells cells;
    private final List<ScenarioResult> scenarios;

    public ScenarioTables(Run run, Cells cells, List<ScenarioResult> scenarios) {
        this.run = run;
        this.cells = cells;
        this.scenarios = scenarios;
    }

    /** Empty where the dossier has no scenario. */
    public Optional<Section> section() {
        if (scenarios.isEmpty()) {
            return Optional.empty();
        }
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(say("scenario.lead"), Style.BODY));
        for (int i = 0; i < scenarios.size(); i++) {
            var scenario = scenarios.get(i);
            blocks.add(new Heading(ConditionLine.upperFirst(scenario.suppose())));
            blocks.add(new Paragraph(count(scenario), Style.BODY));
            // what is left out is counted here, and listed in the workbook
            var changes = scenario.changes().stream()
                    .filter(c -> c.after().isPresent())
                    .map(this::change)
                    .toList();
            if (!changes.isEmpty()) {
                blocks.add(table("Scenario" + (i + 1), changes));
            }
        }
        return Optional.of(new Section(say("table.scenarios"), say("table.scenarios"), blocks));
    }

    private String count(ScenarioResult scenario) {
        return say(
                scenario.changed() == 0 ? "scenario.none" : "scenario.some",
                "because",
                ConditionLine.upperFirst(scenario.because()),
                "changed",
                String.valueOf(scenario.changed()),
                "of",
                String.valueOf(scenario.pairs()),
                "leftOut",
                scenario.leftOut() == 0 ? "" : say("scenario.fall-away", "n", String.valueOf(scenario.leftOut())));
    }

    private Table table(String id, List<List<Cell>> changes) {
        var columns = List.of(
                cells.name("col.metric", 22),
                cells.name("col.device", 12),
                cells.text("col.against", 22),
                cells.text("col.before", 72),
                cells.text("col.after", 72));
        return new Table(id, "", columns, changes, List.of());
    }

    private List<Cell> change(ChangeResult change) {
        return List.of(
                cells.metric(metric(change)),
                Cell.words(run.names().brief(device(change))),
                Cell.words(change.beside()),
                Cell.words(said(change.shownBefore(), Optional.of(change.before()))),
                Cell.words(said(change.shownAfter(), change.after())));
    }

    /** Every answer that changes, of all scenarios, for a page. */
    public Table changes() {
        var columns = List.of(
                cells.name("col.suppose", 24),
                cells.name("col.metric", 22),
                cells.name("col.device", 12),
                cells.text("col.against", 20),
                cells.text("col.before", 50),
                cells.text("col.after", 50));
        var rows = new ArrayList<List<Cell>>();
        for (var scenario : scenarios) {
            scenario.changes().forEach(change -> {
                var row = new ArrayList<Cell>(List.of(Cell.words(scenario.suppose())));
                row.addAll(change(change));
                rows.add(row);
            });
        }
        return new Table(
                "ScenarioChanges",
                "",
                columns,
                rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows,
                List.of());
    }

    Table sheet() {
        var columns = List.of(
                cells.name("col.suppose", 30),
                cells.name("col.metric", 24),
                cells.name("col.device", 12),
                cells.text("col.against", 22),
                cells.text("col.before", 60),
                cells.text("col.after", 60),
                cells.text("col.reason", 40),
                cells.text("col.id", 44));
        var rows = new ArrayList<List<Cell>>();
        for (var scenario : scenarios) {
            rows.add(List.of(
                    Cell.words(scenario.suppose()),
                    cells.word("scenario.all"),
                    cells.none(),
                    cells.none(),
                    cells.none(),
                    Cell.words(count(scenario)),
                    Cell.words(scenario.because()),
                    cells.none()));
            scenario.changes().forEach(change -> {
                var row = new ArrayList<Cell>(List.of(Cell.words(scenario.suppose())));
                row.addAll(change(change));
                row.add(Cell.words(scenario.because()));
                row.add(Cell.verbatim(change.ours()));
                rows.add(row);
            });
        }
        return new Table(
                "Scenarios",
                "",
                columns,
                rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows,
                List.of(),
                ON_PAPER);
    }

    private String said(Optional<String> shown, Optional<String> sentence) {
        return sentence.map(s -> shown.map(d -> d + ": ").orElse("") + s)
                .map(ConditionLine::upperFirst)
                .orElseGet(() -> say("scenario.left-out"));
    }

    private Metric metric(ChangeResult change) {
        return run.library().catalogue().find(change.metric()).orElseThrow();
    }

    private String device(ChangeResult change) {
        return run.comparand(change.ours()).device();
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
