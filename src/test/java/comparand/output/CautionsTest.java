package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.BookRows;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.TaggedPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every output carries, so that a page or a sheet that is torn off still says what it is. */
class CautionsTest {

    private static final String INVENTED = "Invented data";

    @TempDir
    Path temporary;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("results.json carries title, question, day, state, tool, fingerprint, invented data and all cautions")
    void results(Built built) {
        var run = run(built);

        assertThat(text(run, "title")).isNotBlank();
        assertThat(text(run, "question")).endsWith("?");
        assertThat(text(run, "as-of")).matches("\\d{4}-\\d{2}-\\d{2}");
        assertThat(text(run, "fixed")).isLessThanOrEqualTo(text(run, "as-of"));
        assertThat(text(run, "state")).isEqualTo("draft");
        assertThat(text(run, "tool")).matches("Comparand \\d+\\.\\d+\\.\\d+");
        assertThat(text(run, "fingerprint")).matches("[0-9a-f]{64}");
        assertThat(run.get("invented-data").asBoolean()).isTrue();
        assertThat(run.get("inputs")).isNotEmpty();
        asked(String.join(" ", cautions(built)));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the first sheet carries the same, each under its name, and the cautions word for word")
    void firstSheet(Built built) {
        var run = run(built);
        var rows = BookRows.tables(workbook(built)).stream()
                .filter(r -> r.table().equals("About"))
                .toList();
        var entries = rows.stream().collect(Collectors.groupingBy(r -> r.text("Item")));

        assertThat(rows).isNotEmpty().allSatisfy(r -> assertThat(r.sheet()).isEqualTo("Read first"));
        assertThat(BookRows.beside(workbook(built))).contains(text(run, "title"));
        assertThat(entries.keySet())
                .contains(
                        "Data", "Question", "This report speaks of", "State", "Made with", "Fingerprint of all inputs");
        var texts = rows.stream().map(r -> r.text("Entry")).toList();
        assertThat(texts)
                .contains(text(run, "question"), text(run, "as-of"), text(run, "state"), text(run, "tool"))
                .contains(text(run, "fingerprint").substring(0, 8))
                .containsAll(cautions(built))
                .anyMatch(t -> t.startsWith(INVENTED));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every sheet is printed with title, invented data, day, state, tool and fingerprint")
    void everySheet(Built built) {
        var run = run(built);
        BookRows.read(workbook(built), book -> {
            assertThat(BookRows.sheets(book)).allSatisfy(sheet -> {
                assertThat(sheet.getHeader().getLeft()).isEqualTo(text(run, "title"));
                assertThat(sheet.getHeader().getCenter()).startsWith(INVENTED);
                assertThat(sheet.getFooter().getLeft()).isEqualTo(imprint(run));
                assertThat(sheet.getFooter().getRight()).contains("&P").contains("&N");
            });
            return book;
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "every page of the PDF carries the title, invented data, day, state, tool and fingerprint, and its number")
    void everyPage(Built built) {
        var run = run(built);
        var pages = TaggedPdf.of(pdf(built)).artifacts();

        assertThat(pages).hasSizeGreaterThan(2);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i))
                    .startsWith(text(run, "title") + " " + INVENTED)
                    .contains(imprint(run))
                    .contains((i + 1) + " / " + pages.size());
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "the PDF begins with title, question, who prepared it and the state, and holds the cautions word for word")
    void pdfText(Built built) {
        var run = run(built);
        var paragraphs = TaggedPdf.of(pdf(built)).all("P").stream()
                .map(TaggedPdf.Element::text)
                .toList();

        assertThat(paragraphs.subList(0, 2)).containsExactly(text(run, "title"), text(run, "question"));
        assertThat(paragraphs.get(2)).isEqualTo(text(run, "prepared-by") + " · " + imprint(run));
        assertThat(paragraphs.get(3)).startsWith(INVENTED);
        assertThat(paragraphs).containsAll(cautions(built));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the properties of both files name the title, the fingerprint or tool, and that the data are invented")
    void properties(Built built) throws IOException {
        var run = run(built);
        try (var document = Loader.loadPDF(pdf(built).toFile())) {
            var information = document.getDocumentInformation();
            assertThat(information.getTitle()).isEqualTo(text(run, "title"));
            assertThat(information.getCreator()).isEqualTo(text(run, "tool"));
            assertThat(information.getKeywords())
                    .contains(text(run, "fingerprint").substring(0, 8))
                    .contains(INVENTED);
        }
        BookRows.read(workbook(built), book -> {
            var core = book.getProperties().getCoreProperties();
            assertThat(core.getTitle()).isEqualTo(text(run, "title"));
            assertThat(core.getDescription()).contains(INVENTED);
            assertThat(core.getLastModifiedByUser()).isEqualTo(text(run, "tool"));
            return book;
        });
    }

    @Test
    @DisplayName("a released report says so in every output, and no longer that it is a draft")
    void released() throws IOException {
        var built = changed("state: draft", "state: released");

        assertThat(text(run(built), "state")).isEqualTo("released");
        assertThat(TaggedPdf.of(pdf(built)).artifacts())
                .allSatisfy(p -> assertThat(p).contains(" · released · ").doesNotContain("draft"));
        assertThat(BookRows.beside(workbook(built)))
                .anyMatch(t -> t.contains(" · released · "))
                .noneMatch(t -> t.contains("draft"));
    }

    @Test
    @DisplayName("a report on real data does not say that they are invented")
    void realData() throws IOException {
        var built = changed("invented-data: yes", "invented-data: no");

        assertThat(run(built).get("invented-data").asBoolean()).isFalse();
        assertThat(TaggedPdf.of(pdf(built)).artifacts()).noneMatch(p -> p.contains(INVENTED));
        assertThat(BookRows.beside(workbook(built))).noneMatch(t -> t.contains(INVENTED));
    }

    private Built changed(String old, String by) throws IOException {
        var library =
                LibraryCopy.of(Path.of(Libraries.FILTERS).resolve("../..").normalize(), temporary.resolve("copy"));
        var dossier = library.resolve("dossiers/filters.yaml");
        LibraryCopy.edit(dossier, old, by);
        assertThat(Files.readString(dossier)).contains(by);
        return Built.of(dossier.toString());
    }

    /** What must be said, in whatever words. */
    private static void asked(String cautions) {
        assertThat(cautions)
                .contains("Not for treatment decisions")
                .contains("instructions for use and local protocols come first")
                .contains("licensed persons")
                .contains("local codes")
                .contains("not a medical device")
                .contains("accuracy was not verified");
    }

    private static JsonNode run(Built built) {
        return built.results().get("run");
    }

    private static List<String> cautions(Built built) {
        return Built.all(built.results().get("cautions")).stream()
                .map(JsonNode::asText)
                .toList();
    }

    private static String imprint(JsonNode run) {
        return String.join(
                " · ",
                text(run, "as-of"),
                text(run, "state"),
                text(run, "tool"),
                text(run, "fingerprint").substring(0, 8));
    }

    private static String text(JsonNode node, String key) {
        return node.get(key).asText();
    }

    private static Path workbook(Built built) {
        return built.folder().resolve(Libraries.WORKBOOK);
    }

    private static Path pdf(Built built) {
        return built.folder().resolve(Libraries.TABLE);
    }
}
