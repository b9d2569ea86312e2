package comparand.output;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.Built;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Element;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The evidence table as a file: fonts, bookmarks, tags, tables over several pages, notes, properties. */
class EvidencePdfTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every page is A4 landscape, and every font is embedded and gives its letters back as text")
    void pagesAndFonts(Built built) throws IOException {
        try (var document = open(built)) {
            int fonts = 0;
            for (var page : document.getPages()) {
                boolean turned = page.getRotation() % 180 != 0;
                var box = page.getMediaBox();
                assertThat(turned ? box.getHeight() : box.getWidth()).isBetween(841f, 843f);
                assertThat(turned ? box.getWidth() : box.getHeight()).isBetween(594f, 596f);
                for (var name : page.getResources().getFontNames()) {
                    var font = page.getResources().getFont(name);
                    fonts++;
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getCOSObject().containsKey(COSName.TO_UNICODE))
                            .isTrue();
                }
            }
            assertThat(fonts).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("there is a bookmark for every chapter, in order, and it leads to the page with that heading")
    void bookmarks(Built built) throws IOException {
        var headings = pdf(built).all("H1");
        try (var document = open(built)) {
            var outline = requireNonNull(document.getDocumentCatalog().getDocumentOutline());
            var titles = new ArrayList<String>();
            for (var item : outline.children()) {
                var page = document.getPages().indexOf(requireNonNull(item.findDestinationPage(document)));
                var heading = headings.get(titles.size());
                assertThat(item.getTitle()).isEqualTo(heading.text());
                assertThat(heading.pages()).containsExactly(page);
                titles.add(item.getTitle());
            }
            assertThat(titles).hasSameSizeAs(headings).doesNotHaveDuplicates().hasSizeGreaterThan(8);
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("there is a chapter for every question of the dossier, in its order, with its unit")
    void chapters(Built built) {
        var headings = pdf(built).all("H1").stream().map(Element::text).toList();
        var questions = Built.all(built.results().get("questions"));

        assertThat(headings.get(0)).isEqualTo("What can be said");
        for (int i = 0; i < questions.size(); i++) {
            var question = questions.get(i);
            assertThat(headings.get(i + 1))
                    .containsIgnoringCase(question.get("name").asText())
                    .contains("(" + question.get("symbol").asText() + ")");
        }
        assertThat(headings.get(questions.size() + 1)).isEqualTo("What is not known");
        assertThat(headings.get(headings.size() - 1)).isEqualTo("Cautions");
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the file is tagged: marked, with a language, a title that is shown, and a structure tree")
    void tagged(Built built) throws IOException {
        try (var document = open(built)) {
            var catalog = document.getDocumentCatalog();
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getStructureTreeRoot()).isNotNull();
            assertThat(catalog.getStructureTreeRoot().getParentTree()).isNotNull();
            assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
            assertThat(document.getPages())
                    .allSatisfy(p -> assertThat(p.getStructParents()).isNotNegative());
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every letter that is printed belongs to an element of the structure or is marked as beside the text")
    void everyLetterIsTagged(Built built) throws IOException {
        var pdf = pdf(built);
        long marked = pdf.glyphs().stream()
                .mapToLong(g -> g.text().replaceAll("\\s", "").length())
                .sum();
        long inElements = Stream.concat(
                        pdf.elements().stream()
                                .flatMap(Element::all)
                                .filter(e -> e.children().isEmpty())
                                .flatMap(e -> Stream.of(e.text(), e.marks())),
                        pdf.artifacts().stream())
                .mapToLong(t -> t.replaceAll("\\s", "").length())
                .sum();
        var stripper = new PDFTextStripper();
        stripper.setSuppressDuplicateOverlappingText(false);
        try (var document = open(built)) {
            long printed = stripper.getText(document).replaceAll("\\s", "").length();
            assertThat(marked).isEqualTo(printed).isEqualTo(inElements).isGreaterThan(5000);
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "tables are tables: headings with their scope, rows with as many cells as there are headings, none empty")
    void tables(Built built) {
        var tables = pdf(built).all("Table");

        assertThat(tables).hasSizeGreaterThan(8);
        for (var table : tables) {
            assertThat(table.children().stream().map(Element::type)).containsExactly("THead", "TBody");
            var headings = table.children().get(0).all("TH");
            assertThat(headings).isNotEmpty().allSatisfy(h -> {
                assertThat(h.scope()).isEqualTo("Column");
                assertThat(h.text()).isNotBlank();
            });
            var rows = table.children().get(1).all("TR");
            assertThat(rows).isNotEmpty().allSatisfy(row -> {
                assertThat(row.children()).hasSameSizeAs(headings);
                assertThat(row.children()).allSatisfy(cell -> {
                    assertThat(cell.text()).isNotBlank();
                    assertThat(cell.type()).isIn("TH", "TD");
                    assertThat(cell.scope()).isEqualTo(cell.type().equals("TH") ? "Row" : "");
                });
            });
        }
        assertThat(tables.stream().flatMap(t -> t.children().get(1).all("TH").stream()))
                .isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("headings come in order: under the title chapters, under chapters their parts, none skipped")
    void headingLevels(Built built) {
        assertThat(pdf(built).elements()).hasSize(1);
        var sections = pdf(built).elements().get(0).children();

        assertThat(sections.subList(1, sections.size())).isNotEmpty().allSatisfy(section -> {
            assertThat(section.type()).isEqualTo("Sect");
            assertThat(section.children().get(0).type()).isEqualTo("H1");
            assertThat(section.all("H1")).hasSize(1);
        });
    }

    @Test
    @DisplayName("a table that goes on over the page repeats its headings there, beside the text")
    void headingsRepeat() {
        var pdf = pdf(Built.demo());
        var broken = pdf.all("Table").stream().filter(t -> t.pages().size() > 1).toList();

        assertThat(broken).isNotEmpty();
        for (var table : broken) {
            var headings = String.join(
                    " ",
                    table.children().get(0).all("TH").stream()
                            .map(Element::text)
                            .toList());
            assertThat(table.pages().tailSet(table.pages().first() + 1))
                    .allSatisfy(page -> assertThat(pdf.artifacts().get(page)).contains(headings));
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no row begins on one page and ends on the next, as long as a page could hold it")
    void rowsStayWhole(Built built) {
        assertThat(pdf(built).all("TR"))
                .hasSizeGreaterThan(20)
                .allSatisfy(row -> assertThat(row.pages()).as(row.text()).hasSize(1));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "notes are lettered in the order in which the table calls them, each is called, and each call has a note")
    void notes(Built built) {
        int called = 0;
        for (var section : pdf(built).elements().get(0).children()) {
            for (int i = 0; i < section.children().size(); i++) {
                if (!section.children().get(i).type().equals("Table")) {
                    continue;
                }
                var calls = section.children()
                        .get(i)
                        .all()
                        .flatMap(e -> Stream.of(e.marks().split(", ")))
                        .filter(m -> !m.isEmpty())
                        .distinct()
                        .toList();
                assertThat(notesBehind(section.children(), i)).isEqualTo(calls).isSorted();
                assertThat(calls.isEmpty() || calls.get(0).equals("a")).isTrue();
                called += calls.size();
            }
        }
        assertThat(called).isPositive();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("title, subject, author, language and the day of the report are properties")
    void properties(Built built) throws IOException {
        var run = built.results().get("run");
        try (var document = open(built)) {
            var information = document.getDocumentInformation();
            assertThat(information.getTitle()).isEqualTo(run.get("title").asText());
            assertThat(information.getSubject()).isEqualTo(run.get("question").asText());
            assertThat(information.getAuthor()).isEqualTo(run.get("prepared-by").asText());
            assertThat(information.getCreationDate().toInstant().toString())
                    .startsWith(run.get("as-of").asText());
            assertThat(information.getModificationDate()).isEqualTo(information.getCreationDate());
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("title and author stand in XMP metadata too, where archives and screen readers look for them")
    void metadata(Built built) throws IOException {
        var run = built.results().get("run");
        try (var document = open(built)) {
            var metadata = document.getDocumentCatalog().getMetadata();
            assertThat(metadata).isNotNull();
            assertThat(new String(metadata.toByteArray(), StandardCharsets.UTF_8))
                    .contains("dc:title", run.get("title").asText())
                    .contains("dc:creator", run.get("prepared-by").asText());
        }
    }

    @Test
    @DisplayName("the signs of the trade come back as text: ≠ ≈ ≤ ≥ ± ° µ ² ₂ Δ − –")
    void signs() {
        var text = Built.demo().pdf();
        assertThat(List.of("≠", "≈", "≤", "≥", "±", "°", "µ", "²", "₂", "Δ", "−", "–"))
                .allSatisfy(sign -> assertThat(text).contains(sign));
    }

    /** The letters of the notes that stand behind a table. */
    private static List<String> notesBehind(List<Element> children, int table) {
        var letters = new ArrayList<String>();
        for (int i = table + 1; i < children.size(); i++) {
            var text = children.get(i).text();
            if (!children.get(i).type().equals("P") || !text.matches("[a-z]{1,2} .*")) {
                break;
            }
            letters.add(text.substring(0, text.indexOf(' ')));
        }
        return letters;
    }

    private static PDDocument open(Built built) throws IOException {
        return Loader.loadPDF(file(built).toFile());
    }

    private static TaggedPdf pdf(Built built) {
        return TaggedPdf.of(file(built));
    }

    private static Path file(Built built) {
        return built.folder().resolve(Libraries.TABLE);
    }
}
