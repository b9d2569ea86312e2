package comparand.compose;

import comparand.diag.Located;
import comparand.document.Block;
import comparand.document.Block.Column;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Section;
import comparand.document.result.ResultSet;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Summary;
import comparand.model.library.QuestionRecord;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The evidence table for print: one chapter a question, with what differs in notes under each table. */
final class EvidenceTable {

    static final String NAME = "evidence-table";

    private final Run run;
    private final Edition edition;
    private final Cells cells;
    private final SharedTables shared;

    EvidenceTable(Run run, Edition edition, ResultSet results) {
        this.run = run;
        this.edition = edition;
        this.cells = new Cells(run);
        this.shared = new SharedTables(run, results);
    }

    Document document() {
        var sections = new ArrayList<Section>();
        sections.add(said());
        run.questions().forEach((question, metric) -> sections.add(question(question, metric)));
        sections.add(new Section(
                say("sheet.characteristics"), say("sheet.about.characteristics"), List.of(shared.characteristics())));
        sections.add(new Section(say("table.sources"), say("sheet.about.sources"), List.of(shared.sources())));
        sections.add(new Section(say("table.aside"), say("sheet.about.aside"), List.of(shared.setAside())));
        sections.add(new Section(
                say("sheet.tolerances"), say("sheet.about.tolerances"), List.of(shared.tolerancesByMetric())));
        sections.add(new Section(say("sheet.findings"), say("table.findings"), List.of(shared.findings())));
        var reading = new ArrayList<Block>(List.of(Key.table(run, cells)));
        sections.add(new Section("Key", say("table.reading"), reading));
        var cautions = edition.cautions().stream()
                .map(c -> (Block) new Paragraph(c, Style.BODY))
                .toList();
        sections.add(new Section(say("table.cautions"), say("table.cautions"), cautions));
        return new Document(NAME, edition, sections);
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }

    /** The firmest things first in the reader's eye: every local comparison that could be made, as a sentence. */
    private Section said() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(
                say(
                        "table.said.lead",
                        "present",
                        run.names().device(run.dossier().presentDevice().value())),
                Style.BODY));
        var points = run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.pairing().standing().isCompared()
                        && !(c.answer() instanceof Answer.EventCounts))
                .map(this::point)
                .toList();
        points.forEach(p -> blocks.add(new Paragraph(p, Style.POINT)));
        var events = run.questions().values().stream()
                .filter(m -> m.nature() == Nature.EVENT)
                .map(this::events)
                .flatMap(Optional::stream)
                .toList();
        events.forEach(e -> blocks.add(new Paragraph(e, Style.POINT)));
        if (points.isEmpty() && events.isEmpty()) {
            blocks.add(new Paragraph(say("table.said.none"), Style.BODY));
        }
        return new Section(say("table.said"), say("table.said"), blocks);
    }

    /** All devices together, then each: so many of so many, and what is compatible with that. */
    private Optional<String> events(Metric metric) {
        var parts = new ArrayList<String>();
        for (var c : run.compared().matched().evidence().local()) {
            if (c.metric().equals(metric) && c.summary() instanceof Summary.Events e) {
                parts.add(run.names().device(c.device()) + ": "
                        + run.answers().events(e, ProportionInterval.EXACT.of(e.events(), e.of(), 0.95)));
            }
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(say(
                        "table.said.events",
                        "metric",
                        ConditionLine.upperFirst(metric.name()),
                        "events",
                        String.join("; ", parts)));
    }

    private String point(Comparison c) {
        var metric = c.pairing().ours().metric();
        var ours = c.pairing().ours();
        var device = run.names().device(ours.device());
        var answer = run.answers().of(c);
        var remarks = run.answers().remarks(c);
        var tail = remarks.isEmpty() ? "" : " " + String.join(". ", remarks) + ".";
        if (c.answer() instanceof Answer.Nominal nominal) {
            var difference = run.figures()
                    .withUnit(
                            run.answers()
                                    .signed(nominal.difference(), run.figures().of(ours, nominal.difference())),
                            metric);
            return say(
                            "table.said.stated",
                            "device",
                            device,
                            "metric",
                            metric.name(),
                            "difference",
                            difference,
                            "answer",
                            answer)
                    + tail;
        }
        if (c.answer() instanceof Answer.Tested tested) {
            var group = ours.origin().fold(p -> "", Origin.Local::group);
            var step = group.isEmpty() ? "" : say("at", "step", group);
            return say(
                            "table.said.pair",
                            "device",
                            device,
                            "metric",
                            metric.name(),
                            "step",
                            step,
                            "difference",
                            differenceWithUnit(metric, tested),
                            "answer",
                            answer)
                    + tail;
        }
        return ConditionLine.upperFirst(metric.name()) + ": " + answer + ".";
    }

    private String differenceWithUnit(Metric metric, Answer.Tested tested) {
        int decimals = run.figures().ofDifference(metric, tested.interval());
        var value = run.answers().signed(tested.difference().value(), decimals);
        var unit = metric.differenceUnit().isEmpty() ? "" : "\u00a0" + metric.differenceUnit();
        return value + unit + " (95 % CI " + run.figures().range(tested.interval(), decimals) + ")";
    }

    private Section question(QuestionRecord question, Metric metric) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(lead(question, metric), Style.BODY));
        var comparisons = run.comparisons(metric);
        var present = comparisons.stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED)
                .toList();
        if (metric.nature() == Nature.STATED) {
            blocks.add(stated(metric, present));
        } else {
            localResults(metric, blocks);
            if (!present.isEmpty()) {
                blocks.add(new Heading(say("table.present")));
                blocks.add(present(metric, present));
            }
            blocks.add(new Heading(say("table.published")));
            published(metric, comparisons, blocks);
        }
        var unit = metric.unit().isNumber() || metric.nature() == Nature.EVENT
                ? ""
                : ", " + metric.unit().spelling();
        var name = ConditionLine.upperFirst(metric.name());
        return new Section(
                name.length() > 31 ? name.substring(0, 31) : name, name + " (" + metric.symbol() + ")" + unit, blocks);
    }

    private String lead(QuestionRecord question, Metric metric) {
        var better = say("better."
                + question.better().map(Located::value).orElse(metric.better()).name());
        return question.margin().flatMap(m -> m.value().amount()).isPresent()
                ? say(
                        "margin-line",
                        "asks",
                        question.asks().value(),
                        "margin",
                        question.margin().orElseThrow().value().toString().replace(' ', '\u00a0'),
                        "reason",
                        question.reason().map(Located::value).orElse(say("no-reason")),
                        "better",
                        better)
                : say("margin-line.none", "asks", question.asks().value(), "better", better);
    }

    /** Events are listed with their exact intervals, all devices together last. */
    private void localResults(Metric metric, List<Block> blocks) {
        var local = run.compared().matched().evidence().local().stream()
                .filter(c -> c.metric().equals(metric))
                .toList();
        if (local.isEmpty()) {
            blocks.add(new Paragraph(say("table.no-local"), Style.BODY));
        } else if (metric.nature() == Nature.EVENT) {
            var columns = List.of(cells.name("col.device", 24), cells.text("col.events", 70), cells.text("col.id", 50));
            var rows = new ArrayList<List<Cell>>();
            for (var c : local) {
                if (c.summary() instanceof Summary.Events e) {
                    rows.add(List.of(
                            Cell.words(run.names().device(c.device())),
                            Cell.words(run.answers().events(e, ProportionInterval.EXACT.of(e.events(), e.of(), 0.95))),
                            Cell.words(c.id())));
                }
            }
            blocks.add(new Heading(say("table.local")));
            blocks.add(new Table(id("Local", metric), "", columns, rows, List.of()));
        }
    }

    private Table present(Metric metric, List<Comparison> comparisons) {
        var columns = List.of(
                cells.name("col.device", 13),
                cells.text("col.step", 18),
                cells.text("col.its", 20),
                cells.text("col.present", 20),
                cells.text("col.difference-ci", 21),
                cells.text("col.answer", 52),
                cells.text("col.standing", 13),
                cells.text("col.conditions", 52));
        var notes = new Notes();
        var rows = new ArrayList<List<Cell>>();
        for (var c : comparisons) {
            var pairing = c.pairing();
            var marks = notes.marks(noteTexts(c));
            rows.add(List.of(
                    Cell.words(run.names().brief(pairing.ours().device())),
                    step(pairing.ours()),
                    Cell.words(cells.brief(pairing.ours())),
                    Cell.words(run.summaries().beside(pairing.theirs(), pairing.standing())),
                    difference(c, metric),
                    Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks),
                    cells.standing(pairing),
                    Cell.words(run.conditions().line(pairing))));
        }
        return new Table(id("Present", metric), "", columns, rows, notes.list());
    }

    private void published(Metric metric, List<Comparison> comparisons, List<Block> blocks) {
        var pairs = comparisons.stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                .toList();
        var unpaired = run.compared().matched().unpaired().stream()
                .filter(c -> c.metric().equals(metric))
                .toList();
        if (pairs.isEmpty() && unpaired.isEmpty()) {
            blocks.add(new Paragraph(say("table.no-published"), Style.BODY));
            return;
        }
        List<Column> columns = List.of(
                cells.name("col.device", 12),
                cells.text("col.local", 19),
                cells.text("col.printed", 19),
                cells.text("col.footing", 13),
                cells.text("col.difference-ci", 20),
                cells.text("col.answer", 54),
                cells.text("col.standing", 13),
                cells.text("col.conditions", 46),
                cells.text("col.locator", 10));
        var notes = new Notes();
        var rows = new ArrayList<List<Cell>>();
        for (var c : pairs) {
            rows.add(publishedRow(c, metric, notes));
        }
        for (var c : unpaired) {
            rows.add(unpairedRow(c));
        }
        blocks.add(new Table(id("Published", metric), "", columns, rows, notes.list()));
    }

    private List<Cell> publishedRow(Comparison c, Metric metric, Notes notes) {
        var pairing = c.pairing();
        var marks = notes.marks(noteTexts(c));
        var group = pairing.ours().origin().fold(p -> "", Origin.Local::group);
        return List.of(
                Cell.words(run.names().brief(pairing.ours().device())),
                Cell.words(cells.brief(pairing.ours()) + (group.isEmpty() ? "" : say("at", "step", group))),
                Cell.words(SummaryText.printed(pairing.theirs()) + theirN(pairing.theirs())),
                Cell.words(run.summaries().beside(pairing.theirs(), pairing.standing())),
                difference(c, metric),
                Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks),
                cells.standing(pairing),
                Cell.words(run.conditions().line(pairing)),
                Cell.words(run.names().locator(pairing.theirs())));
    }

    private List<Cell> unpairedRow(Comparand c) {
        boolean claim = c.summary() instanceof Summary.Words;
        return List.of(
                Cell.words(run.names().brief(c.device())),
                cells.none(),
                Cell.words(SummaryText.printed(c) + theirN(c)),
                claim ? cells.none() : Cell.words(run.summaries().alone(c)),
                cells.none(),
                Cell.words(say(claim ? "unpaired.claim" : "unpaired.no-local")),
                cells.none(),
                cells.none(),
                Cell.words(run.names().locator(c)));
    }

    private static String theirN(Comparand comparand) {
        return comparand.sizes().independent().map(n -> "; " + n).orElse("");
    }

    private Table stated(Metric metric, List<Comparison> comparisons) {
        var columns = List.of(
                cells.name("col.device", 16),
                cells.text("col.printed", 26),
                cells.text("col.steps", 44),
                cells.text("col.footing", 14),
                cells.text("col.parts", 30),
                cells.text("col.difference", 14),
                cells.text("col.answer", 44),
                cells.text("col.locator", 10));
        var notes = new Notes();
        var rows = new ArrayList<List<Cell>>();
        comparisons.stream()
                .map(c -> c.pairing().theirs())
                .distinct()
                .forEach(p -> rows.add(statedRow(p, cells.none(), cells.none())));
        for (var c : comparisons) {
            var marks = notes.marks(noteTexts(c));
            rows.add(statedRow(
                    c.pairing().ours(),
                    difference(c, metric),
                    Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks)));
        }
        return new Table(id("Stated", metric), "", columns, rows, notes.list());
    }

    private List<Cell> statedRow(Comparand c, Cell difference, Cell answer) {
        var steps = c.trail().stream()
                .filter(s -> s.kind().converts())
                .map(run.trails()::of)
                .toList();
        var covers = c.metric().definition().stream()
                .flatMap(a -> c.definition().get(a.id()).map(a::text).stream())
                .toList();
        return List.of(
                Cell.words(run.names().brief(c.device())),
                Cell.words(SummaryText.printed(c)),
                steps.isEmpty() ? cells.word("none") : Cell.words(String.join("; ", steps)),
                Cell.words(run.summaries().withUnit(c)),
                covers.isEmpty() ? cells.none() : Cell.words(String.join("; ", covers)),
                difference,
                answer,
                Cell.words(run.names().locator(c)));
    }

    private Cell step(Comparand comparand) {
        var group = comparand.origin().fold(p -> "", Origin.Local::group);
        return group.isEmpty() ? cells.none() : Cell.words(group);
    }

    private Cell difference(Comparison c, Metric metric) {
        if (c.answer() instanceof Answer.Nominal nominal) {
            return Cell.words(run.answers()
                    .signed(nominal.difference(), run.figures().of(c.pairing().ours(), nominal.difference())));
        }
        return AnswerText.tested(c.answer())
                .map(t -> Cell.words(run.answers().difference(metric, t)))
                .orElseGet(cells::none);
    }

    /** What a reader would ask next: expected directions, then what is not held against the pair, then the remarks. */
    private List<String> noteTexts(Comparison c) {
        var texts = new ArrayList<>(run.conditions().distortions(c.pairing()));
        if (c.pairing().standing().isCompared()) {
            texts.addAll(run.conditions().qualifiers(c.pairing()));
        }
        run.answers().remarks(c).forEach(r -> texts.add(r + "."));
        return texts;
    }

    private static String id(String kind, Metric metric) {
        return kind + metric.id().replace("-", "");
    }
}
