package comparand.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.document.Document;
import comparand.document.Look;
import comparand.document.Section;
import comparand.support.OfficeSchemas;
import comparand.write.docx.TextWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.xwpf.usermodel.ParagraphAlignment;
import org.apache.poi.xwpf.usermodel.UnderlinePatterns;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text documents, read back as a word processor would. */
class TextWriterTest {

    private static final Look NUMBERED =
            new Look("A <house> & Co", Look.Paper.LETTER, "Arial \"Narrow\"", Optional.empty(), Optional.empty(), true);

    @TempDir
    Path temporary;

    @Test
    @DisplayName(
            "every part of the file holds to the schemas of Office Open XML, also with numbered lines and lying pages")
    void schemas() throws IOException {
        assertThat(OfficeSchemas.faults(written(SampleText.sample(Look.PLAIN)))).isEmpty();
        assertThat(OfficeSchemas.faults(written(SampleText.sample(NUMBERED)))).isEmpty();
    }

    @Test
    @DisplayName("a fault would be found: a paragraph within a run, an attribute nobody knows")
    void faultsAreFound() throws IOException {
        var file = written(SampleText.sample(Look.PLAIN));
        var broken = temporary.resolve("broken.docx");
        try (var in = new java.util.zip.ZipFile(file.toFile());
                var out = new java.util.zip.ZipOutputStream(Files.newOutputStream(broken))) {
            out.putNextEntry(new java.util.zip.ZipEntry("word/document.xml"));
            var text = new String(
                    in.getInputStream(in.getEntry("word/document.xml")).readAllBytes(),
                    java.nio.charset.StandardCharsets.UTF_8);
            out.write(text.replaceFirst("<w:r>", "<w:r w:odd=\"1\"><w:p/>")
                    .getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        assertThat(OfficeSchemas.faults(broken))
                .hasSize(2)
                .anySatisfy(f -> assertThat(f).contains("odd"))
                .anySatisfy(f -> assertThat(f).contains("Expected elements"));
    }

    @Test
    @DisplayName("title, headings with outline levels, points, remarks, references and notes each have their style")
    void styles() throws IOException {
        try (var text = read(SampleText.sample(Look.PLAIN))) {
            assertThat(styled(text, "Title")).containsExactly("A title & more");
            assertThat(styled(text, "Subtitle")).containsExactly("A question?");
            assertThat(styled(text, "Heading1")).containsExactly("Methods", "Wide");
            assertThat(styled(text, "Heading2")).containsExactly("Below");
            assertThat(styled(text, "ListBullet")).containsExactly("A point.");
            assertThat(styled(text, "Remark")).containsExactly("A remark.");
            assertThat(styled(text, "Reference")).containsExactly("1.\tArdley J. Flow. Perfusion. 2023.");
            assertThat(styled(text, "TableNote")).contains("a\u00a0Of one unit.", "SD, standard deviation.");
            for (int level = 1; level <= 3; level++) {
                var style = text.getStyles().getStyle("Heading" + level);
                assertThat(style.getName()).isEqualTo("heading " + level);
                assertThat(style.getCTStyle().getPPr().getOutlineLvl().getVal().intValue())
                        .isEqualTo(level - 1);
            }
            text.getParagraphs()
                    .forEach(p -> assertThat(text.getStyles().getStyle(p.getStyle()))
                            .as(p.getText())
                            .isNotNull());
        }
    }

    @Test
    @DisplayName("a table has one row of headings that repeats, no row is torn, three rules across and none down")
    void tables() throws IOException {
        try (var text = read(SampleText.sample(Look.PLAIN))) {
            var table = text.getTables().get(0);
            assertThat(table.getRow(0).isRepeatHeader()).isTrue();
            assertThat(table.getRows().stream().skip(1)).noneMatch(r -> r.isRepeatHeader());
            assertThat(table.getRows()).allMatch(r -> r.isCantSplitRow());
            var borders = table.getCTTbl().getTblPr().getTblBorders();
            assertThat(borders.isSetTop() && borders.isSetBottom()).isTrue();
            assertThat(borders.isSetInsideV() || borders.isSetInsideH() || borders.isSetLeft())
                    .isFalse();
            assertThat(table.getRow(0)
                            .getCell(0)
                            .getCTTc()
                            .getTcPr()
                            .getTcBorders()
                            .isSetBottom())
                    .isTrue();
            var grid = table.getCTTbl().getTblGrid().getGridColList().stream()
                    .mapToInt(c -> ((java.math.BigInteger) c.getW()).intValue())
                    .sum();
            assertThat(grid).isEqualTo(11906 - 2 * 1417);
            var number = table.getRow(1).getCell(1).getParagraphs().get(0);
            assertThat(number.getAlignment()).isEqualTo(ParagraphAlignment.RIGHT);
            assertThat(number.getText()).isEqualTo("72.4\u2009a");
            assertThat(last(number).getVerticalAlignment().toString())
                    .isEqualTo(VerticalAlign.SUPERSCRIPT.toString().toLowerCase(java.util.Locale.ROOT));
        }
    }

    @Test
    @DisplayName(
            "captions count by fields whose shown number is right, tables and those of the supplement each for themselves")
    void captions() throws IOException {
        try (var text = read(SampleText.sample(Look.PLAIN))) {
            var captions = text.getParagraphs().stream()
                    .filter(p -> "Caption".equals(p.getStyle()))
                    .toList();
            assertThat(captions.stream().map(XWPFParagraph::getText))
                    .containsExactly("Table\u00a01. First.", "Table\u00a0S1. Apart.", "Table\u00a02. Wide.");
            assertThat(captions.stream()
                            .map(p -> p.getCTP().getFldSimpleArray(0).getInstr().strip()))
                    .containsExactly("SEQ Table \\* ARABIC", "SEQ Table_S \\* ARABIC", "SEQ Table \\* ARABIC");
        }
        var wrong = SampleText.document(
                Look.PLAIN, List.of(new Section("a", "A", List.of(SampleText.table("One", "Table 2. First.", 20)))));
        assertThatThrownBy(() -> written(wrong)).hasMessageContaining("number 1 of its kind");
    }

    @Test
    @DisplayName("numbers and paragraphs with names are bookmarked, each name once")
    void bookmarks() throws IOException {
        try (var text = read(SampleText.sample(Look.PLAIN))) {
            var prose = text.getParagraphs().stream()
                    .filter(p -> p.getText().startsWith("The drop"))
                    .findFirst()
                    .orElseThrow();
            assertThat(prose.getText()).isEqualTo("The drop was 72.4\u00a0mmHg [1].");
            assertThat(prose.getCTP().getBookmarkStartList().stream().map(b -> b.getName()))
                    .containsExactly("res_drop", "n_drop");
            assertThat(prose.getCTP().xmlText())
                    .containsSubsequence("w:name=\"n_drop\"", ">72.4\u00a0mmHg<", "bookmarkEnd w:id=\"3\"");
        }
        var twice = SampleText.document(
                Look.PLAIN,
                List.of(new Section("a", "A", List.of(SampleText.prose("one", "n"), SampleText.prose("two", "N")))));
        assertThatThrownBy(() -> written(twice)).hasMessageContaining("two places are called");
        var tooLong = SampleText.document(
                Look.PLAIN, List.of(new Section("a", "A", List.of(SampleText.prose("x".repeat(41), "n")))));
        assertThatThrownBy(() -> written(tooLong)).hasMessageContaining("at most 40");
    }

    @Test
    @DisplayName(
            "pages have the paper of the house, turn for wide tables only, and carry title, marks, state and imprint")
    void pages() throws IOException {
        try (var text = read(SampleText.sample(NUMBERED))) {
            var xml = text.getDocument().xmlText();
            assertThat(xml).containsSubsequence("w:w=\"12240\"", "w:w=\"15840\"", "landscape");
            assertThat(xml.split("lnNumType", -1)).hasSize(3);
            assertThat(text.getHeaderList())
                    .hasSize(2)
                    .allSatisfy(h -> assertThat(h.getText()).contains("A title & more", "Invented data", "draft"));
            assertThat(text.getFooterList())
                    .hasSize(2)
                    .allSatisfy(f -> assertThat(f.getText())
                            .contains("A <house> & Co", "2026-11-20", "Comparand 0.0.0", "12345678"));
            var core = text.getProperties().getCoreProperties();
            assertThat(core.getTitle()).isEqualTo("A title & more");
            assertThat(core.getCreated().toInstant()).isEqualTo("2026-11-20T00:00:00Z");
            assertThat(text.getStyles().getCtStyles().xmlText())
                    .contains("w:val=\"en-GB\"", "Arial &quot;Narrow&quot;");
        }
    }

    @Test
    @DisplayName("writing the same text twice gives the same bytes")
    void twice() throws IOException {
        assertThat(Files.readAllBytes(written(SampleText.sample(Look.PLAIN))))
                .isEqualTo(Files.readAllBytes(written(SampleText.sample(Look.PLAIN))));
    }

    @Test
    @DisplayName("italics of a reference, raised references and the frame about a word are set as such")
    void characters() throws IOException {
        try (var text = read(SampleText.sample(Look.PLAIN))) {
            var runs = text.getParagraphs().stream()
                    .flatMap(p -> p.getRuns().stream())
                    .collect(Collectors.toList());
            assertThat(runs.stream().filter(XWPFRun::isItalic).map(XWPFRun::text))
                    .containsExactly("Perfusion");
            assertThat(runs.stream().filter(r -> r.getUnderline() != UnderlinePatterns.NONE))
                    .isEmpty();
            assertThat(text.getTables().get(0).getCTTbl().xmlText()).contains("w:bdr", "dashed");
        }
    }

    private static List<String> styled(XWPFDocument text, String style) {
        return text.getParagraphs().stream()
                .filter(p -> style.equals(p.getStyle()))
                .map(XWPFParagraph::getText)
                .toList();
    }

    private static XWPFRun last(XWPFParagraph paragraph) {
        return paragraph.getRuns().get(paragraph.getRuns().size() - 1);
    }

    private XWPFDocument read(Document document) throws IOException {
        try (var in = Files.newInputStream(written(document))) {
            return new XWPFDocument(in);
        }
    }

    private Path written(Document document) throws IOException {
        var file = Files.createTempFile(temporary, "text", ".docx");
        try (var out = Files.newOutputStream(file)) {
            new TextWriter().write(document, out);
        }
        return file;
    }
}
