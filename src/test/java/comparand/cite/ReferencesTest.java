package comparand.cite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.cite.Item.Author;
import comparand.cite.Item.Field;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * References as the style guides themselves print them. The examples are those of the guides, from memory; where a guide
 * prints a hyphen between pages, the style file sets a dash.
 */
class ReferencesTest {

    private static final Item HALPERN = new Item(
            "halpern",
            "article-journal",
            "Solid-organ transplantation in HIV-infected patients",
            List.of(
                    Author.person("Halpern", "S. D."),
                    Author.person("Ubel", "P. A."),
                    Author.person("Caplan", "A. L.")),
            List.of(2002, 7, 25),
            Map.of(
                    Field.CONTAINER_TITLE,
                    "N Engl J Med",
                    Field.VOLUME,
                    "347",
                    Field.ISSUE,
                    "4",
                    Field.PAGE,
                    "284-287"));

    private static final Item ROSE = new Item(
            "rose",
            "article-journal",
            "Regulation of interstitial excitatory amino acid concentrations after cortical contusion injury",
            people(
                    "Rose M. E.",
                    "Huerbin M. B.",
                    "Melick J.",
                    "Marion D. W.",
                    "Palmer A. M.",
                    "Schiding J. K.",
                    "Kochanek P. M.",
                    "Graham S. H."),
            List.of(2002),
            Map.of(Field.CONTAINER_TITLE, "Brain Res", Field.VOLUME, "935", Field.ISSUE, "1-2", Field.PAGE, "40-46"));

    private static final Item GROUP = new Item(
            "group",
            "article-journal",
            "Hypertension, insulin, and proinsulin in participants with impaired glucose tolerance",
            List.of(Author.body("Diabetes Prevention Program Research Group")),
            List.of(2002),
            Map.of(Field.CONTAINER_TITLE, "Hypertension", Field.VOLUME, "40", Field.ISSUE, "5", Field.PAGE, "679-686"));

    private static final Item BANIT = new Item(
            "banit",
            "article-journal",
            "Intraoperative frozen section analysis in revision total joint arthroplasty",
            people("Banit D. M.", "Kaufer H.", "Hartford J. M."),
            List.of(2002),
            Map.of(Field.CONTAINER_TITLE, "Clin Orthop", Field.ISSUE, "401", Field.PAGE, "230-238"));

    private static final Item YOUNGSTER = new Item(
            "youngster",
            "article-journal",
            "Oral, capsulized, frozen fecal microbiota transplantation for relapsing Clostridium difficile infection",
            people("Youngster I.", "Russell G. H.", "Pindar C.", "Ziv-Baran T.", "Sauk J.", "Hohmann E. L."),
            List.of(2014),
            Map.of(
                    Field.CONTAINER_TITLE,
                    "JAMA",
                    Field.VOLUME,
                    "312",
                    Field.ISSUE,
                    "17",
                    Field.PAGE,
                    "1772-1778",
                    Field.DOI,
                    "10.1001/jama.2014.13875"));

    private static final Item GRADY = new Item(
            "grady",
            "article-journal",
            "Emotions in storybooks: A comparison of storybooks that represent ethnic and racial groups in the United"
                    + " States",
            people("Grady J. S.", "Her M.", "Moreno G.", "Perez C.", "Yelinek J."),
            List.of(2019),
            Map.of(
                    Field.CONTAINER_TITLE,
                    "Psychology of Popular Media Culture",
                    Field.VOLUME,
                    "8",
                    Field.ISSUE,
                    "3",
                    Field.PAGE,
                    "207-217",
                    Field.DOI,
                    "10.1037/ppm0000185"));

    private static final Item RABINOWITZ = new Item(
            "rabinowitz",
            "book",
            "Deepening group psychotherapy with men: Stories and insights for the journey",
            people("Rabinowitz F. E."),
            List.of(2019),
            Map.of(Field.PUBLISHER, "American Psychological Association", Field.DOI, "10.1037/0000132-000"));

    private static final Item MANUAL = new Item(
            "manual",
            "pamphlet",
            "Quillane 15: instructions for use",
            List.of(Author.body("Harrowmere Perfusion")),
            List.of(2024, 3),
            Map.of(Field.EDITION, "Revision C", Field.PUBLISHER, "Harrowmere Perfusion"));

    private static final Item PREPRINT = new Item(
            "preprint",
            "article",
            "Two small oxygenators",
            people("Ardley J."),
            List.of(2022, 12),
            Map.of(Field.DOI, "10.5555/x"));

    private static final List<Item> ALL =
            List.of(HALPERN, ROSE, GROUP, BANIT, YOUNGSTER, GRADY, RABINOWITZ, MANUAL, PREPRINT);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // Samples of Formatted References for Authors of Journal Articles, National Library of Medicine
                "NUMERIC | halpern | Halpern SD, Ubel PA, Caplan AL. Solid-organ transplantation in HIV-infected patients."
                        + " N Engl J Med. 2002 Jul 25;347(4):284–7.",
                "NUMERIC | group | Diabetes Prevention Program Research Group. Hypertension, insulin, and proinsulin in"
                        + " participants with impaired glucose tolerance. Hypertension. 2002;40(5):679–86.",
                "NUMERIC | banit | Banit DM, Kaufer H, Hartford JM. Intraoperative frozen section analysis in revision total"
                        + " joint arthroplasty. Clin Orthop. 2002;(401):230–8.",
                // AMA Manual of Style, 11th edition
                "AMA | youngster | Youngster I, Russell GH, Pindar C, Ziv-Baran T, Sauk J, Hohmann EL. Oral, capsulized,"
                        + " frozen fecal microbiota transplantation for relapsing Clostridium difficile infection. _JAMA_."
                        + " 2014;312(17):1772-1778. doi:10.1001/jama.2014.13875",
                // Publication Manual of the American Psychological Association, 7th edition
                "APA | grady | Grady, J. S., Her, M., Moreno, G., Perez, C., & Yelinek, J. (2019). Emotions in storybooks: A"
                        + " comparison of storybooks that represent ethnic and racial groups in the United States."
                        + " _Psychology of Popular Media Culture_, _8_(3), 207–217. https://doi.org/10.1037/ppm0000185",
                "APA | rabinowitz | Rabinowitz, F. E. (2019). _Deepening group psychotherapy with men: Stories and insights"
                        + " for the journey_. American Psychological Association. https://doi.org/10.1037/0000132-000",
            })
    @DisplayName("a reference is printed as the guide of its style prints it, italics too")
    void golden(Style style, String id, String printed) {
        assertThat(printed(style, "en", id)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NUMERIC | Harrowmere Perfusion. Quillane 15: instructions for use. Revision C. Harrowmere Perfusion; 2024.",
                "AMA | Harrowmere Perfusion. _Quillane 15: Instructions for Use_. Revision C. Harrowmere Perfusion; 2024.",
                "APA | Harrowmere Perfusion. (2024, March). _Quillane 15: instructions for use_ (Revision C)."
            })
    @DisplayName("instructions for use keep their revision in every style")
    void instructions(Style style, String printed) {
        assertThat(printed(style, "en", "manual")).isEqualTo(printed);
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    @DisplayName("what has nothing but a DOI can be found by it in every style")
    void doi(Style style) {
        assertThat(printed(style, "en", "preprint")).contains("10.5555/x");
    }

    @Test
    @DisplayName("more than six authors are six and others, in the numbered styles of medicine")
    void manyAuthors() {
        assertThat(printed(Style.NUMERIC, "en", "rose"))
                .startsWith("Rose ME, Huerbin MB, Melick J, Marion DW, Palmer AM, Schiding JK, et al. Regulation")
                .endsWith("Brain Res. 2002;935(1-2):40–6.");
    }

    @Test
    @DisplayName("numbers follow the order in which works are given, and three in a row become a range")
    void numbers() {
        var references = References.of(Style.NUMERIC, "en", ALL);
        assertThat(references.cite(List.of("rose"))).isEqualTo("(2)");
        assertThat(references.cite(List.of("group", "halpern", "rose"))).isEqualTo("(1–3)");
        assertThat(references.cite(List.of("halpern", "rose", "banit"))).isEqualTo("(1,2,4)");
        assertThat(references.cite(List.of("halpern", "group", "banit", "youngster", "rabinowitz", "manual")))
                .isEqualTo("(1,3–5,7,8)");
        assertThat(references.cited())
                .containsExactly("rose", "group", "halpern", "banit", "youngster", "rabinowitz", "manual");
        assertThat(references.entries().stream().map(Entry::label))
                .startsWith("1.", "2.", "3.")
                .hasSize(ALL.size());
        assertThat(references.entries().stream().map(Entry::id))
                .containsExactlyElementsOf(ALL.stream().map(Item::id).toList());
        assertThat(References.of(Style.AMA, "en", ALL).cite(List.of("halpern", "rose", "group")))
                .isEqualTo("1–3");
    }

    @Test
    @DisplayName("authors and years stand in the text where the style wants them, and the list is in their order")
    void authorAndYear() {
        var references = References.of(Style.APA, "en", ALL);
        assertThat(references.cite(List.of("manual", "grady")))
                .isEqualTo("(Grady et al., 2019; Harrowmere Perfusion, 2024)");
        assertThat(references.entries().stream().map(Entry::id)).startsWith("preprint", "banit", "group", "grady");
        assertThat(references.entries()).allSatisfy(e -> assertThat(e.label()).isEmpty());
    }

    @Test
    @DisplayName("a German text has German words in its references")
    void german() {
        assertThat(printed(Style.APA, "de", "manual")).contains("(2024, März)");
        assertThat(printed(Style.AMA, "de", "preprint")).contains("Dezember 2022");
    }

    @Test
    @DisplayName("what is not there cannot be cited, and two works do not share a name")
    void faults() {
        var references = References.of(Style.NUMERIC, "en", List.of(HALPERN));
        assertThatThrownBy(() -> references.cite(List.of("rose"))).hasMessageContaining("rose");
        assertThatThrownBy(() -> references.cite(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> References.of(Style.NUMERIC, "en", List.of(HALPERN, HALPERN)))
                .hasMessageContaining("halpern");
    }

    @Test
    @DisplayName("signs of markup and letters of all languages come through")
    void signs() {
        var item = new Item(
                "signs",
                "article-journal",
                "pH < 7.2 & ΔP in Köln",
                people("Möller Ü."),
                List.of(2020),
                Map.of(Field.CONTAINER_TITLE, "Perfusion", Field.VOLUME, "3"));
        assertThat(References.of(Style.NUMERIC, "en", List.of(item))
                        .entries()
                        .get(0)
                        .text())
                .isEqualTo("Möller Ü. pH < 7.2 & ΔP in Köln. Perfusion. 2020;3.");
    }

    private static String printed(Style style, String language, String id) {
        return References.of(style, language, ALL).entries().stream()
                .filter(e -> e.id().equals(id))
                .flatMap(e -> e.spans().stream())
                .map(s -> s.slanted() ? "_" + s.text() + "_" : s.text())
                .reduce("", String::concat);
    }

    private static List<Author> people(String... names) {
        return Stream.of(names)
                .map(n -> n.split(" ", 2))
                .map(n -> Author.person(n[0], n[1]))
                .toList();
    }
}
