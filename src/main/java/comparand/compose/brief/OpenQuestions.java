package comparand.compose.brief;

import static comparand.compose.text.ConditionLine.upperFirst;

import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.Figures;
import comparand.compose.text.Run;
import comparand.compose.text.UnknownText;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.RequestResult;
import comparand.document.result.RequestResult.ItemResult;
import comparand.document.result.RequestResult.WantedResult;
import comparand.document.result.ResultSet;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Margin;
import comparand.model.Origin;
import comparand.model.Unknown;
import comparand.model.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is not known, what a trial should still measure, and what is to be asked of whom. */
final class OpenQuestions {

    private static final int MOST = 9;
    private static final int MOST_MEASURED = 6;
    private static final int MOST_ASKED = 8;

    private final Run run;
    private final Cells cells;
    private final ResultSet results;
    private final UnknownText text;
    private final TrialSizes sizes;
    private final List<OpenRow> rows;

    OpenQuestions(Run run, Cells cells, ResultSet results) {
        this.run = run;
        this.cells = cells;
        this.results = results;
        this.text = new UnknownText(run);
        this.sizes = new TrialSizes(run);
        this.rows = OpenRows.of(run);
    }

    List<Block> notKnown() {
        if (rows.isEmpty()) {
            return List.of(new Paragraph(say("gaps.none"), Style.BODY));
        }
        var columns = List.of(
                cells.name("col.unknown", 52),
                cells.text("col.device", 14),
                cells.text("col.matters", 30),
                cells.text("col.settles", 38),
                cells.text("col.who", 20));
        var table = new Table(
                "BriefUnknown",
                "",
                columns,
                rows.stream().limit(MOST).map(this::row).toList(),
                List.of());
        return List.of(table, Brief.small(say("brief.more-unknowns")));
    }

    private List<Cell> row(OpenRow row) {
        var first = row.unknowns().get(0);
        var said = text.of(first);
        if (first instanceof Unknown.Declared) {
            return List.of(
                    Cell.words(said.what()),
                    Cell.words(said.device()),
                    Cell.words(said.matters()),
                    Cell.words(String.join(" ", said.settles())),
                    Cell.words(said.who()));
        }
        var metric = row.metric().orElseThrow();
        return List.of(
                Cell.words(upperFirst(metric.name()) + ": " + what(row)),
                Cell.words(devices(row)),
                Cell.words(matters(first)),
                Cell.words(sizes.of(row).orElseGet(() -> String.join(" ", said.settles()))),
                Cell.words(said.who()));
    }

    private String what(OpenRow row) {
        return row.unknowns().stream().map(this::what).distinct().collect(Collectors.joining("; "));
    }

    private String what(Unknown unknown) {
        if (!(unknown instanceof Unknown.Open open)) {
            return say("brief.unmeasured");
        }
        var c = open.comparison();
        var tested = tested(c.answer());
        var verdict = tested.map(t -> t.verdict() == Verdict.NOT_SETTLED
                        ? say("unknown.not-settled")
                        : run.answers().verdict(t, c))
                .orElseGet(() -> run.answers().of(c));
        var step = c.pairing().ours().origin().fold(p -> "", Origin.Local::group);
        return run.names().brief(c.pairing().ours().device()) + (step.isEmpty() ? "" : say("at", "step", step)) + " "
                + verdict;
    }

    private static Optional<Answer.Tested> tested(Answer answer) {
        return answer instanceof Answer.EitherReading e ? Optional.of(e.asSe()) : AnswerText.tested(answer);
    }

    private String devices(OpenRow row) {
        return row.unknowns().stream()
                .map(u -> u instanceof Unknown.Open open
                        ? open.comparison().pairing().ours().device()
                        : ((Unknown.Unmeasured) u).device())
                .distinct()
                .map(run.names()::brief)
                .collect(Collectors.joining(", "));
    }

    private String matters(Unknown unknown) {
        var margin = unknown instanceof Unknown.Open open
                ? open.comparison().margin()
                : ((Unknown.Unmeasured) unknown).margin();
        return margin.map(this::matters).orElseGet(() -> say("brief.no-margin"));
    }

    private String matters(Margin margin) {
        return say("brief.margin", "margin", margin.text().replace(' ', '\u00a0'), "reason", margin.reason());
    }

    /** Each metric that is open, with what it takes and what must be held alike. */
    List<Block> trial() {
        var byMetric = new LinkedHashMap<Metric, OpenRow>();
        rows.stream()
                .filter(r -> r.rank() < 2)
                .forEach(r -> r.metric().ifPresent(m -> byMetric.putIfAbsent(m, r)));
        var blocks = new ArrayList<Block>();
        byMetric.entrySet().stream()
                .limit(MOST_MEASURED)
                .forEach(e -> blocks.add(new Paragraph(measure(e.getKey(), e.getValue()), Style.POINT)));
        blocks.add(Brief.small(say(blocks.isEmpty() ? "brief.trial-none" : "brief.trial-all")));
        return blocks;
    }

    private String measure(Metric metric, OpenRow row) {
        var hold = metric.conditions().stream()
                .filter(use -> use.role().asksForReport())
                .map(use -> use.condition().name())
                .collect(Collectors.joining(", "));
        var present = run.names().brief(run.dossier().presentDevice().value());
        return say(
                hold.isEmpty() ? "brief.measure-free" : "brief.measure",
                "metric",
                upperFirst(metric.name()),
                "devices",
                devices(row) + ", " + present,
                "size",
                sizes.of(row).orElseGet(() -> say("brief.size-open")),
                "conditions",
                hold);
    }

    /** One row for each recipient of a letter. */
    List<Block> toAsk() {
        if (results.requests().isEmpty()) {
            return List.of(new Paragraph(say("brief.ask-none"), Style.BODY));
        }
        var columns = List.of(cells.name("col.to", 24), cells.text("col.asked", 126));
        var rowsOfTable = results.requests().stream()
                .limit(MOST_ASKED)
                .map(r -> List.of(Cell.words(r.to()), Cell.words(asked(r))))
                .toList();
        return List.of(
                new Table("BriefToAsk", "", columns, rowsOfTable, List.of()), Brief.small(say("brief.ask-letters")));
    }

    /** What is wanted, each once, with all values of which it is. */
    private String asked(RequestResult request) {
        Map<String, List<String>> byWanted = new LinkedHashMap<>();
        for (ItemResult item : request.items()) {
            var wanted = item.wanted().stream().map(WantedResult::what).collect(Collectors.joining(", "));
            byWanted.computeIfAbsent(wanted, w -> new ArrayList<>())
                    .add(item.printed().isEmpty() ? run.names().brief(item.device()) : value(item));
        }
        return byWanted.entrySet().stream()
                .map(e -> say(
                        "brief.asked",
                        "wanted",
                        upperFirst(e.getKey()),
                        "values",
                        String.join(", ", new TreeSet<>(e.getValue()))))
                .collect(Collectors.joining("; "));
    }

    private static String value(ItemResult item) {
        return item.printed() + " (" + item.about() + ")";
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
