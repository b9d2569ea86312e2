package comparand.compose.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.model.Step;
import comparand.support.Built;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The file of words is complete and has nothing to spare. */
class WordsTest {

    static final Path FOLDER = Path.of("src/main/resources/comparand/compose/text");
    private static final Path FILE = FOLDER.resolve("words-en.properties");
    static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");

    /** Steps that neither library takes; {@code spec/pairs} has a case of each and says its text. */
    private static final Set<String> IN_SPECIFICATIONS =
            Set.of("READ_OFF", "REGRESSED", "VOLUME_BASIS", "LETTER", "ERROR_BAR");

    /** Sections that are looked up by their English text, with what the tool names in each. */
    static final Map<String, Set<String>> TERMS = ToolTerms.all();

    private final Map<String, String> words = read(FILE);

    @Test
    @DisplayName("every beginning of a key in the source has its endings listed here, and none is listed in vain")
    void beginnings() {
        assertThat(WordCalls.prefixes()).isEqualTo(new TreeSet<>(WordForms.ENDINGS.keySet()));
        assertThat(WordForms.ENDINGS)
                .allSatisfy((beginning, endings) ->
                        assertThat(endings).as(beginning).isNotEmpty());
    }

    @Test
    @DisplayName("every key the source asks for is in the file")
    void nothingMissing() {
        var asked = new TreeSet<>(composed());
        WordCalls.all().forEach(c -> asked.addAll(c.keys()));
        ScriptCalls.all().forEach(c -> asked.addAll(c.keys()));

        assertThat(asked).hasSizeGreaterThan(150);
        assertThat(asked.stream().filter(k -> !words.containsKey(k))).isEmpty();
    }

    @Test
    @DisplayName("every key of the file is used by the source")
    void nothingToSpare() {
        var used = new HashSet<>(composed());
        WordCalls.all().forEach(c -> used.addAll(c.keys()));
        ScriptCalls.all().forEach(c -> used.addAll(c.keys()));

        assertThat(words.keySet().stream().filter(k -> !used.contains(k) && !TERMS.containsKey(section(k))))
                .isEmpty();
    }

    @Test
    @DisplayName("a call gives every text that its words have a place for, and none for which there is no place")
    void placesAndTexts() {
        var calls = WordCalls.all().stream()
                .filter(c -> c.readable() && !keys(c).isEmpty())
                .toList();
        // calls that put a key together from one beginning share its words
        var together = calls.stream()
                .collect(Collectors.groupingBy(c -> c.file()
                        + (c.prefixes().isEmpty()
                                ? c.keys()
                                : c.prefixes().get(0).replaceFirst("\\..*", ""))));

        assertThat(calls).hasSizeGreaterThan(150);
        var wrong = new ArrayList<String>();
        together.forEach((where, same) -> {
            var places = same.stream()
                    .flatMap(c -> keys(c).stream())
                    .flatMap(k -> places(k).stream())
                    .collect(Collectors.toSet());
            var given = same.stream().flatMap(c -> c.names().stream()).collect(Collectors.toSet());
            if (!given.equals(places)) {
                wrong.add("%s gives %s for %s".formatted(where, given, places));
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    @DisplayName("a script gives every text that its words have a place for, and none for which there is no place")
    void placesAndTextsOfScripts() {
        var calls =
                ScriptCalls.all().stream().filter(ScriptCalls.Call::readable).toList();

        assertThat(calls).hasSizeGreaterThan(100).allSatisfy(c -> {
            var places = c.keys().stream().flatMap(k -> places(k).stream()).collect(Collectors.toSet());
            assertThat(c.names()).as(c.toString()).isEqualTo(places);
        });
        assertThat(WordForms.ENDINGS.keySet()).containsAll(ScriptCalls.beginnings());
    }

    @Test
    @DisplayName(
            "every kind of step is said in one of the two libraries or in the specifications, with no place left open")
    void steps() {
        var said = Stream.of(
                        "evidence/dossiers/small-oxygenators.yaml",
                        "src/test/resources/library-haemofilter/dossiers/filters.yaml")
                .flatMap(d -> Built.all(Built.of(d).results().get("comparands")).stream())
                .flatMap(c -> Built.all(c.get("steps")).stream())
                .toList();

        assertThat(said.stream()
                        .map(s ->
                                s.get("kind").asText().toUpperCase(Locale.ROOT).replace('-', '_')))
                .containsAll(names(Step.Kind.values()).stream()
                        .filter(k -> !IN_SPECIFICATIONS.contains(k))
                        .toList());
        assertThat(said)
                .allSatisfy(s -> assertThat(s.get("text").asText()).isNotBlank().doesNotContain("{", "}"));
    }

    @Test
    @DisplayName("a place without a text, and a key that is not there, are faults and no blanks")
    void faults() {
        var en = Words.of("en");

        assertThat(en.say("to", "low", "1", "high", "2")).isEqualTo("1 to 2");
        assertThat(en.say("aside.HELD", "detail", "costs $1 \\ {low}")).endsWith("costs $1 \\ {low}");
        assertThatThrownBy(() -> en.say("to", "low", "1")).hasMessageContaining("{high}");
        assertThatThrownBy(() -> en.say("not-a-key")).hasMessageContaining("not-a-key");
        assertThatThrownBy(() -> Words.of("xx")).hasMessageContaining("words-xx.properties");
        assertThat(en.cautions())
                .hasSize(WordForms.ENDINGS.getOrDefault("caution.", List.of()).size());
    }

    /** All keys that the source puts together while the program runs. */
    private static Set<String> composed() {
        var keys = new TreeSet<String>();
        WordForms.ENDINGS.forEach((beginning, endings) -> endings.forEach(e -> keys.add(beginning + e)));
        return keys;
    }

    private static List<String> keys(WordCalls.Call call) {
        return Stream.concat(
                        call.keys().stream().filter(k -> !k.matches("\\w*")),
                        call.prefixes().stream()
                                .flatMap(b -> WordForms.ENDINGS.getOrDefault(b, List.of()).stream()
                                        .map(e -> b + e)))
                .toList();
    }

    private Set<String> places(String key) {
        return places(words, key);
    }

    static String section(String key) {
        return key.contains(".") ? key.substring(0, key.indexOf('.')) : "";
    }

    static Set<String> places(Map<String, String> texts, String key) {
        return PLACE.matcher(texts.getOrDefault(key, ""))
                .results()
                .map(m -> m.group(1))
                .collect(Collectors.toSet());
    }

    private static List<String> names(Enum<?>[] values) {
        return Stream.of(values).map(Enum::name).toList();
    }

    static Map<String, String> read(Path file) {
        var properties = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            properties.load(in);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        var words = new TreeMap<String, String>();
        properties.forEach((key, text) -> words.put(String.valueOf(key), String.valueOf(text)));
        return words;
    }
}
