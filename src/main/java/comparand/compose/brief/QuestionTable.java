package comparand.compose.brief;

import static comparand.compose.text.ConditionLine.upperFirst;

import comparand.compose.brief.QuestionRows.Row;
import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.Figures;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Standing;
import comparand.model.Summary;
import comparand.stat.Interval;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The questions in the committee's words, one a row, with the results of each device and the answer. */
final class QuestionTable {

    /** Published values shown of one device in one row. */
    private static final int MOST_PUBLISHED = 2;

    private final Run run;
    private final Cells cells;
    private final QuestionRows rows;

    QuestionTable(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
        this.rows = new QuestionRows(run);
    }

    List<Block> blocks() {
        var columns = new ArrayList<Column>();
        columns.add(cells.name("col.question", 27));
        columns.add(cells.text("col.margin", 10));
        run.dossier()
                .devices()
                .forEach(d -> columns.add(new Column(run.names().device(d.value()), 20, Align.LEFT, false)));
        columns.add(cells.text("col.standing", 13));
        columns.add(cells.text("col.answer-present", 45));
        var table = new Table(
                "BriefQuestions",
                "",
                columns,
                rows.rows().stream().map(this::row).toList(),
                List.of());
        return List.of(Brief.small(run.words().say("brief.questions-lead")), table);
    }

    private List<Cell> row(Row row) {
        var cellsOfRow = new ArrayList<Cell>();
        cellsOfRow.add(Cell.words(row.question().asks().value() + "\n" + metric(row)));
        cellsOfRow.add(row.question()
                .margin()
                .flatMap(m -> m.value().amount())
                .map(a -> Cell.words(a.toString().replace(' ', '\u00a0')))
                .orElseGet(() -> cells.word("margin.none")));
        for (Located<String> device : run.dossier().devices()) {
            cellsOfRow.add(result(row, device.value()));
        }
        cellsOfRow.add(Cell.words(standing(row)));
        cellsOfRow.add(Cell.words(answer(row)));
        return cellsOfRow;
    }

    private String metric(Row row) {
        var unit = row.metric().unit().spelling();
        var named = unit.isEmpty() ? row.metric().name() : row.metric().name() + ", " + unit;
        return row.step().isEmpty() ? named : named + run.words().say("at", "step", row.step());
    }

    private Cell result(Row row, String device) {
        var lines = new ArrayList<String>();
        var result = row.results().get(device);
        lines.add(result == null ? run.words().say("brief.no-result") : own(result, standing(row, device)));
        var published = rows.published(row, device);
        if (!published.isEmpty()) {
            var shown = published.stream()
                    .limit(MOST_PUBLISHED)
                    .map(c -> run.summaries()
                                    .beside(c.pairing().theirs(), c.pairing().standing())
                            + "\u00a0("
                            + run.names().locator(c.pairing().theirs())
                            + ")")
                    .collect(Collectors.joining("; "));
            lines.add(run.words()
                    .say(
                            published.size() > MOST_PUBLISHED ? "brief.published-more" : "brief.published",
                            "values",
                            shown));
        }
        return Cell.words(String.join("\n", lines));
    }

    private static Standing standing(Row row, String device) {
        return Optional.ofNullable(row.pairs().get(device))
                .map(c -> c.pairing().standing())
                .orElse(Standing.SAME);
    }

    /** The mean with its interval and number, in the brackets of its standing; a stated figure with its place. */
    private String own(Comparand result, Standing standing) {
        if (result.summary() instanceof Summary.Events events) {
            return run.answers()
                    .events(events, ProportionInterval.EXACT.of(events.events(), events.of(), Answer.LEVEL));
        }
        if (!result.isLocal()) {
            return run.summaries().of(result) + "\u00a0(" + run.names().locator(result) + ")";
        }
        var brackets = SummaryText.brackets(standing);
        var n = result.sizes().independent().map(s -> "; " + s).orElse("");
        return interval(result)
                .map(i -> {
                    double mean = result.summary().centre().orElseThrow();
                    int decimals = run.figures().of(result, mean);
                    return brackets.before() + run.figures().number(mean, decimals) + " ("
                            + run.figures().range(i, decimals) + ")" + brackets.after() + n;
                })
                .orElseGet(() -> run.summaries().beside(result, standing) + n);
    }

    private static Optional<Interval> interval(Comparand result) {
        if (result.summary() instanceof Summary.Sampled s) {
            return Optional.of(s.estimate().interval(Answer.LEVEL));
        }
        return result.summary() instanceof Summary.Estimated e
                ? Optional.of(e.estimate().interval(Answer.LEVEL))
                : Optional.empty();
    }

    /** One word for all where it is one, else device by device. */
    private String standing(Row row) {
        var byDevice = new LinkedHashMap<String, String>();
        row.pairs()
                .forEach((device, c) -> byDevice.put(
                        run.names().brief(device),
                        run.words().say("standing." + c.pairing().standing().name())));
        if (byDevice.isEmpty()) {
            return run.words().say("not-applicable");
        }
        var words = byDevice.values().stream().distinct().toList();
        return words.size() == 1
                ? words.get(0)
                : byDevice.entrySet().stream()
                        .map(e -> e.getKey() + ": " + e.getValue())
                        .collect(Collectors.joining("\n"));
    }

    private String answer(Row row) {
        var together = rows.together(row.metric())
                .filter(c -> c.summary() instanceof Summary.Events)
                .map(c -> (Summary.Events) c.summary());
        if (together.isPresent()) {
            var events = together.get();
            return run.words().say("all-devices") + ": "
                    + run.answers()
                            .events(events, ProportionInterval.EXACT.of(events.events(), events.of(), Answer.LEVEL));
        }
        if (row.pairs().isEmpty()) {
            return run.words().say("brief.no-pair");
        }
        return row.pairs().entrySet().stream().map(this::answer).collect(Collectors.joining("\n"));
    }

    private String answer(Map.Entry<String, Comparison> entry) {
        var c = entry.getValue();
        var answer = run.answers().of(c);
        if (c.answer() instanceof Answer.EventCounts) {
            return upperFirst(answer);
        }
        var metric = c.pairing().ours().metric();
        var difference = AnswerText.tested(c.answer())
                .map(t -> run.figures().difference(metric, t))
                .or(() -> c.answer() instanceof Answer.Nominal nominal
                        ? Optional.of(Figures.withDifferenceUnit(
                                run.figures()
                                        .signed(
                                                nominal.difference(),
                                                run.figures().of(c.pairing().ours(), nominal.difference())),
                                metric))
                        : Optional.empty());
        var text = run.names().brief(entry.getKey()) + " "
                + difference.map(d -> d + ": " + answer).orElse(answer);
        var apart = run.remarks().centres().of(c.pairing());
        return apart.map(a -> text + ". " + a).orElse(text);
    }
}
