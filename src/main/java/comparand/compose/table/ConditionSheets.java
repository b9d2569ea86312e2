package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.Comparand;
import comparand.model.ConditionVerdict;
import comparand.model.ConditionVerdict.Mark;
import comparand.model.Pairing;
import java.util.ArrayList;
import java.util.List;

/** The sheets on conditions: every pair condition by condition, and what is not compared. */
final class ConditionSheets {

    private static final int CONDITIONS_ON_PAPER = 11;

    private final Run run;
    private final Cells cells;

    ConditionSheets(Run run) {
        this.run = run;
        this.cells = new Cells(run);
    }

    Table conditions() {
        List<Column> columns = List.of(
                cells.name("col.metric", 22),
                cells.name("col.device", 11),
                cells.text("col.step", 14),
                cells.text("col.against", 17),
                cells.name("col.condition", 26),
                cells.text("col.ours", 22),
                cells.text("col.theirs", 22),
                cells.text("col.tolerance", 17),
                cells.text("col.role", 10),
                cells.text("col.verdict", 14),
                cells.text("col.effect", 22),
                cells.text("col.because", 44),
                cells.text("col.id", 44),
                cells.text("col.their-id", 44));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) -> run.comparisons(metric)
                        .forEach(c -> run.conditions()
                                .said(c.pairing())
                                .forEach(v -> rows.add(condition(metric, c.pairing(), v)))));
        return new Table("Conditions", "", columns, rows, List.of(), CONDITIONS_ON_PAPER);
    }

    private List<Cell> condition(Metric metric, Pairing pairing, ConditionVerdict v) {
        boolean differs = v.mark() == Mark.DIFFERS;
        return List.of(
                cells.metric(metric),
                Cell.words(run.names().brief(pairing.ours().device())),
                cells.step(pairing.ours()),
                Cell.words(cells.against(pairing)),
                Cell.words(v.name()),
                Cell.words(v.ours().isBlank() ? "1" : v.ours()),
                Cell.words(v.theirs().isBlank() ? "1" : v.theirs()),
                v.tolerance().isEmpty() ? cells.none() : Cell.words(v.tolerance()),
                cells.word(v.role() == Role.QUALIFIES ? "role.qualifies" : "role.decides"),
                cells.word("mark." + v.mark().name()),
                differs ? cells.word("effect." + v.effect().name()) : cells.none(),
                differs && !v.because().isBlank() ? Cell.words(v.because()) : cells.none(),
                Cell.verbatim(pairing.ours().id()),
                Cell.verbatim(pairing.theirs().id()));
    }

    Table notComparable() {
        List<Column> columns = List.of(
                cells.name("col.metric", 20),
                cells.name("col.device", 11),
                cells.text("col.step", 15),
                cells.text("col.ours", 14),
                cells.text("col.against", 17),
                cells.text("col.printed", 19),
                cells.number("col.footing", 10),
                cells.text("col.why", 36),
                cells.text("col.effect", 40),
                cells.text("col.would", 38),
                cells.text("col.locator", 21));
        var rows = new ArrayList<List<Cell>>();
        run.questions()
                .forEach((question, metric) -> run.comparisons(metric).stream()
                        .filter(c -> !c.pairing().standing().isCompared())
                        .forEach(c -> rows.add(notCompared(metric, c.pairing()))));
        run.compared().matched().unpaired().forEach(c -> rows.add(unpaired(c)));
        return new Table("NotComparable", "", columns, rows, List.of());
    }

    private List<Cell> notCompared(Metric metric, Pairing pairing) {
        var distortions = run.conditions().distortions(pairing);
        return List.of(
                cells.metric(metric),
                Cell.words(run.names().brief(pairing.ours().device())),
                cells.step(pairing.ours()),
                Cell.words(run.summaries().withUnit(pairing.ours())),
                Cell.words(cells.against(pairing)),
                pairing.theirs().isLocal() ? cells.none() : Cell.words(SummaryText.printed(pairing.theirs())),
                cells.centre(pairing.theirs(), pairing.standing()),
                Cell.words(ConditionLine.upperFirst(run.conditions().why(pairing))),
                distortions.isEmpty() ? cells.word("distortion.open") : Cell.words(String.join(" ", distortions)),
                Cell.words(ConditionLine.upperFirst(run.conditions().toMakeComparable(pairing))),
                Cell.words(run.names().locator(pairing.theirs())));
    }

    private List<Cell> unpaired(Comparand comparand) {
        return List.of(
                cells.metric(comparand.metric()),
                Cell.words(run.names().brief(comparand.device())),
                cells.none(),
                cells.none(),
                Cell.words(comparand
                        .origin()
                        .fold(p -> p.source().id(), l -> l.study().id())),
                Cell.words(SummaryText.printed(comparand)),
                cells.alone(comparand),
                Cell.words(run.unpaired(comparand)),
                cells.none(),
                Cell.words(ConditionLine.upperFirst(run.toPair(comparand))),
                Cell.words(run.names().locator(comparand)));
    }
}
