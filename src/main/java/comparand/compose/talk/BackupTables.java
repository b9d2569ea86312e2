package comparand.compose.talk;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ResultSet;
import comparand.document.result.RowLogResult.CountResult;
import java.util.ArrayList;
import java.util.List;

/** Tables of backup slides about the whole run. */
final class BackupTables {

    private final Run run;
    private final ResultSet results;
    private final Cells cells;

    BackupTables(Run run, ResultSet results) {
        this.run = run;
        this.results = results;
        this.cells = new Cells(run);
    }

    /** Units and cases by device and hospital; small groups of patients stay hidden. */
    Table counts() {
        var rows = results.rowLog().counts().stream()
                .filter(c -> c.step().isEmpty())
                .map(c -> List.<Cell>of(
                        Cell.words(run.names().device(c.device())),
                        c.centre().isEmpty() ? cells.none() : Cell.words(c.centre()),
                        Cell.words(c.study()),
                        Cell.words(members(c))))
                .toList();
        return table(
                "Counts",
                "talk.title.hospitals",
                List.of(
                        cells.name("col.device", 22),
                        cells.text("col.centre", 30),
                        cells.text("col.study", 26),
                        cells.text("col.members", 16)),
                rows);
    }

    private String members(CountResult c) {
        return c.members()
                        .map(String::valueOf)
                        .orElseGet(() -> say(
                                "rowlog.few",
                                "limit",
                                String.valueOf(run.dossier().smallestGroup())))
                + " " + run.words().term("level", c.of());
    }

    Table scenarios() {
        var rows = new ArrayList<List<Cell>>();
        for (var s : results.scenarios()) {
            var changes = s.changes().stream()
                    .map(c -> ConditionLine.upperFirst(metric(c.metric())) + ", " + c.beside() + ": "
                            + c.after().orElseGet(() -> say("scenario.left-out")))
                    .toList();
            rows.add(List.of(
                    Cell.words(ConditionLine.upperFirst(s.suppose())),
                    Cell.words(changes.isEmpty() ? say("none") : String.join("; ", changes))));
        }
        return table(
                "Scenarios",
                "talk.title.scenarios",
                List.of(cells.name("col.suppose", 28), cells.text("talk.col.changed", 72)),
                rows);
    }

    private String metric(String id) {
        return run.library().catalogue().find(id).map(run.terms()::metric).orElse(id);
    }

    /** The first way to settle each; the evidence table has all of them, with what they assume. */
    Table unknowns() {
        var rows = results.unknowns().stream()
                .map(u -> List.<Cell>of(
                        Cell.words(u.device()),
                        Cell.words(u.what()),
                        Cell.words(
                                u.settles().isEmpty()
                                        ? say("none")
                                        : u.settles().get(0)),
                        Cell.words(u.who())))
                .toList();
        return table(
                "Unknowns",
                "talk.title.unknowns",
                List.of(
                        cells.name("col.device", 14),
                        cells.text("col.unknown", 36),
                        cells.text("col.settles", 42),
                        cells.text("col.who", 18)),
                rows);
    }

    Table methods() {
        var rows = List.<List<Cell>>of(
                item("talk.methods.order", say("talk.methods.order.how")),
                item(
                        "talk.methods.margin",
                        say(
                                "talk.methods.margin.how",
                                "fixed",
                                run.dossier().fixed().value().toString())),
                item("talk.methods.alike", say("talk.methods.alike.how")),
                item("talk.methods.unit", say("talk.methods.unit.how")),
                item("talk.methods.interval", say("talk.methods.interval.how")),
                item("talk.methods.figure", say("talk.methods.figure.how")),
                item("talk.methods.many", say("talk.methods.many.how", "m", String.valueOf(run.familySize()))));
        return table(
                "Methods", "talk.title.methods", List.of(cells.name("col.topic", 20), cells.text("col.how", 80)), rows);
    }

    private List<Cell> item(String topic, String how) {
        return List.of(cells.word(topic), Cell.words(how));
    }

    Table references() {
        var rows = results.sources().stream()
                .map(s -> List.<Cell>of(
                        run.figures().cell(s.number(), 0, "", ""),
                        Cell.words(s.reference()),
                        cells.term("source-kind", s.kind().replace('-', ' ')),
                        cells.term("funding", s.funding()),
                        cells.term("source-state", s.state())))
                .toList();
        return table(
                "References",
                "talk.title.references",
                List.of(
                        cells.name("col.number", 7),
                        cells.text("col.reference", 56),
                        cells.text("col.kind", 17),
                        cells.text("col.funding", 14),
                        cells.text("col.status", 14)),
                rows);
    }

    Table setAside() {
        var rows = results.setAside().stream()
                .map(a -> List.<Cell>of(
                        Cell.words(run.names().brief(a.device()) + "; " + a.locator()),
                        Cell.words(ConditionLine.upperFirst(metric(a.metric()))),
                        Cell.words(a.printed()),
                        Cell.words(a.words())))
                .toList();
        return table(
                "Aside",
                "talk.title.aside",
                List.of(
                        cells.name("col.device", 20),
                        cells.text("col.metric", 24),
                        cells.text("col.printed", 18),
                        cells.text("col.reason", 40)),
                rows);
    }

    Table cautions() {
        var rows = new ArrayList<List<Cell>>();
        for (var caution : results.cautions()) {
            rows.add(List.of(Cell.words(caution)));
        }
        return table("Cautions", "talk.title.cautions", List.of(cells.text("about.caution", 100)), rows);
    }

    private Table table(String id, String title, List<Column> columns, List<List<Cell>> rows) {
        return new Table(
                id, say(title), columns, rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows, List.of());
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
