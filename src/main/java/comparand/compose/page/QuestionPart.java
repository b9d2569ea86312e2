package comparand.compose.page;

import comparand.compose.figure.FigureSet;
import comparand.compose.figure.FigureSet.Kind;
import comparand.compose.table.QuestionLead;
import comparand.compose.table.TogetherTables;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block;
import comparand.document.Block.Graph;
import comparand.document.Block.Heading;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.library.QuestionRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One question: its figures, every pair, every condition, what sources say together, what stands alone. */
final class QuestionPart {

    private static final int LONGEST_NAME = 31;

    private final Run run;
    private final Cells cells;
    private final Ladders ladders;
    private final FigureSet figures;
    private final QuestionRecord question;
    private final Metric metric;

    QuestionPart(Run run, Cells cells, Ladders ladders, FigureSet figures, QuestionRecord question, Metric metric) {
        this.run = run;
        this.cells = cells;
        this.ladders = ladders;
        this.figures = figures;
        this.question = question;
        this.metric = metric;
    }

    /** The name of the section of a metric. */
    static String name(Metric metric) {
        var id = metric.id();
        return id.length() <= LONGEST_NAME
                ? id
                : id.substring(0, LONGEST_NAME - 9) + "-" + String.format("%08x", id.hashCode());
    }

    /** The name of a table of the part. */
    static String table(String kind, Metric metric) {
        return kind + metric.id().replaceAll("[^A-Za-z0-9]", "");
    }

    Section section() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(QuestionLead.of(run, question, metric), Style.BODY));
        graphs(blocks);
        var comparisons = run.comparisons(metric);
        if (comparisons.isEmpty()) {
            blocks.add(new Paragraph(say("page.say.no-pairs"), Style.BODY));
        } else {
            blocks.add(new Heading(say("page.static.pairs")));
            blocks.add(new PairTable(run, cells, ladders, metric).table(table("Pairs", metric), comparisons));
            blocks.add(new Heading(say("page.static.grid")));
            blocks.add(new Paragraph(say("page.say.grid"), Style.SMALL));
            blocks.add(new ConditionGrid(run, cells, comparisons).table(table("Grid", metric)));
        }
        new TogetherTables(run, cells).of(metric, table("Together", metric)).ifPresent(t -> {
            blocks.add(new Heading(say("table.together")));
            blocks.add(t);
        });
        alone().ifPresent(t -> {
            blocks.add(new Heading(say("page.static.alone")));
            blocks.add(t);
        });
        return new Section(name(metric), ConditionLine.upperFirst(run.terms().metric(metric)), blocks);
    }

    /** What is compared beside what is not; where nothing is, the differences. */
    private void graphs(List<Block> blocks) {
        var charts = figures.of(Kind.LIKE_WITH_LIKE, metric.id());
        (charts.isEmpty() ? figures.of(Kind.LADDER, metric.id()) : charts)
                .forEach(c -> blocks.add(new Graph(c, c.message())));
    }

    /** Published values beside which nothing stands. */
    private Optional<Table> alone() {
        var values = run.compared().matched().unpaired().stream()
                .filter(c -> c.metric().equals(metric))
                .toList();
        var columns = List.of(
                cells.name("col.device", 14),
                cells.text("col.printed", 30),
                cells.text("col.why", 40),
                cells.text("col.would", 50),
                cells.text("page.static.theirs-from", 18));
        return values.isEmpty()
                ? Optional.empty()
                : Optional.of(new Table(
                        table("Alone", metric),
                        "",
                        columns,
                        values.stream().map(this::alone).toList(),
                        List.of()));
    }

    private List<Cell> alone(Comparand c) {
        return List.of(
                Cell.words(run.names().brief(c.device())),
                Cell.words(SummaryText.printed(c)),
                Cell.words(run.unpaired(c)),
                Cell.words(ConditionLine.upperFirst(run.toPair(c))),
                new Cell.Link(run.names().locatorAndPayer(c), ladders.name(c)));
    }

    private String say(String key) {
        return run.words().say(key);
    }
}
