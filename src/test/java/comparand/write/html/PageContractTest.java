package comparand.write.html;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Document;
import comparand.document.Look;
import comparand.document.Section;
import comparand.document.exploration.Exploration;
import comparand.document.exploration.Page;
import java.util.List;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What scripts and readers find by its place: the parts of the page and their names; roles by WAI-ARIA 1.2. */
class PageContractTest {

    private static final Page PAGE = DemoPage.page();
    private static final String HTML = DemoPage.html(PAGE);
    private static final Element READ = Jsoup.parse(HTML);

    private static Element one(String selector) {
        return requireNonNull(READ.selectFirst(selector), selector);
    }

    private static List<Table> tables() {
        return PAGE.document().sections().stream()
                .flatMap(s -> s.blocks().stream())
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
    }

    @Test
    @DisplayName("the parts stand in their order, and the places for controls are empty and hidden")
    void parts() {
        assertThat(HTML).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
        assertThat(READ.select("body > *").eachAttr("class")).startsWith("skip", "front", "sheet");
        assertThat(one("body").child(0).attr("href"))
                .isEqualTo("#" + one("main").id());
        var main = one("main").children();
        assertThat(main.subList(0, 3)).extracting(Element::id).containsExactly("exploring", "controls", "said");
        assertThat(main.subList(0, 3)).allMatch(e -> e.childNodes().isEmpty());
        assertThat(READ.select("#exploring[hidden][role=status], #controls[hidden], #said[aria-live=polite]"))
                .hasSize(3);
        assertThat(READ.select("h1")).hasSize(1);
        assertThat(READ.select("nav a").eachText())
                .containsExactlyElementsOf(READ.select("main > section > h2").eachText());
    }

    @Test
    @DisplayName("sections are named by their headings, and their ids are made of their names")
    void sections() {
        var sections = READ.select("main > section");
        assertThat(sections).hasSameSizeAs(PAGE.document().sections());
        assertThat(sections)
                .allSatisfy(s -> assertThat(requireNonNull(s.selectFirst("h2")).id())
                        .isEqualTo(s.attr("aria-labelledby"))
                        .isEqualTo(s.id() + "-h"));
        assertThat(READ.select("section#s-pressure-drop")).hasSize(1);
    }

    @Test
    @DisplayName(
            "tables keep rows and columns in order, and every cell can be found by its numbers and knows its heading")
    void everyCell() {
        for (var table : tables()) {
            var id = "t-" + table.id();
            for (int r = 0; r < table.rows().size(); r++) {
                var cells = one("#" + id + " tbody > #" + id + "-r" + r).children();
                assertThat(cells).hasSameSizeAs(table.columns());
                for (int c = 0; c < cells.size(); c++) {
                    var column = table.columns().get(c);
                    var cell = cells.get(c);
                    assertThat(cell.attr("data-label")).isEqualTo(column.heading());
                    assertThat(cell.tagName() + cell.attr("role") + cell.attr("scope"))
                            .isEqualTo(column.names() ? "throwheaderrow" : "tdcell");
                    assertThat(cell.select("span.v"))
                            .singleElement()
                            .satisfies(v -> assertThat(v.children()).isEmpty());
                    assertThat(cell.select("span.v").get(0).wholeText())
                            .isEqualTo(table.rows().get(r).get(c).shown());
                }
            }
        }
        assertThat(READ.select(
                        "table[role=table] > thead[role=rowgroup] > tr[role=row] > th[role=columnheader][scope=col]"))
                .hasSize(tables().stream().mapToInt(t -> t.columns().size()).sum());
        assertThat(READ.select("table > caption")).hasSameSizeAs(tables());
    }

    @Test
    @DisplayName("what can be moved sideways can be reached by keyboard and has a name of its own")
    void frames() {
        var wide = READ.select(".frame.wide");
        assertThat(wide)
                .isNotEmpty()
                .allMatch(f -> f.attr("tabindex").equals("0")
                        && f.attr("role").equals("region")
                        && !f.attr("aria-label").isBlank());
        assertThat(wide.eachAttr("aria-label")).doesNotHaveDuplicates();
        assertThat(READ.select(".frame > table")).hasSameSizeAs(tables());
    }

    @Test
    @DisplayName("each figure is drawn for wide and for narrow windows, and describes itself in both")
    void figures() {
        var figures = READ.select("figure");
        assertThat(figures).isNotEmpty().allSatisfy(f -> {
            assertThat(f.select("> svg.wide, > svg.narrow")).hasSize(2).allSatisfy(svg -> {
                assertThat(svg.attr("role")).isEqualTo("img");
                assertThat(svg.select("> title")).hasSize(1);
                assertThat(svg.select("> desc").text()).isNotBlank();
            });
            assertThat(f.id()).startsWith("f-");
        });
    }

    @Test
    @DisplayName("ladders fold up, and are found by their names")
    void ladders() {
        var ladders = PAGE.document().sections().stream()
                .flatMap(s -> s.blocks().stream())
                .filter(Block.Ladder.class::isInstance)
                .map(Block.Ladder.class::cast)
                .toList();
        assertThat(ladders).isNotEmpty().allSatisfy(l -> {
            var found = requireNonNull(READ.getElementById("v-" + l.name()));
            assertThat(found.tagName()).isEqualTo("details");
            assertThat(requireNonNull(found.selectFirst("summary")).wholeText()).isEqualTo(l.heading());
            assertThat(found.select("ol > li")).hasSameSizeAs(l.rungs());
        });
    }

    @Test
    @DisplayName("sections whose names differ in signs alone have ids of their own")
    void sameSlug() {
        var sections = List.of(new Section("Flow (a)", "One", List.of()), new Section("Flow [a]", "Two", List.of()));
        var document = new Document("page", Document.Form.SCREEN, Samples.edition("T"), Look.PLAIN, sections);
        var read = Jsoup.parse(DemoPage.html(new Page(document, Samples.exploration())));

        assertThat(read.select("section").eachAttr("id")).containsExactly("s-flow-a-", "s-flow-a--2");
        assertThat(read.select("nav a").eachAttr("href")).containsExactly("#s-flow-a-", "#s-flow-a--2");
    }

    @Test
    @DisplayName("words that are missing stop it")
    void missingWords() {
        var given = Samples.exploration();
        var silent = new Exploration(
                given.format(), given.run(), new TreeMap<>(), given.sources(), given.devices(), given.questions());
        var page = new Page(Samples.page(Samples.edition("T")).document(), silent);

        assertThatThrownBy(() -> DemoPage.html(page))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("page.skip");
    }
}
