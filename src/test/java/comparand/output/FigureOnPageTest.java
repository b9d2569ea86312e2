package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.document.Block;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.chart.Area;
import comparand.document.chart.Axis;
import comparand.document.chart.Diagram;
import comparand.document.chart.Diagram.Card;
import comparand.document.chart.Diagram.Step;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Rule;
import comparand.document.chart.Series;
import comparand.document.chart.Trace;
import comparand.support.BookRows;
import comparand.support.Built;
import comparand.support.DemoCharts;
import comparand.support.PdfConformance;
import comparand.support.ReadBack;
import comparand.support.TaggedPdf;
import comparand.write.pdf.PdfDocumentWriter;
import comparand.write.xlsx.WorkbookWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A figure in a PDF: drawn in lines, with its words for who cannot see it, whole on one page. */
class FigureOnPageTest {

    private static final String WORDS = "Pressure drop of two devices: 41.5 and 58.7 mmHg; the margin is 10 mmHg.";

    private static final Pattern TEXT = Pattern.compile("<text[^>]*>([^<]*)</text>");

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(
            value = Document.Form.class,
            names = {"PAGES", "WIDE_PAGES"})
    @DisplayName("a page with a figure keeps PDF/UA-1 and PDF/A-2a, and the figure has its alternative in words")
    void conforms(Document.Form form) throws IOException {
        var file = written(form, List.of(new Block.Graph(chart(), "Pressure drop at 1.0 L/min")));

        assertThat(PdfConformance.againstUa1(file)).isEmpty();
        assertThat(PdfConformance.againstA2a(file)).isEmpty();
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).contains("/Figure");
        assertThat(TaggedPdf.of(file).elements().stream()
                        .flatMap(e -> e.all("Caption").stream())
                        .map(TaggedPdf.Element::text))
                .containsExactly("Pressure drop at 1.0 L/min");
    }

    @Test
    @DisplayName("a page with boxes and arrows keeps the standards; on a sheet the boxes are cells with their words")
    void boxes() throws IOException {
        var diagram = new Diagram(
                "boxes",
                "Where the records went.",
                "Found 5; excluded 2; included 3.",
                List.of(
                        new Step(
                                "First",
                                new Card(List.of("Found (n = 5)")),
                                Optional.of(new Card(List.of("Out (n = 2)")))),
                        new Step("Then", new Card(List.of("In (n = 3)")), Optional.empty())),
                List.of("A note."));
        var page = written(Document.Form.PAGES, List.of(new Block.Graph(diagram, "Its caption")));
        var sheet = folder.resolve("boxes.xlsx");
        try (var out = Files.newOutputStream(sheet)) {
            new WorkbookWriter()
                    .write(document(Document.Form.WORKBOOK, List.of(new Block.Graph(diagram, "Its caption"))), out);
        }

        assertThat(PdfConformance.againstUa1(page)).isEmpty();
        assertThat(PdfConformance.againstA2a(page)).isEmpty();
        assertThat(BookRows.beside(sheet))
                .containsSubsequence(
                        "Its caption", "First", "Found (n = 5)", "→ Out (n = 2)", "Then", "In (n = 3)", "A note.");
    }

    @Test
    @DisplayName("a figure that does not fit below what stands there begins the next page")
    void whole() throws IOException {
        var blocks = new ArrayList<Block>();
        for (int i = 0; i < 60; i++) {
            blocks.add(new Block.Paragraph("A line", Block.Paragraph.Style.BODY));
        }
        blocks.add(new Block.Graph(chart(), "Its caption"));
        var glyphs = TaggedPdf.of(written(Document.Form.PAGES, blocks)).glyphs();

        var title =
                glyphs.stream().filter(g -> g.text().equals("Ω")).findFirst().orElseThrow();
        var caption = glyphs.stream()
                .filter(g -> g.text().equals("I"))
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(title.page()).isEqualTo(caption.page()).isEqualTo(1);
    }

    @Test
    @DisplayName("every figure of the demo is a PDF of its own as well, with all the words that it has as SVG")
    void files() throws IOException {
        var folder = Built.demo().folder().resolve("figures");
        var charts = DemoCharts.all();

        assertThat(charts).isNotEmpty();
        for (var chart : charts) {
            var svg = Files.readString(folder.resolve(chart.id() + ".svg"));
            var letters = letters(ReadBack.pdf(folder.resolve(chart.id() + ".pdf")));
            assertThat(TEXT.matcher(svg).results().map(m -> letters(m.group(1))))
                    .as(chart.id())
                    .isNotEmpty()
                    .allMatch(letters::contains);
        }
    }

    /** Without blanks: the reader of a PDF guesses them. */
    private static String letters(String text) {
        return text.replace("&gt;", ">")
                .replace("&lt;", "<")
                .replace("&amp;", "&")
                .replaceAll("[\\s\u00a0]+", "");
    }

    private Path written(Document.Form form, List<Block> blocks) throws IOException {
        var file = folder.resolve(form + ".pdf");
        try (var out = Files.newOutputStream(file)) {
            new PdfDocumentWriter().write(document(form, blocks), out);
        }
        return file;
    }

    private static Document document(Document.Form form, List<Block> blocks) {
        var edition = new Edition(
                "A title",
                "A question",
                LocalDate.of(2026, 11, 20),
                "A group",
                "Comparand",
                "12345678",
                "draft",
                List.of(),
                List.of("A caution"),
                "en");
        return new Document("any", form, edition, Look.PLAIN, List.of(new Section("One", "A chapter", blocks)));
    }

    private static Plot chart() {
        var marks = Arrays.stream(Mark.values()).filter(m -> m != Mark.NONE).toList();
        var series = new ArrayList<Series>();
        for (int i = 0; i < marks.size(); i++) {
            series.add(new Series(
                    marks.get(i).name(),
                    marks.get(i),
                    Trace.NONE,
                    Ink.TEAL,
                    List.of(new Series.Point(
                            40 + 3 * i,
                            i % 2,
                            Optional.of(new Series.Extent(38 + 3 * i, 42 + 3 * i)),
                            Optional.empty(),
                            "")),
                    ""));
        }
        var panel = new Panel(
                "Compared Ω",
                1,
                true,
                new Axis.Scale(
                        "Pressure drop, mmHg", 30, 80, List.of(new Axis.Tick(40, "40"), new Axis.Tick(60, "60"))),
                new Axis.Rows(List.of("Quillane 15", "Mirrowen 12")),
                List.of(new Area(35, 55, -0.5, 0.5, Area.Fill.HATCHED, "± 10")),
                List.of(),
                List.of(new Rule(true, 50, Trace.DASHED, Rule.Extent.WHOLE, "50")),
                series);
        return new Plot("pressure", "Pressure drop", WORDS, List.of(panel), List.of(), List.of("6 units each"));
    }
}
