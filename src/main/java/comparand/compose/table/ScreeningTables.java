package comparand.compose.table;

import comparand.compose.results.ScreeningText;
import comparand.compose.text.Cells;
import comparand.compose.text.Run;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Section;
import comparand.document.result.ScreeningResult;
import comparand.document.result.ScreeningResult.ScreenedResult;
import comparand.document.result.ScreeningResult.SearchResult;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the sources were found: the searches, the counts of the flow, and the records with what became of each. */
public final class ScreeningTables {

    private final Run run;
    private final Cells cells;
    private final ScreeningResult screening;
    private final ScreeningText text;

    public ScreeningTables(Run run, Cells cells, ScreeningResult screening) {
        this.run = run;
        this.cells = cells;
        this.screening = screening;
        this.text = new ScreeningText(run.words());
    }

    /** What an evidence table says of it. */
    public Section section() {
        return new Section(
                say("sheet.screening"),
                say("sheet.about.screening"),
                List.of(searches(), flow(List.of(new Note("", screening.terms()))), leftOut()));
    }

    public Table searches() {
        var columns = List.of(
                cells.name("col.searched", 44),
                cells.text("col.kind", 18),
                cells.text("col.on", 12),
                cells.text("col.by", 12),
                cells.text("col.words", 70),
                cells.number("col.records", 10));
        var rows = screening.searches().stream().map(this::search).toList();
        return new Table("Searches", say("flow.caption.searches"), columns, rows, List.of());
    }

    private List<Cell> search(SearchResult s) {
        return List.of(
                Cell.words(s.where()),
                Cell.words(text.kind(s)),
                new Cell.Day(LocalDate.parse(s.on())),
                words(s.by()),
                words(s.words()),
                number(s.records()));
    }

    /** The boxes of the flow from top to bottom; a sheet says elsewhere whose terms they have. */
    Table flow() {
        return flow(List.of());
    }

    private Table flow(List<Note> notes) {
        var flow = screening.flow();
        var rows = new ArrayList<List<Cell>>();
        screening.searches().forEach(s -> rows.add(row(say("flow.from", "place", text.place(s)), s.records())));
        rows.add(row(say("flow.identified"), flow.identified()));
        rows.add(row(say("flow.duplicates"), flow.duplicates()));
        rows.add(row(say("flow.screened"), flow.screened()));
        rows.add(row(say("flow.excluded"), flow.excluded()));
        rows.add(row(say("flow.sought"), flow.sought()));
        rows.add(row(say("flow.not-retrieved"), flow.notRetrieved()));
        rows.add(row(say("flow.assessed"), flow.assessed()));
        rows.add(row(say("flow.left-out"), flow.excludedAfterReading()));
        flow.reasons().forEach(r -> rows.add(row(say("flow.left-out-for", "reason", r.reason()), r.reports())));
        rows.add(row(say("flow.reports"), flow.reports()));
        rows.add(row(say("flow.studies"), flow.studies()));
        return new Table(
                "Flow",
                say("flow.caption.counts"),
                List.of(cells.name("col.box", 90), cells.number("col.records", 12)),
                rows,
                notes);
    }

    private List<Cell> row(String what, int n) {
        return List.of(Cell.words(what), number(n));
    }

    /** Every record that is not included, with the reason. */
    public Table leftOut() {
        var rows = screening.records().stream()
                .filter(r -> !r.became().equals("included"))
                .map(this::record)
                .toList();
        return new Table(
                "LeftOut",
                say("flow.caption.left-out"),
                columns(),
                rows.isEmpty() ? List.of(cells.nothing(columns().size())) : rows,
                List.of());
    }

    /** Every record, with what became of it. */
    Table records() {
        return new Table(
                "Screening",
                "",
                columns(),
                screening.records().stream().map(this::record).toList(),
                List.of());
    }

    private List<Column> columns() {
        return List.of(
                cells.name("col.record", 10),
                cells.text("col.reference", 60),
                cells.text("col.searched", 34),
                cells.text("col.became", 22),
                cells.text("col.reason", 44),
                cells.text("col.by", 12));
    }

    private List<Cell> record(ScreenedResult r) {
        return List.of(
                Cell.verbatim(r.id()),
                Cell.words(r.reference()),
                Cell.words(screening.searches().stream()
                        .filter(s -> s.id().equals(r.from()))
                        .map(SearchResult::where)
                        .findFirst()
                        .orElse(r.from())),
                Cell.words(text.fate(r)),
                text.reason(r).map(Cell::words).orElseGet(cells::none),
                words(r.by()));
    }

    private Cell words(Optional<String> words) {
        return words.map(Cell::words).orElseGet(cells::none);
    }

    private Cell number(int n) {
        return run.figures().cell(n, 0, "", "");
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
