package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.AuthorsTexts;
import comparand.support.BookRows;
import comparand.support.BookRows.BookCell;
import comparand.support.Built;
import comparand.support.TaggedPdf;
import comparand.support.TaggedPdf.Element;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Documents in German: the tool's own words are German, its numbers have a comma, and it says neither more nor less than in
 * English. What authors, sources and raw files say stays as it is, and so do findings, which are the tool's own English.
 */
class GermanOutputsTest {

    private static final Pattern FORBIDDEN = Pattern.compile(
            "\\b(?:bewiesen\\w*|bewies\\w*|beweis\\w*|überlegen\\w*|unterlegen\\w*|gleichwertig\\w*|äquivalen\\w*|\\w*signifikan\\w*"
                    + "|trends?|identisch\\w*|kein(?:en)? Effekte?|keine Effekte|keine Wirkung"
                    + "|kein(?:en)? Unterschied(?!\\s+so\\s+groß\\s+wie\\b)|keine Unterschiede|negatives? Ergebnis\\w*)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(?:the|of|with|and|from|not|is|are|were|for|by|at|to|our|their|this|that|than|which|whether|has|have"
                    + "|reported|published|compared|value|values|device|devices|margin|higher|lower|units?|runs?|cases?|samples"
                    + "|hospitals?|differs?|settled|unknown|maker|page|table|row|figure|flow|blood|drop|mean|between)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    /** A thousand and more is grouped with a point, and so is a date in a list of references. */
    private static final Pattern POINT = Pattern.compile("(?<![\\d.])(?!\\d+\\.\\d+\\.)\\d+\\.\\d(?!\\d\\d(?!\\d))");

    private static final Pattern PARAGRAPH = Pattern.compile("(?s)<(w|a):p[ >].*?</\\1:p>");
    private static final Pattern RUN = Pattern.compile("(?s)<(?:w|a):t(?: [^>]*)?>([^<]*)<");

    private static Built german() {
        return Built.german(Libraries.DEMO);
    }

    @Test
    @DisplayName("no output in German claims more than an interval can say")
    void forbidden() throws IOException {
        assertThat(texts()).hasSizeGreaterThan(500);
        assertThat(texts().filter(t -> FORBIDDEN.matcher(t).find())).isEmpty();
        assertThat("kein Unterschied so groß wie 5 mL").doesNotContainPattern(FORBIDDEN);
        assertThat(List.of("kein Unterschied", "nicht signifikant", "ein Trend", "ist überlegen", "Äquivalenz"))
                .allSatisfy(t -> assertThat(t).containsPattern(FORBIDDEN));
    }

    @Test
    @DisplayName("no English word of the tool is left in a German document")
    void noEnglish() throws IOException {
        var authors = AuthorsTexts.of(Path.of("evidence"), german().results());

        assertThat(texts().map(authors::without).filter(t -> ENGLISH.matcher(t).find()))
                .isEmpty();
    }

    @Test
    @DisplayName("every number that the tool prints has a comma")
    void comma() throws IOException {
        var authors = AuthorsTexts.of(Path.of("evidence"), german().results());

        assertThat(texts().filter(t -> t.matches("(?s).*\\d,\\d.*"))).hasSizeGreaterThan(300);
        assertThat(texts().map(authors::without).filter(t -> POINT.matcher(t).find()))
                .isEmpty();
    }

    @Test
    @DisplayName("both languages give the same answers to the same pairs, to the last digit")
    void sameAnswers() {
        assertThat(found(german().results()))
                .hasSizeGreaterThan(60)
                .isEqualTo(found(Built.demo().results()));
    }

    private static List<String> found(JsonNode results) {
        var found = new ArrayList<String>();
        for (var pair : results.get("pairs")) {
            var answer = pair.get("answer");
            found.add(String.join(
                    " | ",
                    pair.get("ours").asText(),
                    pair.get("theirs").asText(),
                    pair.get("standing").asText(),
                    answer.get("kind").asText(),
                    answer.path("difference").path("verdict").asText(),
                    answer.path("difference").path("value").asText(),
                    answer.path("difference").path("interval").toString()));
        }
        return found;
    }

    @Test
    @DisplayName("documents say that they are in German, and formats of numbers keep the point that programs expect")
    void tagged() throws IOException {
        var workbook = german().folder().resolve(Libraries.WORKBOOK);

        assertThat(Files.readString(german().folder().resolve(Libraries.TABLE), StandardCharsets.ISO_8859_1))
                .containsPattern("/Lang\\s*\\(de\\)");
        var formats = BookRows.read(workbook, GermanOutputsTest::formats);
        assertThat(formats).anyMatch(f -> f.startsWith("0.0")).noneMatch(f -> f.matches(unquoted("0,0")));
        assertThat(BookRows.<String>read(
                        workbook,
                        b -> b.getProperties()
                                .getCoreProperties()
                                .getUnderlyingProperties()
                                .getLanguageProperty()
                                .orElse("")))
                .isEqualTo("de");
    }

    /** Of every part of an office file that a reader sees, notes of slides too. */
    private static List<String> paragraphs(Path file) throws IOException {
        var paragraphs = new ArrayList<String>();
        try (var zip = new ZipFile(file.toFile())) {
            for (var entry : Collections.list(zip.entries())) {
                if (entry.getName().matches("word/document.xml|ppt/(slides|notesSlides)/[^/]*.xml")) {
                    var xml = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                    PARAGRAPH
                            .matcher(xml)
                            .results()
                            .map(p -> RUN.matcher(p.group())
                                    .results()
                                    .map(r -> r.group(1))
                                    .collect(Collectors.joining()))
                            .map(t -> t.replace("&quot;", "\"")
                                    .replace("&lt;", "<")
                                    .replace("&amp;", "&"))
                            .forEach(paragraphs::add);
                }
            }
        }
        return paragraphs;
    }

    private static String unquoted(String digits) {
        return "(?:[^\"]|\"[^\"]*\")*" + digits + "(?:[^\"]|\"[^\"]*\")*";
    }

    private static List<String> formats(XSSFWorkbook book) {
        return List.copyOf(book.getStylesSource().getNumberFormats().values());
    }

    /** Every text of the German documents; numbers that cells hold are shown as the reader's own program shows them. */
    private static Stream<String> texts() throws IOException {
        var folder = german().folder();
        var workbook = folder.resolve(Libraries.WORKBOOK);
        var texts = new ArrayList<String>();
        BookRows.tables(workbook)
                .forEach(r -> r.cells().stream()
                        .filter(c -> c.number().isEmpty())
                        .map(BookCell::shown)
                        .forEach(texts::add));
        BookRows.beside(workbook).stream()
                .filter(t -> !t.matches("[-\u2212]?[\\d.]+(E-?\\d+)?"))
                .forEach(texts::add);
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted().toList()) {
                var name = file.toString();
                if (name.endsWith(".pdf")) {
                    var pdf = TaggedPdf.of(file);
                    pdf.elements().stream()
                            .flatMap(Element::all)
                            .filter(e -> e.children().isEmpty())
                            .map(Element::text)
                            .forEach(texts::add);
                    texts.addAll(pdf.artifacts());
                } else if (name.endsWith(".docx") || name.endsWith(".pptx")) {
                    texts.addAll(paragraphs(file));
                } else if (name.endsWith(".html")) {
                    var page = Jsoup.parse(file);
                    // lines of figures are broken for their width; as words they stand in the other documents
                    page.select("#exploration, style, script, svg").remove();
                    page.getAllElements().stream().map(e -> e.ownText()).forEach(texts::add);
                } else if (name.endsWith(".txt")) {
                    texts.add(Files.readString(file));
                }
            }
        }
        return texts.stream().map(t -> t.replaceAll("[\\s\u00a0]+", " "));
    }
}
