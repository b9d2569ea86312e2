package comparand.write.html;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import comparand.document.Block;
import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Note;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Prose;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Inline;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.chart.Diagram;
import comparand.document.exploration.Exploration;
import comparand.document.exploration.Page;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text is text wherever it stands: a parser of HTML gives every one back letter by letter, and no element that is not ours. */
class PageEscapingTest {

    /** Ends tags, comments, attributes, strings of JSON and of style sheets, and entities. */
    private static final String NASTY =
            "</script></style></title></svg><!--<b onclick=x>\"'`\\&amp;&lt;]]>{}\u2028\u2029\u20ac\ud83d\ude00</b>";

    /** A text of its own for each place, so that none is taken for another. */
    private static String nasty(String place) {
        return place + NASTY;
    }

    private static Edition edition() {
        return new Edition(
                nasty("title"),
                nasty("subtitle"),
                LocalDate.of(2026, 11, 20),
                nasty("by"),
                nasty("tool"),
                "01234567",
                nasty("state"),
                List.of(nasty("mark")),
                List.of(nasty("caution")),
                "en");
    }

    private static Page page() {
        var table = new Block.Table(
                "Nasty",
                nasty("caption"),
                List.of(
                        new Column(nasty("heading"), 60, Align.LEFT, true),
                        new Column("b", 30, Align.RIGHT, false),
                        new Column("c", 30, Align.LEFT, false)),
                List.of(List.of(
                        Cell.words(nasty("words"), nasty("marks")),
                        new Cell.Figure(1, new BigDecimal("1.0"), nasty("before"), nasty("after"), '.', ""),
                        new Cell.Link(nasty("link"), "Na<me"))),
                List.of(new Note(nasty("note-mark"), nasty("note"))));
        var chart = new Diagram(
                "a-chart",
                nasty("message"),
                nasty("alternative"),
                List.of(new Diagram.Step("", new Diagram.Card(List.of("<&\">")), Optional.empty())),
                List.of());
        var section = new Section(
                "Na<me",
                nasty("section"),
                List.of(
                        new Paragraph(nasty("paragraph"), Paragraph.Style.BODY),
                        new Paragraph(nasty("point"), Paragraph.Style.POINT),
                        new Paragraph(nasty("hang") + "\t" + nasty("reference"), Paragraph.Style.REFERENCE),
                        new Prose(
                                "prose",
                                List.of(
                                        new Inline.Plain(nasty("plain"), true),
                                        new Inline.Held("held", nasty("held")),
                                        new Inline.Cited(nasty("cited"), true)),
                                Paragraph.Style.BODY),
                        new Block.Heading(nasty("below")),
                        table,
                        new Block.Graph(chart, nasty("figure")),
                        new Block.Ladder(
                                "a.ladder",
                                nasty("ladder"),
                                nasty("lead"),
                                List.of(new Block.Rung(nasty("kind"), nasty("rung"), nasty("formula"))))));
        return new Page(
                new Document("page", Document.Form.SCREEN, edition(), Look.PLAIN, List.of(section)),
                Samples.exploration(nasty("json")));
    }

    private static final String HTML = DemoPage.html(page());
    private static final Element READ = Jsoup.parse(HTML);

    private static String text(String selector) {
        return requireNonNull(READ.selectFirst(selector), selector).wholeText();
    }

    @Test
    @DisplayName("every text of every block comes back as it went in")
    void everyText() {
        assertThat(text("title")).isEqualTo(nasty("title"));
        assertThat(text("h1")).isEqualTo(nasty("title"));
        assertThat(text(".subtitle")).isEqualTo(nasty("subtitle"));
        assertThat(text(".marks")).isEqualTo(nasty("mark"));
        assertThat(text("footer")).contains(nasty("caution"), nasty("by"), nasty("state"), nasty("tool"));
        assertThat(text("nav a")).isEqualTo(nasty("section"));
        assertThat(text("h2")).isEqualTo(nasty("section"));
        assertThat(text("h3")).isEqualTo(nasty("below"));
        assertThat(text("section > p")).isEqualTo(nasty("paragraph"));
        assertThat(text("section > ul > li")).isEqualTo(nasty("point"));
        assertThat(text(".hang")).isEqualTo(nasty("hang"));
        assertThat(text(".reference")).endsWith(nasty("reference"));
        assertThat(text("i")).isEqualTo(nasty("plain"));
        assertThat(READ.wholeText()).contains(nasty("held") + nasty("cited"));
        assertThat(text("caption")).isEqualTo(nasty("caption"));
        assertThat(text("thead th")).isEqualTo(nasty("heading"));
        assertThat(text("tbody th .v")).isEqualTo(nasty("words"));
        assertThat(text("tbody th sup")).isEqualTo(nasty("marks"));
        assertThat(text("tbody td .v")).isEqualTo(nasty("before") + "1.0" + nasty("after"));
        assertThat(text("tbody td a .v")).isEqualTo(nasty("link"));
        assertThat(text(".note")).isEqualTo(nasty("note-mark") + " " + nasty("note"));
        assertThat(text("svg.wide > title")).isEqualTo(nasty("message"));
        assertThat(text("svg.narrow > desc")).isEqualTo(nasty("alternative"));
        assertThat(text("svg.narrow text")).isEqualTo("<&\">");
        assertThat(text("figcaption")).isEqualTo(nasty("figure"));
        assertThat(text("summary")).isEqualTo(nasty("ladder"));
        assertThat(text("details > p")).isEqualTo(nasty("lead"));
        assertThat(text(".kind")).isEqualTo(nasty("kind"));
        assertThat(text("li > p:not([class])")).isEqualTo(nasty("rung"));
        assertThat(text(".formula")).isEqualTo(nasty("formula"));
    }

    @Test
    @DisplayName("so do attributes")
    void attributes() {
        assertThat(READ.select("meta[name=description]").attr("content")).isEqualTo(nasty("subtitle"));
        assertThat(READ.select("tbody th").attr("data-label")).isEqualTo(nasty("heading"));
        assertThat(READ.select(".frame").attr("aria-label"))
                .isEqualTo("Table: " + nasty("section") + ": " + nasty("caption"));
        assertThat(READ.select("tbody a").attr("href")).isEqualTo("#s-na-me");
    }

    @Test
    @DisplayName("no text becomes an element, and none ends the style or the scripts before their end")
    void nothingOfTheirs() {
        assertThat(READ.select("b, [onclick]")).isEmpty();
        assertThat(READ.select("style")).hasSize(1);
        assertThat(READ.select("script")).hasSize(2);
        assertThat(READ.select("body")).hasSize(1);
        assertThat(requireNonNull(READ.selectFirst("style")).data())
                .endsWith("}\n")
                .doesNotContain("<");
    }

    @Test
    @DisplayName("the data come back from JSON, and hold nothing that ends a script element or begins a comment")
    void json() throws IOException {
        var data = requireNonNull(READ.selectFirst("script#exploration")).data();
        var read = new ObjectMapper().readTree(data);

        assertThat(data).doesNotContain("<", "\u2028", "\u2029").contains("\\u003c");
        assertThat(read.at("/run/marks/0").asText()).isEqualTo(nasty("json"));
        assertThat(read.at("/format").asText()).isEqualTo(Exploration.FORMAT);
        assertThat(read.at("/words").properties()).extracting(e -> e.getKey()).isSorted();
        assertThat(read.at("/run").has("decimalSign")).isTrue();
    }

    @Test
    @DisplayName("absent numbers are left out of the data, not written as null")
    void absent() throws IOException {
        var question = new Exploration(
                Exploration.FORMAT,
                Samples.exploration().run(),
                new TreeMap<>(),
                List.of(),
                List.of(),
                List.of(Samples.question()));
        JsonNode read = new ObjectMapper().readTree(ExplorationJson.of(question));

        assertThat(read.at("/questions/0").has("margin")).isFalse();
        assertThat(read.at("/questions/0/pools/0").has("row")).isFalse();
        assertThat(read.at("/questions/0/columns/theirs").asInt()).isEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 0x0B, 0x1F, 0x7F, 0x9F, 0xD800, 0xFDD0, 0xFFFE, 0x1FFFF})
    @DisplayName("what no document may hold becomes the sign for a sign that is missing (HTML 13.2.3.5)")
    void notAllowed(int c) {
        assertThat(Html.escaped("a" + Character.toString(c) + "b")).isEqualTo("a\ufffdb");
    }

    @Test
    @DisplayName("text in the style sheet is a string whatever it holds (CSS Syntax 3, 4.3.5 and 4.3.7)")
    void styleString() {
        assertThat(Style.quoted("a\"b\\c</style>\n")).isEqualTo("\"a\\22 b\\5c c\\3c /style\\3e \\a \"");
    }
}
