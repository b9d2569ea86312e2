package comparand.compose.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import comparand.metric.Better;
import comparand.metric.Effect;
import comparand.model.Answer;
import comparand.model.ConditionVerdict;
import comparand.model.Missing;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.PlanningSd;
import comparand.model.SetAside;
import comparand.model.SourcesTogether;
import comparand.model.Standing;
import comparand.model.Step;
import comparand.model.Verdict;
import comparand.model.template.ManuscriptTemplate;
import comparand.stat.LocalMean;
import comparand.support.Built;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
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

/** The file of words is complete, has nothing to spare, and is written in one manner. */
class WordsTest {

    private static final Path FILE = Path.of("src/main/resources/comparand/compose/text/words-en.properties");
    private static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");

    /** Why a value stands alone. */
    private static final List<String> ALONE = List.of("claim", "no-local", "no-present");

    /** What is added to a beginning while the program runs. */
    private static final Map<String, Collection<String>> ENDINGS = Map.ofEntries(
            Map.entry("step.", names(Step.Kind.values())),
            Map.entry("centres.mean.", names(LocalMean.Rule.values())),
            Map.entry("together.place.", names(SourcesTogether.Place.values())),
            Map.entry("together.without.", List.of("same", "other", "few")),
            Map.entry("together.label.", List.of("ESTIMATED", "DIGITISED")),
            Map.entry("standing.", names(Standing.values())),
            Map.entry("verdict.", names(Verdict.values())),
            Map.entry("verdict.nominal.", names(Verdict.values())),
            Map.entry("answer.untestable.", names(Answer.NotTestable.Why.values())),
            Map.entry("answer.lacking.", WordCalls.inFile("AnswerText.java", "-> \"(\\w+)\";")),
            Map.entry("better.", names(Better.values())),
            Map.entry("fate.", List.of("dropped", "held", "remarked")),
            Map.entry("favourable.", names(Better.values())),
            Map.entry("unpaired.", ALONE),
            Map.entry("to-pair.", ALONE),
            Map.entry("mark.", names(ConditionVerdict.Mark.values())),
            Map.entry("effect.", names(Effect.values())),
            Map.entry("role.", List.of("decides", "qualifies")),
            Map.entry("aside.", names(SetAside.Reason.values())),
            Map.entry("distortion.number.", List.of("higher", "lower")),
            Map.entry("distortion.device.", List.of("higher", "lower", "none", "unknown")),
            Map.entry("distortion.", List.of("none", "unknown")),
            Map.entry("gap.", List.of("margin", "no-margin", "declared", "asked", "unlike", "sources")),
            Map.entry("missing.", names(Missing.What.values())),
            Map.entry("settle.", names(PlanAim.Kind.values())),
            Map.entry("settle.sd.", names(PlanningSd.From.values())),
            Map.entry("needed.", names(Needed.Kind.values())),
            Map.entry("needed.brief.", names(Needed.Kind.values())),
            Map.entry("needed.where.", names(Planned.Groups.values())),
            Map.entry("sheet.", WordCalls.inFile("Workbook.java", "sheets\\.put\\(\"([a-z-]+)\"")),
            Map.entry("sheet.about.", WordCalls.inFile("Workbook.java", "sheets\\.put\\(\"([a-z-]+)\"")),
            Map.entry("ms.section.", names(ManuscriptTemplate.Section.values())),
            Map.entry(
                    "ms.conversion.",
                    Stream.of(Step.Kind.values())
                            .filter(Step.Kind::converts)
                            .map(Enum::name)
                            .toList()),
            Map.entry("ms.abbr.", List.of("BTPS", "CI", "DOI", "NA", "NR", "SD", "SE", "STPD")),
            Map.entry(
                    "ms.entry.",
                    List.of(
                            "authors",
                            "ethics",
                            "registration",
                            "eligibility",
                            "allocation",
                            "search",
                            "funding",
                            "data-availability")),
            Map.entry(
                    "ms.say.limitation.",
                    List.of(
                            "differs",
                            "not-reported",
                            "label",
                            "quantity",
                            "figure",
                            "either-spread",
                            "limit",
                            "estimated",
                            "digitised",
                            "paid-for",
                            "read-once",
                            "hospitals",
                            "many",
                            "blood")),
            Map.entry("key.", WordCalls.keyRows()),
            Map.entry("caution.", List.of("1", "2", "3", "4", "5", "6", "7", "8")));

    /** Kinds of text by how their keys begin: those that are sentences end with a full stop, the others never do. */
    private static final Set<String> SENTENCES = Set.of(
            "distortion.",
            "qualifies.",
            "caution.",
            "better.",
            "margin-line",
            "scenario.lead",
            "scenario.none",
            "scenario.some",
            "table.said.",
            "gaps.",
            "ms.say.",
            "matters.",
            "settle.",
            "table.no-local",
            "table.no-published");

    /** Steps that neither library takes; {@code spec/pairs} has a case of each and says its text. */
    private static final Set<String> IN_SPECIFICATIONS = Set.of("READ_OFF", "REGRESSED", "VOLUME_BASIS");

    /** A sign and an abbreviation. */
    private static final Set<String> NO_SENTENCES = Set.of("decimal-sign", "col.number");

    private final Map<String, String> words = read();

    @Test
    @DisplayName("no key stands in the file twice")
    void noDuplicates() throws IOException {
        var keys = Files.readAllLines(FILE).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.substring(0, l.indexOf('=')))
                .toList();

        assertThat(keys).hasSizeGreaterThan(200).doesNotHaveDuplicates();
        assertThat(keys).containsExactlyInAnyOrderElementsOf(words.keySet());
    }

    @Test
    @DisplayName("every beginning of a key in the source has its endings listed here, and none is listed in vain")
    void beginnings() {
        assertThat(WordCalls.prefixes()).isEqualTo(new TreeSet<>(ENDINGS.keySet()));
        assertThat(ENDINGS)
                .allSatisfy((beginning, endings) ->
                        assertThat(endings).as(beginning).isNotEmpty());
    }

    @Test
    @DisplayName("every key the source asks for is in the file")
    void nothingMissing() {
        var asked = new TreeSet<>(composed());
        WordCalls.all().forEach(c -> asked.addAll(c.keys()));

        assertThat(asked).hasSizeGreaterThan(150);
        assertThat(asked.stream().filter(k -> !words.containsKey(k))).isEmpty();
    }

    @Test
    @DisplayName("every key of the file is used by the source")
    void nothingToSpare() {
        var used = new HashSet<>(composed());
        WordCalls.all().forEach(c -> used.addAll(c.keys()));

        assertThat(words.keySet().stream().filter(k -> !used.contains(k))).isEmpty();
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
    @DisplayName("a place is a name in braces, and nothing else stands in braces")
    void places() {
        assertThat(words).allSatisfy((key, text) -> {
            assertThat(places(key)).as(key).allMatch(p -> p.matches("[A-Za-z]+"));
            assertThat(PLACE.matcher(text).replaceAll("")).as(key).doesNotContain("{", "}");
        });
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
                .hasSize(ENDINGS.getOrDefault("caution.", List.of()).size());
    }

    @Test
    @DisplayName("sentences end with a full stop; headings, cells and parts of sentences never do")
    void fullStops() {
        var wrong = new ArrayList<String>();
        words.forEach((key, text) -> {
            boolean sentence = SENTENCES.stream().anyMatch(key::startsWith);
            boolean stopped = text.endsWith(".") || text.endsWith("{better}");
            if (sentence != stopped && !NO_SENTENCES.contains(key)) {
                wrong.add(key + "=" + text);
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    @DisplayName("a number and its unit are joined by a space that does not break, in every sentence")
    void unitsDoNotBreak() {
        assertThat(words.entrySet().stream()
                        .filter(e -> e.getValue().matches(".*(\\{\\w+}|\\d) (\\{unit}|%).*"))
                        .map(e -> e.getKey() + "=" + e.getValue()))
                .isEmpty();
    }

    @Test
    @DisplayName("no text has a double space, a space at its end, a straight minus before a number, or is empty")
    void neat() {
        assertThat(words)
                .allSatisfy((key, text) -> assertThat(text)
                        .as(key)
                        .isNotBlank()
                        .doesNotContain("  ")
                        .doesNotMatch(".*\\s$")
                        .doesNotMatch(".*(^|\\s)-[\\d{].*"));
    }

    /** All keys that the source puts together while the program runs. */
    private static Set<String> composed() {
        var keys = new TreeSet<String>();
        ENDINGS.forEach((beginning, endings) -> endings.forEach(e -> keys.add(beginning + e)));
        return keys;
    }

    private static List<String> keys(WordCalls.Call call) {
        return Stream.concat(
                        call.keys().stream().filter(k -> !k.matches("\\w*")),
                        call.prefixes().stream()
                                .flatMap(b -> ENDINGS.getOrDefault(b, List.of()).stream()
                                        .map(e -> b + e)))
                .toList();
    }

    private Set<String> places(String key) {
        return PLACE.matcher(words.getOrDefault(key, ""))
                .results()
                .map(m -> m.group(1))
                .collect(Collectors.toSet());
    }

    private static List<String> names(Enum<?>[] values) {
        return Stream.of(values).map(Enum::name).toList();
    }

    private static Map<String, String> read() {
        var properties = new Properties();
        try (Reader in = Files.newBufferedReader(FILE)) {
            properties.load(in);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        var words = new TreeMap<String, String>();
        properties.forEach((key, text) -> words.put(String.valueOf(key), String.valueOf(text)));
        return words;
    }
}
