package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.app.CommandLineUse;
import comparand.metric.Catalogue;
import comparand.support.Built;
import comparand.support.LibraryCopy;
import comparand.support.OutputTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that claim more than an interval can say are never written; a source that uses them is quoted, and only quoted. */
class ForbiddenWordsTest {

    private static final Pattern FORBIDDEN = Pattern.compile(
            "\\b(?:(?:un)?proved|proven|superior\\w*|inferior\\w*|equivalen\\w*|identical\\w*|outperform\\w*|no\\s+effects?"
                    + "|no\\s+differences?(?!\\s+as\\s+large\\s+as\\b)|negative\\s+results?|trend\\w*|\\w*significan\\w*)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

    private static final String CLAIM = "lowest haemolysis in its class";

    @TempDir
    Path temporary;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no output uses a forbidden word, not even in a quotation")
    void outputs(Built built) throws IOException {
        var texts = outputTexts(built);

        assertThat(texts).hasSizeGreaterThan(500);
        assertThat(texts.stream().filter(ForbiddenWordsTest::isForbidden)).isEmpty();
    }

    @Test
    @DisplayName("the words of the documents hold no forbidden word, so that none can come with other data")
    void words() throws IOException {
        var words = new Properties();
        try (var in =
                Files.newBufferedReader(Path.of("src/main/resources/comparand/compose/text/words-en.properties"))) {
            words.load(in);
        }

        assertThat(words).hasSizeGreaterThan(200);
        assertThat(words.values().stream().map(String::valueOf).filter(ForbiddenWordsTest::isForbidden))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no trace and no finding on the terminal uses a forbidden word")
    void traces(Built built) {
        var run = built.results().get("run");
        var dossier = run.get("dossier").asText().equals("filters") ? Libraries.FILTERS : Libraries.DEMO;
        var ids = Built.all(built.results().get("comparands")).stream()
                .map(c -> c.get("id").asText())
                .toList();

        assertThat(ids).isNotEmpty().allSatisfy(id -> {
            var trace = CommandLineUse.run("trace", dossier, id);
            assertThat(trace.code()).as(trace.err()).isZero();
            assertThat(trace.out()).contains(id).doesNotContainPattern(FORBIDDEN);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {Libraries.DEMO, Libraries.FILTERS})
    @DisplayName("no plan on the terminal uses a forbidden word")
    void plans(String dossier) {
        var plan = CommandLineUse.run("plan", dossier);

        assertThat(plan.code()).as(plan.err()).isZero();
        assertThat(plan.out()).contains("what to measure next").doesNotContainPattern(FORBIDDEN);
    }

    @Test
    @DisplayName("the catalogue uses no forbidden word")
    void catalogue() throws IOException {
        var list = CommandLineUse.run("catalogue", "--library", "evidence");
        var metrics = Stream.concat(Catalogue.shipped().ids().stream(), names("evidence/metrics").stream())
                .toList();

        assertThat(list.out()).doesNotContainPattern(FORBIDDEN);
        assertThat(metrics).hasSizeGreaterThan(10).allSatisfy(metric -> {
            assertThat(list.out()).contains(metric);
            var text = CommandLineUse.run("catalogue", metric, "--library", "evidence");
            assertThat(text.code()).as(text.err()).isZero();
            assertThat(text.out()).isNotBlank().doesNotContainPattern(FORBIDDEN);
        });
    }

    @Test
    @DisplayName("a claim of a source that uses such words is quoted as it is, and nothing is added to it")
    void claims() throws IOException {
        var claim = "superior, with no significant haemolysis";
        var library = LibraryCopy.of(Path.of("evidence"), temporary.resolve("library"));
        var flyer = library.resolve("sources/skarrow-flyer.yaml");
        LibraryCopy.edit(flyer, CLAIM, claim);

        var texts = outputTexts(
                Built.of(library.resolve("dossiers/small-oxygenators.yaml").toString()));
        assertThat(texts).anyMatch(t -> t.contains(claim));
        assertThat(texts.stream().map(t -> t.replace(claim, "")).filter(ForbiddenWordsTest::isForbidden))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Significantly higher",
                "insignificant",
                "NON-INFERIORITY",
                "the two are equivalent",
                "equivalence",
                "identical",
                "outperforms",
                "no difference between them",
                "no differences as such",
                "no effect",
                "a negative result",
                "an upward trend",
                "it was proved"
            })
    @DisplayName("the search finds the words with their endings and beginnings")
    void found(String text) {
        assertThat(isForbidden(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"no difference as large as 5 mL", "improved", "the effect is none", "not approved", "tested"})
    @DisplayName("the search lets innocent words pass")
    void innocent(String text) {
        assertThat(isForbidden(text)).isFalse();
    }

    static boolean isForbidden(String text) {
        return FORBIDDEN.matcher(text.replace('\u00a0', ' ')).find();
    }

    private static List<String> outputTexts(Built built) throws IOException {
        return Stream.of(
                        OutputTexts.of(built).values().stream().flatMap(List::stream),
                        strings(built.results()),
                        Stream.of(Files.readString(built.folder().resolve("results.schema.json"))))
                .flatMap(s -> s)
                .toList();
    }

    private static List<String> names(String folder) throws IOException {
        try (var files = Files.list(Path.of(folder))) {
            return files.map(f -> f.toFile().getName().replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    private static Stream<String> strings(JsonNode node) {
        return node.isTextual()
                ? Stream.of(node.asText())
                : Built.all(node).stream().flatMap(ForbiddenWordsTest::strings);
    }
}
