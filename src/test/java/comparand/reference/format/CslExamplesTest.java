package comparand.reference.format;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.model.library.PartialDate;
import comparand.model.library.SourceState;
import comparand.reference.Field;
import comparand.reference.Name;
import comparand.reference.Reference;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * CSL-JSON: the schema {@code csl-data.json} of the Citation Style Language (1.0.2), and what DOI services return in its place
 * (CrossRef rest-api-doc, issue 187: "Invalid types in CSL JSON items returned by DOI content negotiation").
 */
class CslExamplesTest {

    /** Text and number variables of the schema that are neither identifiers of this project nor abstracts. */
    private static final String[] VARIABLES = {
        "journalAbbreviation",
        "shortTitle",
        "annote",
        "archive",
        "archive_collection",
        "archive_location",
        "archive-place",
        "authority",
        "call-number",
        "chapter-number",
        "citation-number",
        "citation-label",
        "collection-number",
        "dimensions",
        "division",
        "event",
        "event-place",
        "first-reference-note-number",
        "genre",
        "ISAN",
        "ISCI",
        "ISMN",
        "ISRC",
        "ISWC",
        "jurisdiction",
        "keyword",
        "locator",
        "medium",
        "note",
        "number-of-pages",
        "number-of-volumes",
        "original-publisher",
        "original-publisher-place",
        "original-title",
        "page-first",
        "part",
        "part-title",
        "printing",
        "references",
        "reviewed-title",
        "scale",
        "section",
        "source",
        "status",
        "supplement",
        "title-short",
        "translated-title",
        "translated-title-short",
        "version",
        "year-suffix"
    };

    @Test
    void everyVariableOfTheSchemaIsReadOrKeptAndGivenBack() throws Exception {
        var item = CslReader.JSON
                .createObjectNode()
                .put("id", "a")
                .put("type", "book")
                .put("title", "T");
        for (var field : Field.values()) {
            item.put(field.key(), value(field));
        }
        for (var name : VARIABLES) {
            item.put(name, "text of " + name);
        }
        item.putArray("translator").addObject().put("family", "Ode").put("given", "Ann");
        item.putArray("categories").add("one").add("two");
        item.putObject("accessed").putArray("date-parts").addArray().add(2020).add(1);
        item.putObject("custom").put("short_id", "xyz");

        var read = ReadReferences.of("[" + item + "]");
        var named = new TreeMap<String, Reference>();
        named.put("a", read.only());

        assertThat(read.findings()).isEmpty();
        assertThat(read.only().fields()).hasSize(Field.values().length);
        assertThat(CslReader.JSON
                        .readTree(ReferenceFormat.CSL_JSON.write(named))
                        .get(0))
                .isEqualTo(item);
    }

    private static String value(Field field) {
        return switch (field) {
            case DOI -> "10.5555/abc";
            case PMID -> "123";
            case LANGUAGE -> "de";
            default -> "text of " + field.key();
        };
    }

    @Test
    void typesThatDoiServicesReturnBecomeThoseOfCsl() {
        assertThat(type("journal-article")).isEqualTo("article-journal");
        assertThat(type("book-chapter")).isEqualTo("chapter");
        assertThat(type("posted-content")).isEqualTo("article");
        assertThat(type("proceedings-article")).isEqualTo("paper-conference");
        assertThat(type("legal_case")).isEqualTo("legal_case");
        assertThat(ReadReferences.of("[{\"type\": \"nonsense\", \"title\": \"T\"}]")
                        .codes())
                .containsExactly("type-unknown 1:3");
    }

    private static String type(String word) {
        return ReadReferences.of("{\"type\": \"" + word + "\", \"title\": \"T\"}")
                .only()
                .type();
    }

    /** In the form in which a registration agency returns an item (from memory), the work invented. */
    @Test
    void anItemOfARegistrationAgencyIsReadWithListsNullsAndNotices() {
        var read = ReadReferences.of("""
                {"indexed": {"date-parts": [[2024, 1, 2]]}, "reference-count": 3, "publisher": "Invented Press",
                 "issue": "2", "DOI": "10.5555\\/ijct.2024.1", "type": "journal-article", "created": {"date-parts": [[2023]]},
                 "page": "1\\u20139", "source": "Agency", "title": "Flow <i>in vitro<\\/i>", "volume": "7",
                 "author": [{"given": "J\\u00fcrgen", "family": "Ode", "sequence": "first", "affiliation": []},
                            {"name": "Invented Group", "sequence": "additional"}],
                 "container-title": "Invented Journal", "ISSN": ["1234-5678", "8765-432X"], "abstract": "<jats:p>No<\\/jats:p>",
                 "issued": {"date-parts": [["2023", 4]]}, "subject": ["A", "B"], "language": null,
                 "updated-by": [{"type": "retraction", "DOI": "10.5555/notice.1", "updated": {"date-parts": [[2024, 5, 6]]}}]}
                """);
        var reference = read.only();

        assertThat(read.findings()).isEmpty();
        assertThat(reference.title()).isEqualTo("Flow in vitro");
        assertThat(reference.authors()).containsExactly(Name.person("Ode", "Jürgen"), Name.body("Invented Group"));
        assertThat(reference.issued().map(PartialDate::text)).contains("2023-04");
        assertThat(reference.fields())
                .containsEntry(Field.DOI, "10.5555/ijct.2024.1")
                .containsEntry(Field.PAGE, "1-9")
                .containsEntry(Field.ISSN, "1234-5678, 8765-432X");
        assertThat(reference.notice()).hasValueSatisfying(n -> {
            assertThat(n.state()).isEqualTo(SourceState.RETRACTED);
            assertThat(n.since().map(PartialDate::text)).contains("2024-05-06");
        });
        assertThat(reference.kept("csl-json", "subject:json")).containsExactly("[\"A\",\"B\"]");
        assertThat(reference.kept("csl-json", "abstract")).isEmpty();
    }

    @Test
    void datesInTheirSeveralForms() {
        assertThat(year("{\"date-parts\": [[2023, 4, 31]]}")).isEqualTo("2023-04");
        assertThat(year("{\"raw\": \"12 May 1999\"}")).isEqualTo("1999");
        assertThat(year("\"2020-03-01/2020-04-01\"")).isEqualTo("2020-03-01");
        assertThat(year("{\"date-parts\": [[2020], [2021]]}")).isEqualTo("2020");
        assertThat(year("{\"date-parts\": [[null]]}")).isEqualTo("none");
    }

    private static String year(String issued) {
        return ReadReferences.of("[{\"type\": \"book\", \"title\": \"T\", \"issued\": " + issued + "}]")
                .only()
                .issued()
                .map(PartialDate::text)
                .orElse("none");
    }

    @Test
    void anItemThatIsNoJsonIsNamedAtItsPlaceAndTheNextOneIsRead() {
        var read = ReadReferences.of("""
                [
                  {"type": "book", "title": "One"},
                  {"type": "book", "title": Two},
                  {"type": "book", "title": "Three", "title": "Four"},
                  {"type": "book"
                """);

        assertThat(read.references()).extracting(Reference::title).containsExactly("One", "Three");
        assertThat(read.codes()).contains("field-twice 4:38").anyMatch(c -> c.startsWith("entry-unreadable 3:"));
        assertThat(read.codes())
                .filteredOn(c -> c.startsWith("entry-unreadable"))
                .hasSize(2);
    }
}
