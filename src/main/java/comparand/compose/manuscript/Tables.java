package comparand.compose.manuscript;

import comparand.compose.table.LocalDataTables;
import comparand.compose.table.SharedTables;
import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Notes;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.result.ResultSet;
import comparand.document.result.SourceResult;
import comparand.metric.Metric;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The tables of a manuscript, each complete in itself. */
final class Tables {

    private final Writing writing;
    private final Run run;
    private final ResultSet results;
    private final Cells cells;
    private final Legends legends;

    Tables(Writing writing, ResultSet results) {
        this.writing = writing;
        this.run = writing.run();
        this.results = results;
        this.cells = new Cells(run);
        this.legends = new Legends(writing);
    }

    List<Block> main() {
        var shared = new SharedTables(run, results);
        return List.of(
                legends.complete(Numbering.SOURCES, say("ms.caption.sources"), sources()),
                legends.complete(
                        Numbering.LOCAL, say("ms.caption.local"), new LocalDataTables(run, results.rowLog()).counts()),
                legends.complete(Numbering.TOLERANCES, say("ms.caption.tolerances"), shared.tolerancesByMetric()),
                legends.complete(
                        Numbering.CHARACTERISTICS, say("ms.caption.characteristics"), shared.characteristics()),
                legends.complete(Numbering.RESULTS, say("ms.caption.results"), results()));
    }

    private Table sources() {
        var columns = List.of(
                cells.number("col.number", 9),
                cells.name("ms.col.source", 36),
                cells.text("col.kind", 20),
                cells.text("col.device", 18),
                cells.text("ms.col.metrics", 38),
                cells.text("ms.col.n", 12),
                cells.text("col.missing", 36),
                cells.text("col.funding", 17),
                cells.text("col.status", 16));
        var rows = results.sources().stream().map(this::source).toList();
        return new Table("TableSources", "", columns, rows.isEmpty() ? List.of(cells.nothing(9)) : rows, List.of());
    }

    private List<Cell> source(SourceResult s) {
        var record = run.library().source(s.id()).orElseThrow();
        return List.of(
                run.figures().cell(s.number(), 0, "", ""),
                Cell.words(brief(record)),
                cells.term("source-kind", s.kind().replace('-', ' ')),
                listed(record.values().stream()
                        .map(v -> run.names().brief(v.device().value()))
                        .toList()),
                listed(record.values().stream()
                        .map(v -> metricName(v.metric().value()))
                        .toList()),
                listed(record.values().stream()
                        .flatMap(v -> v.n().stream())
                        .map(n -> n.value()
                                .size()
                                .map(run.terms()::size)
                                .orElseGet(() -> run.words().say("not-reported")))
                        .toList()),
                s.missing().isEmpty() ? cells.word("none") : Cell.words(String.join(", ", s.missing())),
                cells.term("funding", s.funding()),
                cells.term("source-state", s.state()));
    }

    /** First author and year, as a reader knows a source by; the list of references has the rest. */
    private String brief(SourceRecord source) {
        var reference = source.reference();
        var authors = reference.author();
        var first = authors.isEmpty()
                ? reference.title().value()
                : authors.get(0)
                        .family()
                        .or(() -> authors.get(0).literal())
                        .map(f -> f.value())
                        .orElse("");
        var year = reference.issued().map(i -> i.value().text().substring(0, 4)).orElse("");
        var others = authors.size() > 1 ? say("ms.and-others") : "";
        var revision = source.document()
                .map(d -> say("ms.revision-of", "revision", d.revision().value()))
                .orElse("");
        return (first + others + " " + year + revision).strip();
    }

    private Cell listed(List<String> texts) {
        var distinct = texts.stream().distinct().collect(Collectors.joining(", "));
        return distinct.isEmpty() ? cells.none() : Cell.words(distinct);
    }

    private String metricName(String id) {
        return run.library().catalogue().find(id).map(run.terms()::metric).orElse(id);
    }

    /** Every pair: device beside device, then beside what was published. */
    private Table results() {
        var columns = List.of(
                cells.name("col.metric", 24),
                cells.name("col.device", 13),
                cells.text("col.step", 20),
                cells.text("col.local", 19),
                cells.text("col.against", 20),
                cells.text("ms.col.theirs", 24),
                cells.text("col.difference-ci", 21),
                cells.text("col.answer", 52),
                cells.text("col.standing", 19));
        var notes = new Notes();
        var rows = new ArrayList<List<Cell>>();
        for (var metric : run.questions().values()) {
            run.comparisons(metric).stream()
                    .filter(c -> c.pairing().purpose() != Purpose.WITHIN_CENTRE)
                    .forEach(c -> rows.add(row(metric, c, notes)));
        }
        return new Table(
                "TableResults",
                "",
                columns,
                rows.isEmpty() ? List.of(cells.nothing(columns.size())) : rows,
                notes.list());
    }

    private List<Cell> row(Metric metric, Comparison c, Notes notes) {
        var pairing = c.pairing();
        boolean published = pairing.purpose() == Purpose.LOCAL_AGAINST_PUBLISHED;
        var texts = new ArrayList<>(run.conditions().distortions(pairing));
        run.remarks().of(c).forEach(r -> texts.add(r + "."));
        var group = run.terms().group(pairing.ours().origin().fold(p -> "", Origin.Local::group));
        var unit =
                metric.unit().spelling().isEmpty() ? "" : ", " + metric.unit().spelling();
        return List.of(
                Cell.words(ConditionLine.upperFirst(run.terms().metric(metric)) + unit),
                Cell.words(run.names().brief(pairing.ours().device())),
                group.isEmpty() ? cells.none() : Cell.words(group),
                Cell.words(cells.brief(pairing.ours())),
                Cell.words(
                        published
                                ? run.names().locatorAndPayer(pairing.theirs())
                                : run.names().brief(pairing.theirs().device())),
                Cell.words(
                        published
                                ? say(
                                        "ms.printed-and-footing",
                                        "printed",
                                        SummaryText.printed(pairing.theirs()),
                                        "footing",
                                        run.summaries().beside(pairing.theirs(), pairing.standing()))
                                : cells.briefBeside(pairing.theirs(), pairing.standing())),
                cells.differenceInWords(c),
                Cell.words(ConditionLine.upperFirst(run.answers().of(c)), notes.marks(texts)),
                cells.standing(pairing));
    }

    private String say(String key, String... places) {
        return writing.say(key, places);
    }
}
