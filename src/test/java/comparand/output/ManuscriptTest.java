package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.NumberTokens;
import comparand.support.OfficeSchemas;
import comparand.support.TextDocument;
import comparand.support.TracedNumbers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The draft of a manuscript, read back from its file. */
class ManuscriptTest {

    private static final String FILE = "manuscript.docx";
    private static final Pattern CITED = Pattern.compile("sources? (?:read )?\\((\\d+(?:[–,]\\d+)*)\\)");
    /** What counts the tables and figures of the text, and not the evidence. */
    private static final Pattern NUMBERED = Pattern.compile("(?:Table|Figure)[ \u00a0]S?\\d+");

    @TempDir
    Path temporary;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("manuscript and workbook hold to the schemas of Office Open XML")
    void schemas(Built built) throws IOException {
        assertThat(OfficeSchemas.faults(built.folder().resolve(FILE))).isEmpty();
        assertThat(OfficeSchemas.faults(built.folder().resolve(Libraries.WORKBOOK)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("parts stand in the order of the template, no place is named twice, no cell is blank")
    void parts(Built built) {
        var text = text(built);
        assertThat(text.sections().keySet())
                .containsSubsequence(
                        "Author's list: what is still to be written and checked",
                        "Methods",
                        "Results",
                        "Tables",
                        "Limitations",
                        "References",
                        "Supplement",
                        "Cautions");
        assertThat(text.bookmarks()).hasSizeGreaterThan(40).doesNotHaveDuplicates();
        assertThat(text.tables()).hasSize(built.results().has("screening") ? 11 : 9);
        assertThat(text.tables().stream().flatMap(List::stream).flatMap(List::stream))
                .noneMatch(String::isBlank);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every number of the text and of its tables stands in results.json, or rounds from one there")
    void numbers(Built built) {
        var results = new TracedNumbers(List.of(built.results()));
        var texts = text(built).texts().stream()
                .map(t -> NUMBERED.matcher(t).replaceAll(" "))
                .toList();

        assertThat(texts.stream().flatMap(t -> NumberTokens.of(t).stream())).hasSizeGreaterThan(300);
        assertThat(texts.stream()
                        .flatMap(t -> results.untraced(t).stream()
                                .filter(n -> !built.hasYear(n))
                                .map(n -> n + " in " + t)))
                .isEmpty();
        assertThat(results.untraced("72.41234 mmHg")).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "the list of references has every source once, by the number it has in all outputs, and each is cited in order")
    void references(Built built) {
        var text = text(built);
        var sources = Built.all(built.results().get("sources"));
        var list = text.section("References");

        assertThat(list).hasSameSizeAs(sources);
        for (int i = 0; i < list.size(); i++) {
            assertThat(list.get(i)).startsWith((i + 1) + ".\t");
            assertThat(sources.get(i).get("number").asInt()).isEqualTo(i + 1);
            assertThat(sources.get(i).get("reference").asText()).contains(title(list.get(i)));
        }
        var first = new java.util.LinkedHashSet<Integer>();
        Stream.of("Methods", "Results")
                .flatMap(s -> text.section(s).stream())
                .flatMap(t -> CITED.matcher(t).results())
                .flatMapToInt(m -> numbers(m.group(1)))
                .forEach(first::add);
        assertThat(first)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, sources.size()).boxed().toList());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("limitations stand in the order of how many pairs they affect, each with its count")
    void limitations(Built built) {
        var limits = Built.all(built.results().get("limitations"));
        var said = text(built).section("Limitations");

        assertThat(limits.stream().map(l -> -l.get("pairs").asInt())).isSorted();
        assertThat(said).hasSameSizeAs(limits);
        for (int i = 0; i < said.size(); i++) {
            assertThat(said.get(i))
                    .contains(limits.get(i).get("pairs").asText() + " of "
                            + limits.get(i).get("of").asText());
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the counts of sources, pairs and rows in the text add up")
    void counts(Built built) {
        var counts = built.results().get("counts");
        assertThat(counts.get("sources-taking-part").asInt()
                        + counts.get("sources-without-value").asInt())
                .isEqualTo(counts.get("sources").asInt())
                .isEqualTo(built.results().get("sources").size());
        assertThat(counts.get("pairs-published-compared").asInt()
                        + counts.get("pairs-published-shown").asInt())
                .isEqualTo(counts.get("pairs-published").asInt())
                .isEqualTo((int) Built.all(built.results().get("pairs")).stream()
                        .filter(p -> p.get("purpose").asText().equals("local-against-published"))
                        .count());
        assertThat(rows(counts, "rows, "))
                .isEqualTo(rows(counts, "rows-kept, ") + rows(counts, "rows-dropped, ") + rows(counts, "rows-held, "));
    }

    @Test
    @DisplayName(
            "the result the group waits for is said with its numbers, conditions of the comparison and both readings")
    void demo() {
        var results = String.join("\n", text(Built.demo()).section("Results")).replace('\u00a0', ' ');
        assertThat(results)
                .contains("Quillane 15 72.4 (4.1) mmHg (6 units)")
                .contains("+7.4 mmHg (95 % CI 3.1 to 11.7)")
                .contains("outside our 95 % interval for the mean (68.1 to 76.7)")
                .contains("read as standard deviation: no difference as large as 10 mmHg")
                .contains("Of 19 records identified, 2 were duplicates; 17 were screened and 3 of them excluded.")
                .contains("Of 14 reports sought, 0 were not retrieved; 14 were assessed for eligibility and 4 of them"
                        + " excluded (Table S2). Reports included: 10, of 9 studies (Figure 1).");
        var list = String.join(
                "\n", text(Built.demo()).sections().values().iterator().next());
        assertThat(list).contains("Three small oxygenators");
        assertThat(text(Built.demo()).section("Author's list: what is still to be written and checked"))
                .anySatisfy(t -> assertThat(t).contains("ethics committee", "manuscript, ethics, in dossiers/"))
                .noneSatisfy(t -> assertThat(t).contains("how published values were looked for"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "first-seen: 2026-10-01 | before the first local results were seen on 2026-10-01",
                "first-seen: 2026-08-01 | the first local results had been seen by then, on 2026-08-01",
                "'' | on which day the first local results were seen was not recorded"
            })
    @DisplayName("whether margins were fixed before the data were seen is said as the dossier has it")
    void fixed(String line, String said) throws IOException {
        var methods = methods(text -> text.replaceAll("(?m)^first-seen:.*\n", "")
                .replaceFirst("(?m)^as-of:", (line.isEmpty() ? "" : line + "\n") + "as-of:"));
        assertThat(methods).contains(said);
    }

    @Test
    @DisplayName("what the dossier says of ethics and search is said in the methods, and nothing of it is made up")
    void own() throws IOException {
        assertThat(methods(t -> t)).doesNotContain("We looked for published values", "approved");
        var methods = methods(t -> t + "\nmanuscript:\n  ethics: The committee of nobody approved it\n");
        assertThat(methods).contains("The committee of nobody approved it.");
        assertThat(String.join("\n", text(Built.demo()).section("Methods")).replace('\u00a0', ' '))
                .contains("Index of invented journals; Document pages of the three makers;")
                .contains("the last search was on 2026-11-02. All searches and their words stand in Table S1")
                .contains("Searching was done by AB and CD.")
                .contains("What became of each record was decided by AB and CD.")
                .contains("claims no conformity with that statement.");
    }

    /** The methods of the smaller library with its dossier changed. */
    private String methods(java.util.function.UnaryOperator<String> change) throws IOException {
        var library = LibraryCopy.of(
                Path.of("src/test/resources/library-haemofilter"), temporary.resolve("library-" + System.nanoTime()));
        var dossier = library.resolve("dossiers/filters.yaml");
        java.nio.file.Files.writeString(dossier, change.apply(java.nio.file.Files.readString(dossier)));
        var built = Built.of(dossier.toString());
        return String.join("\n", text(built).section("Methods"));
    }

    /** References name years whose dates stand whole in results.json. */
    private static int rows(JsonNode counts, String beginning) {
        int sum = 0;
        for (var names = counts.fieldNames(); names.hasNext(); ) {
            var name = names.next();
            sum += name.startsWith(beginning) ? counts.get(name).asInt() : 0;
        }
        return sum;
    }

    /** The title of a work as its entry has it: what stands between the first two full stops behind the authors. */
    private static String title(String entry) {
        var words = entry.replaceFirst("^\\d+\\.\\t", "").split("\\. ", -1);
        return words[1].toLowerCase(Locale.ROOT).isEmpty() ? entry : words[1].replaceAll("\\.$| \\[Internet\\]$", "");
    }

    private static IntStream numbers(String cited) {
        return Stream.of(cited.split(",", -1))
                .map(p -> p.split("–", -1))
                .flatMapToInt(p -> IntStream.rangeClosed(Integer.parseInt(p[0]), Integer.parseInt(p[p.length - 1])));
    }

    private static TextDocument text(Built built) {
        return TextDocument.of(built.folder().resolve(FILE));
    }
}
