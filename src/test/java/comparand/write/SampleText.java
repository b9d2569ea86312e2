package comparand.write;

import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Prose;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Inline;
import comparand.document.Look;
import comparand.document.Section;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/** A short text with one of each thing that a text may hold. */
final class SampleText {

    private SampleText() {}

    static Document sample(Look look) {
        var entry = new Prose(
                "ref_ardley",
                List.of(
                        new Inline.Plain("1.\tArdley J. Flow. "),
                        new Inline.Plain("Perfusion", true),
                        new Inline.Plain(". 2023.")),
                Paragraph.Style.REFERENCE);
        return document(
                look,
                List.of(
                        new Section(
                                "Methods",
                                "Methods",
                                List.of(
                                        prose("res_drop", "n_drop"),
                                        new Block.Heading("Below"),
                                        new Paragraph("A point.", Paragraph.Style.POINT),
                                        new Paragraph("A remark.", Paragraph.Style.SMALL),
                                        table("First", "Table 1. First.", 20),
                                        table("Apart", "Table S1. Apart.", 20),
                                        entry)),
                        new Section("Wide", "Wide", List.of(table("Wide", "Table 2. Wide.", 70)), true)));
    }

    static Prose prose(String name, String number) {
        return new Prose(
                name,
                List.of(
                        new Inline.Plain("The drop was "),
                        new Inline.Held(number, "72.4 mmHg"),
                        new Inline.Plain(" "),
                        new Inline.Cited("[1]", false),
                        new Inline.Plain(".")),
                Paragraph.Style.BODY);
    }

    static Table table(String id, String caption, double width) {
        var rows = IntStream.range(0, 3)
                .mapToObj(i -> List.of(
                        Cell.framed("Quillane 15", Cell.Words.Frame.DASHED), Cell.words("72.4", i == 0 ? "a" : "")))
                .toList();
        return new Table(
                id,
                caption,
                List.of(new Column("Device", width, Align.LEFT, true), new Column("mmHg", width, Align.RIGHT, false)),
                rows,
                List.of(new Note("a", "Of one unit."), new Note("", "SD, standard deviation.")));
    }

    static Document document(Look look, List<Section> sections) {
        var edition = new Edition(
                "A title & more",
                "A question?",
                LocalDate.of(2026, 11, 20),
                "Somebody",
                "Comparand 0.0.0",
                "12345678",
                "draft",
                List.of("Invented data"),
                List.of("A caution."),
                "en");
        return new Document("any", Document.Form.TEXT, edition, look, sections);
    }
}
