package comparand.compose.page;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.exploration.QuestionShown.Summary;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Pairing.Purpose;
import comparand.model.library.QuestionRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Every question on one line, with what is answered: beside the device in use today, and beside what was published. */
final class QuestionList {

    static final String TABLE = "Questions";

    private static final int MARGIN = 1;
    private static final int PRESENT = 2;
    private static final int PUBLISHED = 3;
    private static final Set<Purpose> BESIDE_PRESENT =
            Set.of(Purpose.AGAINST_PRESENT_DEVICE, Purpose.STATED_AGAINST_PRESENT_DEVICE);

    private final Run run;
    private final Cells cells;

    QuestionList(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
    }

    /** Where the answers of a question are summed up. */
    static Summary summary(int row) {
        return new Summary(TABLE, row, MARGIN, PRESENT, PUBLISHED);
    }

    Table table() {
        var columns = List.of(
                cells.name("col.question", 34),
                cells.text("col.margin", 14),
                cells.text("page.static.beside-present", 70),
                cells.text("page.static.beside-published", 70));
        var rows = new ArrayList<List<Cell>>();
        run.questions().forEach((question, metric) -> rows.add(row(question, metric)));
        return new Table(TABLE, "", columns, rows, List.of());
    }

    private List<Cell> row(QuestionRecord question, Metric metric) {
        var comparisons = run.comparisons(metric);
        return List.of(
                new Cell.Link(question.asks().value(), QuestionPart.name(metric)),
                question.margin()
                        .flatMap(m -> m.value().amount())
                        .map(a -> Cell.words(run.terms().margin(a.toString())))
                        .orElseGet(() -> cells.word("margin.none")),
                lines(comparisons.stream()
                        .filter(c -> BESIDE_PRESENT.contains(c.pairing().purpose()))
                        .toList()),
                lines(comparisons.stream()
                        .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                        .toList()));
    }

    /** What is compared, each on a line; then how many are not. */
    private Cell lines(List<Comparison> comparisons) {
        var lines = new ArrayList<String>();
        comparisons.stream().filter(c -> c.pairing().standing().isCompared()).forEach(c -> lines.add(line(c)));
        int apart = comparisons.size() - lines.size();
        if (apart > 0) {
            lines.add(run.words().say("page.static.apart", "n", String.valueOf(apart)));
        }
        return lines.isEmpty() ? cells.none() : Cell.words(String.join("\n", lines));
    }

    private String line(Comparison c) {
        var pairing = c.pairing();
        var locator = run.names()
                .locator(pairing.purpose() == Purpose.AGAINST_PRESENT_DEVICE ? pairing.ours() : pairing.theirs());
        if (c.answer() instanceof Answer.EventCounts) {
            // such an answer names both sides
            return run.words()
                    .say(
                            "page.static.line.events",
                            "answer",
                            ConditionLine.upperFirst(run.answers().of(c)),
                            "locator",
                            locator);
        }
        var step = cells.step(pairing.ours());
        var device = run.names().brief(pairing.ours().device());
        var at = step.equals(cells.none()) ? "" : run.words().say("page.static.at", "step", step.shown());
        var answer = run.answers().brief(c);
        return cells.difference(pairing, c.answer())
                .map(d -> run.words()
                        .say(
                                "page.static.line.tested",
                                "device",
                                device,
                                "at",
                                at,
                                "difference",
                                d,
                                "answer",
                                answer,
                                "locator",
                                locator))
                .orElseGet(() -> run.words()
                        .say("page.static.line", "device", device, "at", at, "answer", answer, "locator", locator));
    }
}
