package comparand.write.pptx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Look;
import comparand.document.talk.Deck;
import comparand.document.talk.Part;
import comparand.document.talk.layout.DeckDraft;
import comparand.document.talk.layout.Fault.Rule;
import comparand.support.SlidesRead;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.sl.usermodel.Placeholder;
import org.apache.poi.xslf.usermodel.SlideLayout;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.apache.poi.xslf.usermodel.XSLFRelation;
import org.apache.poi.xslf.usermodel.XSLFTable;
import org.apache.poi.xslf.usermodel.XSLFTextShape;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slides read back by the office library: sizes, tables, boxes, links, notes, and the masters of a house. */
class SlideWriterTest {

    @TempDir
    Path temporary;

    private static final Table TABLE = new Table(
            "Numbers",
            "Numbers of three devices",
            List.of(new Column("Device", 40, Align.LEFT, true), new Column("Number", 20, Align.RIGHT, false)),
            List.of(
                    List.of(Cell.words("Quillane 15"), Cell.words("41.5")),
                    List.of(Cell.words("Mirrowen 12"), Cell.strong("58.7"))),
            List.of());

    private static Deck deck(Look look) {
        return DeckDraft.of(
                look,
                DeckDraft.slide(
                        "a", "A number with its rider", new Part.Headline("+17 mmHg", "95 % CI 13 to 22; 6 units")),
                DeckDraft.slide(
                        "b",
                        "A sieve",
                        new Part.Sieve(
                                List.of(new Part.Box("57", "rows", "3 dropped"), new Part.Box("54", "cases", "")))),
                DeckDraft.slide(
                        "c",
                        "Cards",
                        new Part.Cards(
                                List.of(new Part.Card("One", List.of("a", "b")), new Part.Card("Two", List.of("c"))))),
                DeckDraft.backup(
                        "d",
                        "Questions",
                        new Part.Index(List.of(new Part.Entry("How many?", "e"), new Part.Entry("Says who?", "a")))),
                DeckDraft.backup("e", "A table", new Part.Grid(TABLE)));
    }

    private Path written(Deck deck) throws IOException {
        var file = temporary.resolve("talk.pptx");
        try (var out = Files.newOutputStream(file)) {
            new SlideWriter().write(deck, out);
        }
        return file;
    }

    @Test
    @DisplayName("slides are 13.33 by 7.5 inches, with a title in its placeholder, notes, and the imprint")
    void frame() throws IOException {
        var file = written(deck(Look.PLAIN));

        Dimension size = SlidesRead.open(file, XMLSlideShow::getPageSize);
        assertThat(size).isEqualTo(new Dimension(960, 540));
        assertThat(SlidesRead.of(file)).hasSize(5).allSatisfy(s -> {
            assertThat(s.titles()).hasSize(1);
            assertThat(s.notes()).startsWith("SAY", "This.");
            assertThat(String.join("\n", s.texts())).contains("Invented data", "2026-11-20", "draft", "01234567");
            assertThat(s.layout()).isEqualTo("Title only");
        });
        assertThat(SlidesRead.of(file).get(0).titles()).containsExactly("A number with its rider");
    }

    @Test
    @DisplayName("number and rider stand in one box, so that copying takes both")
    void headline() throws IOException {
        assertThat(SlidesRead.of(written(deck(Look.PLAIN))).get(0).texts())
                .anyMatch(t -> t.contains("+17 mmHg") && t.contains("95 % CI 13 to 22"));
    }

    @Test
    @DisplayName("the counts of a sieve and what fell away stand in order")
    void sieve() throws IOException {
        assertThat(SlidesRead.of(written(deck(Look.PLAIN))).get(1).texts())
                .containsSubsequence("57\nrows", "3 dropped", "54\ncases");
    }

    @Test
    @DisplayName("a table is native: headings flagged, cells as given, described in words")
    void table() throws IOException {
        var file = written(deck(Look.PLAIN));

        assertThat(SlidesRead.of(file).get(4).rows())
                .containsExactly(
                        List.of("Device", "Number"), List.of("Quillane 15", "41.5"), List.of("Mirrowen 12", "58.7"));
        boolean flagged = SlidesRead.open(
                file,
                show -> show.getSlides().get(4).getShapes().stream()
                        .filter(XSLFTable.class::isInstance)
                        .map(XSLFTable.class::cast)
                        .allMatch(t -> t.getCTTable().getTblPr().getFirstRow()));
        assertThat(flagged).isTrue();
        String described = SlidesRead.open(
                file, show -> show.getSlides().get(4).getXmlObject().toString());
        assertThat(described).contains("descr=\"Numbers of three devices\"", "lang=\"en-GB\"");
    }

    @Test
    @DisplayName("links lead to the slides they name, and one that leads nowhere is refused")
    void links() throws IOException {
        assertThat(SlidesRead.of(written(deck(Look.PLAIN))).get(3).links()).containsExactly(5, 1);
        assertThatThrownBy(() -> written(DeckDraft.of(
                        DeckDraft.slide("a", "Title", new Part.Index(List.of(new Part.Entry("?", "nowhere")))))))
                .hasMessageContaining("nowhere");
    }

    @Test
    @DisplayName("the same talk gives the same bytes, dated by its edition and by no clock")
    void sameBytes() throws Exception {
        var first = Files.readAllBytes(written(deck(Look.PLAIN)));
        // archives keep time in steps of two seconds
        Thread.sleep(2100);

        assertThat(Files.readAllBytes(written(deck(Look.PLAIN)))).isEqualTo(first);
        SlidesRead.open(temporary.resolve("talk.pptx"), show -> {
            var core = show.getProperties().getCoreProperties();
            assertThat(core.getCreated().toInstant()).hasToString("2026-11-20T00:00:00Z");
            assertThat(core.getModified().toInstant()).hasToString("2026-11-20T00:00:00Z");
            assertThat(core.getTitle()).isEqualTo("Three devices");
            return core;
        });
    }

    @Test
    @DisplayName("the masters of a house are taken over, its slides are not; a template is written as a presentation")
    void house() throws Exception {
        var look = look(house(new Dimension(960, 540), new Rectangle2D.Double(60, 30, 840, 90), 32, Color.BLACK, true));
        var file = written(deck(look));

        assertThat(SlideWriter.unfit(look)).isEmpty();
        assertThat(SlideWriter.faults(deck(look))).isEmpty();
        assertThat(SlidesRead.of(file)).hasSize(5).noneMatch(s -> s.all().contains("A slide of the house"));
        assertThat(SlidesRead.of(file)).allMatch(s -> s.layout().equals("Title Only"));
        try (var pack = OPCPackage.open(file.toFile())) {
            assertThat(pack.getPartsByContentType(XSLFRelation.MAIN.getContentType()))
                    .hasSize(1);
        }
        Rectangle2D title = SlidesRead.open(
                file,
                show -> ((XSLFTextShape) show.getSlides().get(0).getShapes().get(0)).getAnchor());
        assertThat(title).isEqualTo(new Rectangle2D.Double(60, 30, 840, 90));
        assertThat(new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("A slide of the house");
    }

    @Test
    @DisplayName("what of a house cannot be used or read is found before anything is written")
    void unfit() throws IOException {
        var wide = new Dimension(960, 540);
        var place = new Rectangle2D.Double(60, 30, 840, 90);

        assertThat(SlideWriter.unfit(look(house(new Dimension(720, 540), place, 32, Color.BLACK, false))))
                .contains("not-wide");
        assertThat(SlideWriter.unfit(
                        look(house(wide, new Rectangle2D.Double(60, 30, 840, 400), 32, Color.BLACK, false))))
                .contains("no-room");
        assertThat(SlideWriter.unfit(look("no presentation".getBytes(java.nio.charset.StandardCharsets.UTF_8))))
                .contains("unreadable");
        assertThat(SlideWriter.faults(deck(look(house(wide, place, 20, Color.BLACK, false)))))
                .anyMatch(f -> f.rule() == Rule.SMALLEST_TEXT);
        assertThat(SlideWriter.faults(deck(look(house(wide, place, 32, Color.LIGHT_GRAY, false)))))
                .anyMatch(f -> f.rule() == Rule.CONTRAST);
    }

    private static Look look(byte[] slides) {
        return new Look(
                "", Look.Paper.A4, "Arial", Optional.empty(), Optional.of(new Look.Content("house.potx", slides)));
    }

    /** A presentation of a house with one slide of its own, saved as a template if wanted. */
    private static byte[] house(Dimension size, Rectangle2D place, double titleSize, Color ink, boolean template)
            throws IOException {
        try (var show = new XMLSlideShow()) {
            show.setPageSize(size);
            var layout = show.getSlideMasters().get(0).getLayout(SlideLayout.TITLE_ONLY);
            for (var shape : layout.getPlaceholders()) {
                if (shape.getTextType() == Placeholder.TITLE) {
                    shape.setAnchor(place);
                    var run = shape.getTextParagraphs().get(0).getTextRuns().get(0);
                    run.setFontSize(titleSize);
                    var level = shape.getTextBody()
                            .getXmlObject()
                            .getLstStyle()
                            .addNewLvl1PPr()
                            .addNewDefRPr();
                    level.setSz((int) (titleSize * 100));
                    level.addNewSolidFill()
                            .addNewSrgbClr()
                            .setVal(new byte[] {(byte) ink.getRed(), (byte) ink.getGreen(), (byte) ink.getBlue()});
                }
            }
            show.createSlide(layout).getPlaceholder(0).setText("A slide of the house");
            if (template) {
                show.getPackage()
                        .replaceContentType(
                                XSLFRelation.MAIN.getContentType(),
                                XSLFRelation.PRESENTATIONML_TEMPLATE.getContentType());
            }
            var out = new ByteArrayOutputStream();
            show.write(out);
            assertThat(new ByteArrayInputStream(out.toByteArray()).available()).isPositive();
            return out.toByteArray();
        }
    }
}
