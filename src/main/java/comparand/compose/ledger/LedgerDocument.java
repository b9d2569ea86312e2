package comparand.compose.ledger;

import comparand.compose.text.Words;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.result.LedgerResult;
import comparand.document.result.LedgerResult.AnswerEntry;
import comparand.document.result.LedgerResult.ChangeEntry;
import comparand.document.result.LedgerResult.FileEntry;
import comparand.document.result.RunResult;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A ledger as a document: pages to print, sheets, or plain lines. */
public final class LedgerDocument {

    private final LedgerResult ledger;
    private final Words words;
    private final Edition edition;

    private LedgerDocument(LedgerResult ledger, RunResult run, String tool, Words words) {
        this.ledger = ledger;
        this.words = words;
        this.edition = edition(run, tool);
    }

    /**
     * The document.
     *
     * @param run the later run
     * @param tool that made the ledger
     * @param name of the file, without ending
     */
    public static Document of(
            LedgerResult ledger, RunResult run, String tool, Words words, String name, Document.Form form) {
        return new LedgerDocument(ledger, run, tool, words).document(name, form);
    }

    private Document document(String name, Document.Form form) {
        return new Document(name, form, edition, Look.PLAIN, form == Document.Form.WORKBOOK ? sheets() : chapters());
    }

    private Edition edition(RunResult run, String tool) {
        return new Edition(
                words.say("ledger.title", "title", ledger.title()),
                ledger.question(),
                LocalDate.parse(ledger.after().asOf()),
                run.preparedBy(),
                tool,
                RunLine.print(ledger.before().fingerprint()) + "/"
                        + RunLine.print(ledger.after().fingerprint()),
                words.say(run.state().equals("draft") ? "draft" : "released"),
                ledger.inventedData() ? List.of(words.say("invented")) : List.of(),
                words.cautions(),
                words.language());
    }

    private List<Section> chapters() {
        var chapters = new ArrayList<Section>();
        chapters.add(new Section("Summary", words.say("ledger.summary"), texts(said(), Style.POINT)));
        chapters.add(new Section(
                "Changes",
                words.say("ledger.changes"),
                orNone(changes(), ledger.changes().isEmpty())));
        chapters.add(new Section(
                "Answers",
                words.say("ledger.answers"),
                orNone(answers(), ledger.answers().isEmpty())));
        chapters.add(new Section("LeftAlone", words.say("ledger.left-alone"), texts(ledger.leftAlone(), Style.POINT)));
        chapters.add(new Section(
                "Files",
                words.say("ledger.files"),
                orNone(files(), ledger.files().isEmpty())));
        chapters.add(new Section("Cautions", words.say("table.cautions"), texts(edition.cautions(), Style.BODY)));
        return chapters;
    }

    private List<Section> sheets() {
        var first = List.<Block>of(
                list(
                        "LedgerSummary",
                        words.say("ledger.summary"),
                        Stream.concat(edition.marks().stream(), said().stream())),
                list("LedgerLeftAlone", words.say("ledger.left-alone"), ledger.leftAlone().stream()),
                list("LedgerCautions", words.say("table.cautions"), edition.cautions().stream()));
        return List.of(
                new Section(words.say("sheet.read-first"), edition.title(), first),
                new Section(
                        words.say("sheet.changes"),
                        words.say("ledger.changes"),
                        orNone(changes(), ledger.changes().isEmpty())),
                new Section(
                        words.say("ledger.sheet.answers"),
                        words.say("ledger.answers"),
                        orNone(answers(), ledger.answers().isEmpty())),
                new Section(
                        words.say("ledger.sheet.files"),
                        words.say("ledger.files"),
                        orNone(files(), ledger.files().isEmpty())));
    }

    private List<Block> orNone(Table table, boolean isEmpty) {
        return List.of(isEmpty ? new Paragraph(words.say("ledger.none"), Style.BODY) : table);
    }

    private static List<Block> texts(List<String> texts, Style style) {
        return texts.stream().map(t -> (Block) new Paragraph(t, style)).toList();
    }

    /** Sentences one below the other, as sheets hold them. */
    private static Table list(String id, String heading, Stream<String> texts) {
        return new Table(
                id,
                "",
                List.of(new Column(heading, 120, Align.LEFT, true)),
                texts.map(t -> List.of(Cell.words(t))).toList(),
                List.of());
    }

    /** What is to be known first. */
    private List<String> said() {
        return List.of(
                RunLine.of(words, words.say("ledger.run.before"), ledger.before()),
                RunLine.of(words, words.say("ledger.run.after"), ledger.after()),
                words.say(
                        "ledger.counts",
                        "changes",
                        String.valueOf(ledger.changes().size()),
                        "same",
                        String.valueOf(ledger.same()),
                        "moved",
                        String.valueOf(ledger.answers().size())),
                kinds());
    }

    private String kinds() {
        return List.of(Answers.Kind.values()).stream()
                .map(k -> words.say(
                        "ledger.effect." + k.name(),
                        "n",
                        String.valueOf(ledger.count(k.name().toLowerCase(Locale.ROOT)))))
                .collect(Collectors.joining("; "));
    }

    private Table changes() {
        var columns = List.of(
                number("ledger.col.number", 5),
                text("ledger.col.group", 15),
                name("col.what", 34),
                text("col.stood", 30),
                text("col.stands", 30),
                text("ledger.col.why", 44),
                text("ledger.col.effect", 36));
        var rows = new ArrayList<List<Cell>>();
        for (ChangeEntry c : ledger.changes()) {
            rows.add(List.of(
                    Cell.words(String.valueOf(c.number())),
                    Cell.words(words.say("ledger.group." + c.group().toUpperCase(Locale.ROOT))),
                    Cell.words(c.what()),
                    Cell.words(c.before()),
                    Cell.words(c.after()),
                    Cell.words(c.why()),
                    Cell.words(c.effect())));
        }
        return new Table("LedgerChanges", "", columns, rows, List.of());
    }

    private Table answers() {
        var columns = List.of(
                text("ledger.col.kind", 17),
                name("ledger.col.answer", 40),
                text("col.stood", 50),
                text("col.stands", 50),
                text("col.cause", 40));
        var rows = new ArrayList<List<Cell>>();
        for (AnswerEntry a : ledger.answers()) {
            rows.add(List.of(
                    Cell.words(words.say("ledger.kind." + a.kind().toUpperCase(Locale.ROOT))),
                    Cell.words(a.what()),
                    Cell.words(a.before()),
                    Cell.words(a.after()),
                    Cell.words(a.because())));
        }
        var notes = List.of(new Block.Note("", words.say("ledger.note")));
        return new Table("LedgerAnswers", "", columns, rows, notes);
    }

    private Table files() {
        var columns = List.of(
                name("ledger.col.file", 60),
                text("col.stood", 14),
                text("col.stands", 14),
                text("ledger.col.changes", 24));
        var rows = new ArrayList<List<Cell>>();
        for (FileEntry f : ledger.files()) {
            rows.add(List.of(
                    Cell.verbatim(f.file()),
                    Cell.words(f.before().map(RunLine::print).orElseGet(() -> words.say("ledger.not-read"))),
                    Cell.words(f.after().map(RunLine::print).orElseGet(() -> words.say("ledger.not-read"))),
                    Cell.words(
                            f.changes().isEmpty()
                                    ? words.say("ledger.no-number")
                                    : f.changes().stream().map(String::valueOf).collect(Collectors.joining(", ")))));
        }
        return new Table("LedgerFiles", "", columns, rows, List.of());
    }

    private Column text(String heading, double width) {
        return new Column(words.say(heading), width, Align.LEFT, false);
    }

    private Column name(String heading, double width) {
        return new Column(words.say(heading), width, Align.LEFT, true);
    }

    private Column number(String heading, double width) {
        return new Column(words.say(heading), width, Align.RIGHT, false);
    }
}
