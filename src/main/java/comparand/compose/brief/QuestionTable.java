package comparand.compose.brief;

import static comparand.compose.text.ConditionLine.upperFirst;

import comparand.compose.brief.QuestionRows.Row;
import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
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
    private final Map<String, String> marks = new LinkedHashMap<>();

    QuestionTable(Run run, Cells cells) {
        this.run = run;
        this.cells = cells;
        this.rows = new QuestionRows(run);
    }

    List<Block> blocks() {
        var columns = new ArrayList<Column>();
        columns.add(cells.name("col.question", 42));
        columns.add(cells.text("col.margin", 15));
        run.dossier()
                .devices()
                .forEach(d -> columns.add(new Column(run.names().device(d.value()), 25, Align.LEFT, false)));
        columns.add(cells.text("col.standing", 16));
        columns.add(cells.text("col.answer-present", 70));
        var all = rows.rows();
        all.forEach(this::gatherNotes);
        var notes = new ArrayList<Note>();
        marks.forEach((text, mark) -> notes.add(new Note(mark, text)));
        var table = new Table(
                "BriefQuestions", "", columns, all.stream().map(this::row).toList(), notes);
        return List.of(table);
    }

    /** What a reader must know of devices and hospitals is the same for all rows of cases, and is said once. */
    private void gatherNotes(Row row) {
        notes(row).forEach(n -> marks.computeIfAbsent(n, k -> String.valueOf((char) ('a' + marks.size()))));
    }

    private List<String> notes(Row row) {
        return row.pairs().values().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .flatMap(c -> run.remarks().centres().of(c.pairing()).stream())
                .map(n -> n + ".")
                .distinct()
                .toList();
    }

    private List<Cell> row(Row row) {
        var cellsOfRow = new ArrayList<Cell>();
        cellsOfRow.add(Cell.words(row.question().asks().value() + "\n" + metric(row)));
        cellsOfRow.add(row.question()
                .margin()
                .flatMap(m -> m.value().amount())
                .map(a -> Cell.words(run.terms().margin(a.toString())))
                .orElseGet(() -> cells.word("margin.none")));
        for (Located<String> device : run.dossier().devices()) {
            cellsOfRow.add(result(row, device.value()));
        }
        cellsOfRow.add(Cell.words(standing(row)
                + sameSize(row)
                        .map(n -> "\n" + run.words().say("brief.each", "n", n))
                        .orElse("")));
        cellsOfRow.add(Cell.words(
                answer(row),
                notes(row).stream().map(n -> String.valueOf(marks.get(n))).collect(Collectors.joining(", "))));
        return cellsOfRow;
    }

    private String metric(Row row) {
        var unit = row.metric().unit().spelling();
        // the margin beside it has the unit
        boolean bare = unit.isEmpty()
                || row.question().margin().flatMap(m -> m.value().amount()).isPresent();
        var named = bare ? run.terms().metric(row.metric()) : run.terms().metric(row.metric()) + ", " + unit;
        return row.step().isEmpty()
                ? named
                : named + run.words().say("at", "step", run.terms().group(row.step()));
    }

    /** How many stand behind every result of a row, if it is the same number. */
    private Optional<String> sameSize(Row row) {
        var sizes = row.results().values().stream()
                .map(r -> r.isLocal() && !(r.summary() instanceof Summary.Events)
                        ? r.sizes().independent().map(run.terms()::size).orElse("")
                        : "")
                .distinct()
                .toList();
        return sizes.size() == 1 && row.results().size() > 1 && !sizes.get(0).isEmpty()
                ? Optional.of(sizes.get(0))
                : Optional.empty();
    }

    private Cell result(Row row, String device) {
        var lines = new ArrayList<String>();
        var result = row.results().get(device);
        lines.add(result == null ? run.words().say("brief.no-result") : own(row, result, standing(row, device)));
        var published = rows.published(row, device);
        if (!published.isEmpty()) {
            var shown = published.stream()
                    .limit(MOST_PUBLISHED)
                    .map(c -> run.summaries()
                                    .beside(c.pairing().theirs(), c.pairing().standing())
                            + " ("
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
    private String own(Row row, Comparand result, Standing standing) {
        if (result.summary() instanceof Summary.Events events) {
            return share(events);
        }
        if (!result.isLocal()) {
            return run.summaries().of(result) + "\u00a0(" + run.names().locator(result) + ")";
        }
        var brackets = SummaryText.brackets(standing);
        var n = sameSize(row).isPresent()
                ? ""
                : result.sizes()
                        .independent()
                        .map(s -> "; " + run.terms().size(s))
                        .orElse("");
        return interval(result)
                .map(i -> {
                    double mean = result.summary().centre().orElseThrow();
                    int decimals = run.figures().of(result, mean);
                    return brackets.before() + run.figures().number(mean, decimals) + " ("
                            + run.figures().range(i, decimals) + ")" + brackets.after() + n;
                })
                .orElseGet(() -> run.summaries().beside(result, standing) + n);
    }

    /** {@code 0 of 12 (up to 26 %)}; the answer of the row says it in a sentence. */
    private String share(Summary.Events events) {
        var interval = ProportionInterval.EXACT.of(events.events(), events.of(), Answer.LEVEL);
        return run.words()
                .say(
                        events.events() == 0 ? "brief.share-none" : "brief.share",
                        "events",
                        String.valueOf(events.events()),
                        "of",
                        String.valueOf(events.of()),
                        "low",
                        run.figures().percent(interval.low()),
                        "high",
                        run.figures().percent(interval.high()));
    }

    private static Optional<Interval> interval(Comparand result) {
        if (result.summary() instanceof Summary.Sampled s) {
            return Optional.of(s.estimate().interval(Answer.LEVEL));
        }
        return result.summary() instanceof Summary.Estimated e
                ? Optional.of(e.estimate().interval(Answer.LEVEL))
                : Optional.empty();
    }

    /** One word for all where it is one, else one for each device in the order of the columns. */
    private String standing(Row row) {
        var byDevice = new LinkedHashMap<String, String>();
        row.pairs()
                .forEach((device, c) -> byDevice.put(
                        run.names().brief(device),
                        run.words().say("map." + c.pairing().standing().name())));
        if (byDevice.isEmpty()) {
            return run.words().say("not-applicable");
        }
        var words = byDevice.values().stream().distinct().toList();
        return words.size() == 1 ? upperFirst(words.get(0)) : upperFirst(String.join("; ", byDevice.values()));
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
        // one sentence for devices of which the same is said
        var bySaid = new LinkedHashMap<String, List<String>>();
        row.pairs()
                .forEach((device, c) -> bySaid.computeIfAbsent(run.answers().of(c), s -> new ArrayList<>())
                        .add(named(device, c)));
        return bySaid.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + ": " + e.getKey())
                .collect(Collectors.joining(". "));
    }

    /** The device with its difference, if there is one. */
    private String named(String device, Comparison c) {
        var metric = c.pairing().ours().metric();
        var difference = AnswerText.tested(c.answer())
                .map(t -> run.figures().difference(metric, t))
                .or(() -> c.answer() instanceof Answer.Nominal nominal
                        ? Optional.of(run.figures()
                                .withDifferenceUnit(
                                        run.figures()
                                                .signed(
                                                        nominal.difference(),
                                                        run.figures()
                                                                .of(c.pairing().ours(), nominal.difference())),
                                        metric))
                        : Optional.empty());
        return run.names().brief(device) + difference.map(d -> " " + d).orElse("");
    }
}
