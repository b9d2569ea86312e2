package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.support.BookRows;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Element;
import comparand.support.TaggedPdf.Glyph;
import comparand.write.DocumentWriter;
import comparand.write.pdf.PdfDocumentWriter;
import comparand.write.xlsx.WorkbookWriter;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What both writers keep to for any document: also those that no library here leads to. */
class AnyDocumentTest {

    private static final String SIGNS = "≠ ≈ ≤ ≥ ± ° µ ² ³ ₂ Δ α − – × · √ ₁ \" & < > é ü ß Å";

    @TempDir
    Path temporary;

    @Test
    @DisplayName("every sign of the trade comes back from the PDF as it was written, in a cell and in a paragraph")
    void signs() throws IOException {
        var pdf = pdf(document("Signs", List.of(new Paragraph(SIGNS, Paragraph.Style.BODY), table(List.of(SIGNS)))));

        assertThat(pdf.all("TD").get(0).text()).isEqualTo(SIGNS);
        assertThat(pdf.all("P").stream().map(Element::text)).contains(SIGNS);
    }

    @Test
    @DisplayName("a table of many pages has its headings on each, and each of its rows once, in order")
    void longTable() throws IOException {
        var texts = IntStream.rangeClosed(1, 120).mapToObj(i -> "row " + i).toList();
        var pdf = pdf(document("Long", List.of(table(texts))));

        assertThat(pdf.all("TD").stream().map(Element::text)).containsExactlyElementsOf(texts);
        assertThat(pdf.artifacts()).hasSizeGreaterThan(2);
        assertThat(pdf.artifacts().subList(1, pdf.artifacts().size()))
                .allSatisfy(page -> assertThat(page).contains("What was seen"));
    }

    @Test
    @DisplayName("a row taller than a page goes on over the page, and stays one cell for those who listen to it")
    void tallRow() throws IOException {
        var text = String.join(
                " ", IntStream.range(0, 2500).mapToObj(i -> "word" + i).toList());
        var pdf = pdf(document("Tall", List.of(table(List.of(text)))));

        assertThat(pdf.all("TD")).hasSize(1);
        assertThat(pdf.all("TD").get(0).text()).isEqualTo(text);
        assertThat(pdf.all("TD").get(0).pages()).hasSizeGreaterThan(1);
        assertThat(pdf.glyphs()).allSatisfy(g -> assertThat(g.y()).isBetween(20f, 580f));
    }

    @Test
    @DisplayName("a word longer than its column is broken within it, and no letter is lost")
    void longWord() throws IOException {
        var word = "studies/bench-norrisgate/" + "a-very-long-name-of-a-file/".repeat(20) + "x".repeat(300) + ".csv";
        var pdf = pdf(document("Word", List.of(table(List.of(word)))));

        assertThat(pdf.all("TD").get(0).text().replace(" ", "")).isEqualTo(word);
        assertThat(pdf.glyphs()).allSatisfy(g -> assertThat(g.x() + g.width()).isLessThan(806.5f));
    }

    @Test
    @DisplayName("a title as long as that of a paper does not run into the mark beside it, and is not cut off")
    void longTitle() throws IOException {
        var title = "Pressure drop, gas transfer, heat exchange and haemolysis of three small oxygenators with integral"
                + " filters beside published values: bench tests and cases of three hospitals in two years";
        var edition = edition(title);
        var pdf = pdf(new Document(
                "any",
                Document.Form.WIDE_PAGES,
                edition,
                Look.PLAIN,
                List.of(section("One", List.of(table(List.of("x")))))));
        var head = pdf.glyphs().stream().filter(g -> g.y() < 30).toList();
        var mark = edition.marks().get(0);
        double left = head.subList(head.size() - mark.length(), head.size()).stream()
                .mapToDouble(Glyph::x)
                .min()
                .orElse(0);

        double right = head.subList(0, head.size() - mark.length()).stream()
                .mapToDouble(g -> g.x() + g.width())
                .max()
                .orElse(0);
        assertThat(right).isPositive().isLessThan(left);
    }

    @Test
    @DisplayName("running heads of a sheet stay within the 255 characters that spreadsheet programs allow")
    void longHead() throws IOException {
        var edition = edition(
                "Three small oxygenators beside published values ".repeat(4).strip());
        var book = workbook(new Document(
                "any",
                Document.Form.WIDE_PAGES,
                edition,
                Look.PLAIN,
                List.of(section("One", List.of(table(List.of("x")))))));

        BookRows.read(book, b -> {
            var head = b.getSheetAt(0).getCTWorksheet().getHeaderFooter();
            assertThat(head.getOddHeader()).hasSizeLessThanOrEqualTo(255);
            assertThat(head.getOddFooter()).hasSizeLessThanOrEqualTo(255);
            return b;
        });
    }

    @ParameterizedTest
    @CsvSource({
        "72.4312, 1, '', ''",
        "-8.46, 1, '', ''",
        "51.9, 1, '[', ']'",
        "69.7559, 0, '[', '?]'",
        "-2.34, 1, '[', ']'",
        "17.2, 1, '+', ''",
        "85, 0, '≥ ', ''",
        "78, 0, '[≤ ', '?]'",
        "0.0213, 3, '', ''",
        "1234.5, 1, '', ''",
        "0, 2, '', ''",
        "-0.003, 2, '', ''",
        "-0.04, 1, '[', ']'",
        "0.003, 2, '+', ''"
    })
    @DisplayName("a cell holds the unrounded number and shows it as the document prints it, a true minus and no -0")
    void figures(double value, int decimals, String before, String after) throws IOException {
        var printed = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        var figure = new Cell.Figure(value, printed, before, after, '.', "");
        var numbers = new Table(
                "Numbers",
                "",
                List.of(new Column("Number", 20, Align.RIGHT, false)),
                List.of(List.of(figure)),
                List.of());
        var cell = BookRows.tables(workbook(document("Figures", List.of(numbers))))
                .get(0)
                .cells()
                .get(0);

        assertThat(cell.number()).hasValue(value);
        assertThat(cell.shown()).isEqualTo(figure.shown()).doesNotContain("-").doesNotMatch(".*−0\\.?0*\\D*");
    }

    @Test
    @DisplayName("marks that call notes stand in both formats, and each note is found under its table")
    void notes() throws IOException {
        var notes = IntStream.range(0, 30)
                .mapToObj(i -> new Note((i < 26 ? "" : "a") + (char) ('a' + i % 26), "Note number " + i + "."))
                .toList();
        var rows = notes.stream()
                .map(n -> List.of(Cell.words("called " + n.mark(), n.mark())))
                .toList();
        var table = new Table("Noted", "", List.of(column()), rows, notes);
        var document = document("Notes", List.of(table));

        var pdf = pdf(document);
        assertThat(pdf.all("TD").stream().map(Element::marks))
                .containsExactlyElementsOf(notes.stream().map(Note::mark).toList());
        assertThat(pdf.all("P").stream().map(Element::text)).contains("a Note number 0.", "ad Note number 29.");
        var texts = BookRows.beside(workbook(document));
        assertThat(texts).contains("a  Note number 0.", "ad  Note number 29.");
        assertThat(BookRows.tables(workbook(document)).get(29).cells().get(0).shown())
                .isEqualTo("called ad (ad)");
    }

    @Test
    @DisplayName("an ampersand in a title stays an ampersand in the running head of a sheet")
    void ampersand() throws IOException {
        var edition = edition("Pumps & lines");
        var book = workbook(new Document(
                "any",
                Document.Form.WIDE_PAGES,
                edition,
                Look.PLAIN,
                List.of(section("One", List.of(table(List.of("x")))))));

        BookRows.read(book, b -> {
            assertThat(b.getSheetAt(0).getHeader().getLeft()).isEqualTo("Pumps && lines");
            assertThat(b.getProperties().getCoreProperties().getTitle()).isEqualTo("Pumps & lines");
            return b;
        });
    }

    @Test
    @DisplayName("writing the same document twice gives the same bytes in both formats")
    void twice() throws IOException {
        var document = document("Twice", List.of(table(List.of("one", "two", SIGNS))));
        for (var writer : List.of(new PdfDocumentWriter(), new WorkbookWriter())) {
            var first = Files.readAllBytes(written(document, writer, "first"));
            assertThat(Files.readAllBytes(written(document, writer, "second"))).isEqualTo(first);
        }
    }

    private static Column column() {
        return new Column("What was seen", 30, Align.LEFT, false);
    }

    private static Table table(List<String> texts) {
        var rows = new ArrayList<List<Cell>>();
        texts.forEach(t -> rows.add(List.of(Cell.words(t))));
        return new Table("Seen", "", List.of(column()), rows, List.of());
    }

    private static Section section(String name, List<Block> blocks) {
        return new Section(name, name, blocks);
    }

    private static Document document(String name, List<Block> blocks) {
        return new Document(
                "any", Document.Form.WIDE_PAGES, edition("A title"), Look.PLAIN, List.of(section(name, blocks)));
    }

    private static Edition edition(String title) {
        return new Edition(
                title,
                "A question?",
                LocalDate.of(2026, 11, 20),
                "Somebody",
                "Comparand 0.0.0",
                "12345678",
                "draft",
                List.of("Invented data: devices, hospitals, authors, papers and numbers are made up"),
                List.of("A caution."),
                "en");
    }

    private TaggedPdf pdf(Document document) throws IOException {
        return TaggedPdf.of(written(document, new PdfDocumentWriter(), "any"));
    }

    private Path workbook(Document document) throws IOException {
        return written(document, new WorkbookWriter(), "any");
    }

    private Path written(Document document, DocumentWriter writer, String name) throws IOException {
        var file = temporary.resolve(name + "." + writer.extension());
        try (var out = Files.newOutputStream(file)) {
            writer.write(document, out);
        }
        return file;
    }
}
