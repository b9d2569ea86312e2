package comparand.compose.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A language is one file of words: all say the same things under the same keys, each written in one manner. */
class LanguagesTest {

    /** Signs and abbreviations. */
    private static final Set<String> NO_SENTENCES =
            Set.of("decimal-sign", "thousands-sign", "col.number", "not-reported-short", "figure.alt.apart");

    private final Map<String, String> words = WordsTest.read(WordsTest.FOLDER.resolve("words-en.properties"));

    static Stream<Path> files() throws IOException {
        try (var files = Files.list(WordsTest.FOLDER)) {
            return files.filter(f -> f.toFile().getName().matches("words-.*\\.properties")).sorted().toList().stream();
        }
    }

    @Test
    @DisplayName("a language is one file, and there are at least two")
    void languages() throws IOException {
        assertThat(files().map(f -> f.toFile().getName())).contains("words-de.properties", "words-en.properties");
        assertThat(files())
                .allSatisfy(f -> assertThat(f.toFile().getName())
                        .isEqualTo("words-" + WordsTest.read(f).get("language") + ".properties"));
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("every language has the keys of the English one, and the same places under each")
    void sameKeysAndPlaces(Path file) {
        var other = WordsTest.read(file);

        assertThat(other.keySet()).isEqualTo(words.keySet());
        assertThat(other)
                .allSatisfy((key, text) ->
                        assertThat(WordsTest.places(other, key)).as(key).isEqualTo(WordsTest.places(words, key)));
    }

    @Test
    @DisplayName("the tool's own names in the file are those of the catalogue and of the kinds of things, all of them")
    void terms() {
        var named = new TreeMap<String, Set<String>>();
        words.forEach((key, text) -> {
            if (WordsTest.TERMS.containsKey(WordsTest.section(key))) {
                named.computeIfAbsent(WordsTest.section(key), k -> new TreeSet<>())
                        .add(text);
            }
        });

        assertThat(named).isEqualTo(WordsTest.TERMS);
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("what goes by one English name within a section has one name in each language")
    void oneNameEach(Path file) {
        var other = WordsTest.read(file);
        var names = new TreeMap<String, Set<String>>();
        words.forEach((key, text) -> {
            if (WordsTest.TERMS.containsKey(WordsTest.section(key))) {
                names.computeIfAbsent(WordsTest.section(key) + ": " + text, k -> new TreeSet<>())
                        .add(other.getOrDefault(key, ""));
            }
        });

        assertThat(names)
                .allSatisfy((english, texts) -> assertThat(texts).as(english).hasSize(1));
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("no key stands in a file twice")
    void noDuplicates(Path file) throws IOException {
        var keys = Files.readAllLines(file).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.substring(0, l.indexOf('=')))
                .toList();

        assertThat(keys).hasSizeGreaterThan(200).doesNotHaveDuplicates();
        assertThat(keys).containsExactlyInAnyOrderElementsOf(words.keySet());
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("a place is a name in braces, and nothing else stands in braces")
    void places(Path file) {
        var texts = WordsTest.read(file);
        assertThat(texts).allSatisfy((key, text) -> {
            assertThat(WordsTest.places(texts, key)).as(key).allMatch(p -> p.matches("[A-Za-z]+"));
            assertThat(WordsTest.PLACE.matcher(text).replaceAll("")).as(key).doesNotContain("{", "}");
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("sentences end with a full stop; headings, cells and parts of sentences never do")
    void fullStops(Path file) {
        var texts = WordsTest.read(file);
        var wrong = new ArrayList<String>();
        texts.forEach((key, text) -> {
            boolean sentence = WordForms.SENTENCES.stream().anyMatch(key::startsWith);
            boolean stopped = text.endsWith(".") || text.endsWith("{better}");
            if (sentence != stopped && !NO_SENTENCES.contains(key) && !key.startsWith("short.")) {
                wrong.add(key + "=" + text);
            }
        });
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("a number and its unit are joined by a space that does not break, in every sentence")
    void unitsDoNotBreak(Path file) {
        var texts = WordsTest.read(file);
        assertThat(texts.entrySet().stream()
                        .filter(e -> e.getValue().matches(".*(\\{\\w+}|\\d) (\\{unit}|%).*"))
                        .map(e -> e.getKey() + "=" + e.getValue()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    @DisplayName("no text has a double space, a space at its end, a straight minus before a number, or is empty")
    void neat(Path file) {
        var texts = WordsTest.read(file);
        assertThat(texts)
                .allSatisfy((key, text) -> assertThat(text)
                        .as(key)
                        .isNotBlank()
                        .doesNotContain("  ")
                        .doesNotMatch(".*\\s$")
                        .doesNotMatch(".*(^|\\s)-[\\d{].*"));
    }
}
