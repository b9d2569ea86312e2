package comparand.compose.brief;

import static comparand.compose.text.ConditionLine.upperFirst;

import comparand.compose.text.AnswerText;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.compose.text.UnknownText;
import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.RequestResult;
import comparand.document.result.RequestResult.ItemResult;
import comparand.document.result.RequestResult.WantedResult;
import comparand.document.result.ResultSet;
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
import java.util.stream.Collectors;

/** What is not known, what a trial should still measure, and what is to be asked of whom. */
final class OpenQuestions {

    private static final int MOST = 9;
    private static final int MOST_MEASURED = 8;
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
                cells.text("col.unknown", 90),
                cells.name("col.device", 16),
                cells.text("col.matters", 64),
                cells.text("col.settles", 50),
                cells.text("col.who", 29));
        var table = new Table(
                "BriefUnknown",
                "",
                columns,
                rows.stream().limit(MOST).map(this::row).toList(),
                List.of());
        return List.of(table);
    }

    /** By its short name, as in the other rows. */
    private String device(UnknownText.Said said) {
        return run.dossier().devices().stream()
                .map(Located::value)
                .filter(d -> run.names().device(d).equals(said.device()))
                .map(run.names()::brief)
                .findFirst()
                .orElseGet(said::device);
    }

    private List<Cell> row(OpenRow row) {
        var first = row.unknowns().get(0);
        var said = text.of(first);
        if (first instanceof Unknown.Declared) {
            return List.of(
                    Cell.words(said.what()),
                    Cell.words(device(said)),
                    Cell.words(said.matters()),
                    Cell.words(String.join(" ", said.settles())),
                    Cell.words(said.who()));
        }
        var metric = row.metric().orElseThrow();
        return List.of(
                Cell.words(upperFirst(run.terms().metric(metric)) + what(row)),
                Cell.words(devices(row)),
                Cell.words(matters(first)),
                Cell.words(sizes.of(row).orElseGet(() -> String.join(" ", said.settles()))),
                Cell.words(said.who()));
    }

    /** Steps of a device with one and the same verdict are said together; a step that all share is said once. */
    private String what(OpenRow row) {
        var steps = new LinkedHashMap<String, List<String>>();
        for (var unknown : row.unknowns()) {
            if (unknown instanceof Unknown.Open open) {
                var ours = open.comparison().pairing().ours();
                steps.computeIfAbsent(
                                run.names().brief(ours.device()) + "{step} " + verdict(open), k -> new ArrayList<>())
                        .add(run.terms().group(ours.origin().fold(p -> "", Origin.Local::group)));
            } else {
                steps.put(say("brief.unmeasured"), List.of());
            }
        }
        boolean shared = steps.values().stream().distinct().count() == 1;
        var first = steps.values().iterator().next();
        return (shared ? at(first) : "") + ": "
                + steps.entrySet().stream()
                        .map(e -> e.getKey().replace("{step}", shared ? "" : at(e.getValue())))
                        .collect(Collectors.joining("; "));
    }

    private String at(List<String> steps) {
        var joined = String.join(", ", steps);
        return joined.isBlank() ? "" : say("at", "step", joined);
    }

    private String verdict(Unknown.Open open) {
        var c = open.comparison();
        return tested(c.answer())
                .map(t -> t.verdict() == Verdict.NOT_SETTLED
                        ? say("unknown.not-settled")
                        : run.answers().verdict(t, c))
                .orElseGet(() -> run.answers().of(c));
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
        return say("brief.margin", "margin", run.terms().margin(margin.text()), "reason", margin.reason());
    }

    /** Each metric that is open between devices and has a margin, with what it takes; then what must be held alike. */
    String trial() {
        var measured =
                rows.stream().filter(r -> r.rank() < 2).limit(MOST_MEASURED).toList();
        if (measured.isEmpty()) {
            return say("committee.trial-none");
        }
        var hold = shared(measured);
        var lines = new ArrayList<String>();
        lines.add(say(
                "committee.trial-of",
                "metrics",
                measured.stream().map(this::measure).collect(Collectors.joining("; "))));
        if (!hold.isEmpty()) {
            lines.add(say("committee.trial-alike", "conditions", hold));
        }
        return String.join(" ", lines);
    }

    /** Conditions that decide for at least half of the metrics; what decides for one alone is in the workbook. */
    private String shared(List<OpenRow> measured) {
        var metrics =
                measured.stream().flatMap(r -> r.metric().stream()).distinct().toList();
        var uses = new LinkedHashMap<String, Integer>();
        metrics.stream()
                .flatMap(m -> m.conditions().stream())
                .filter(use -> use.role().asksForReport())
                .forEach(use -> uses.merge(run.terms().named(use.condition().name()), 1, Integer::sum));
        return uses.entrySet().stream()
                .filter(e -> 2 * e.getValue() >= metrics.size())
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", "));
    }

    private String measure(OpenRow row) {
        return say("brief.measure", "metric", run.terms().metric(row.metric().orElseThrow()), "devices", devices(row));
    }

    /** One line for each recipient of a letter. */
    String toAsk() {
        if (results.requests().isEmpty()) {
            return say("committee.ask-none");
        }
        var lines = new ArrayList<String>();
        results.requests().stream()
                .limit(MOST_ASKED)
                .forEach(r -> lines.add(say("committee.ask", "to", r.to(), "asked", asked(r))));
        return String.join("\n", lines) + " " + say("committee.ask-letters");
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
                .map(e -> say("brief.asked", "wanted", e.getKey(), "values", String.join(", ", e.getValue())))
                .collect(Collectors.joining("; "));
    }

    private static String value(ItemResult item) {
        return item.printed() + " (" + item.about() + ")";
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
