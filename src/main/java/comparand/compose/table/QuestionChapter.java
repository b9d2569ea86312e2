package comparand.compose.table;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Notes;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block;
import comparand.document.Block.Column;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
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

/** One question of the dossier: our results, then beside the present device, then beside what was published. */
final class QuestionChapter {

    private final Run run;
    private final Cells cells;
    private final QuestionRecord question;
    private final Metric metric;

    QuestionChapter(Run run, Cells cells, QuestionRecord question, Metric metric) {
        this.run = run;
        this.cells = cells;
        this.question = question;
        this.metric = metric;
    }

    Section section() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(QuestionLead.of(run, question, metric), Style.BODY));
        var comparisons = run.comparisons(metric);
        var present = comparisons.stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED)
                .toList();
        if (metric.nature() == Nature.STATED) {
            blocks.add(new StatedTable(run, cells, metric).table(present));
        } else {
            localResults(blocks);
            if (!present.isEmpty()) {
                blocks.add(new Heading(say("table.present")));
                blocks.add(present(present));
            }
            blocks.add(new Heading(say("table.published")));
            published(comparisons, blocks);
            new TogetherTables(run, cells).of(metric, id("Together")).ifPresent(table -> {
                blocks.add(new Heading(say("table.together")));
                blocks.add(table);
            });
        }
        var unit = metric.unit().isNumber() || metric.nature() == Nature.EVENT
                ? ""
                : ", " + metric.unit().spelling();
        var name = ConditionLine.upperFirst(run.terms().metric(metric));
        return new Section(
                name.length() > 31 ? name.substring(0, 31) : name, name + " (" + metric.symbol() + ")" + unit, blocks);
    }

    /** Events are listed with their exact intervals, all devices together last. */
    private void localResults(List<Block> blocks) {
        var local = run.compared().matched().evidence().localResults().stream()
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
                            Cell.words(run.answers()
                                    .events(e, ProportionInterval.EXACT.of(e.events(), e.of(), Answer.LEVEL))),
                            Cell.verbatim(c.id())));
                }
            }
            blocks.add(new Heading(say("table.local")));
            blocks.add(new Table(id("Local"), "", columns, rows, List.of()));
        }
    }

    private Table present(List<Comparison> comparisons) {
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
            var marks = notes.marks(run.remarks().notes(c));
            rows.add(List.of(
                    Cell.words(run.names().brief(pairing.ours().device())),
                    cells.step(pairing.ours()),
                    Cell.words(cells.brief(pairing.ours())),
                    Cell.words(cells.briefBeside(pairing.theirs(), pairing.standing())),
                    cells.differenceInWords(c),
                    Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks),
                    cells.standing(pairing),
                    Cell.words(run.conditions().line(pairing))));
        }
        return new Table(id("Present"), "", columns, rows, notes.list());
    }

    private void published(List<Comparison> comparisons, List<Block> blocks) {
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
            rows.add(publishedRow(c, notes));
        }
        for (var c : unpaired) {
            rows.add(unpairedRow(c));
        }
        blocks.add(new Table(id("Published"), "", columns, rows, notes.list()));
    }

    private List<Cell> publishedRow(Comparison c, Notes notes) {
        var pairing = c.pairing();
        var marks = notes.marks(run.remarks().notes(c));
        var group = pairing.ours().origin().fold(p -> "", Origin.Local::group);
        return List.of(
                Cell.words(run.names().brief(pairing.ours().device())),
                Cell.words(cells.brief(pairing.ours())
                        + (group.isEmpty() ? "" : say("at", "step", run.terms().group(group)))),
                Cell.words(SummaryText.printed(pairing.theirs()) + theirN(pairing.theirs())),
                Cell.words(run.summaries().beside(pairing.theirs(), pairing.standing())),
                cells.differenceInWords(c),
                Cell.words(ConditionLine.upperFirst(run.answers().of(c)), marks),
                cells.standing(pairing),
                Cell.words(run.conditions().line(pairing)),
                Cell.words(run.names().locatorAndPayer(pairing.theirs())));
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
                Cell.words(run.names().locatorAndPayer(c)));
    }

    private String theirN(Comparand comparand) {
        return comparand
                .sizes()
                .independent()
                .map(n -> "; " + run.terms().size(n))
                .orElse("");
    }

    /** A name for the table that is its own in the document. */
    private String id(String kind) {
        return kind + metric.id().replace("-", "");
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
