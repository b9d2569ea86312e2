package comparand.compose.text;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.document.NoBreak;
import comparand.flow.Outcome;
import comparand.model.library.Entries;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The words of one language. */
public final class Words {

    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]+)}");

    private static final String ENGLISH = "en";

    private final Properties texts;

    /** The key of each text by which the tool itself calls something in English: section, then text. */
    private final Map<String, Map<String, String>> terms;

    private Words(Properties texts, Map<String, Map<String, String>> terms) {
        this.texts = texts;
        this.terms = terms;
    }

    /**
     * The words of a language the tool speaks.
     *
     * @throws IllegalArgumentException if it does not
     */
    public static Words of(String language) {
        return find(language).orElseThrow(() -> new IllegalArgumentException("there is no " + file(language)));
    }

    /** The words of a language, if the tool speaks it. */
    public static Optional<Words> find(String language) {
        return language.matches("[a-z]{2,3}(?:-[A-Za-z0-9]++)*+")
                ? read(language).map(texts -> new Words(texts, terms()))
                : Optional.empty();
    }

    private static Optional<Properties> read(String language) {
        try (var in = Words.class.getResourceAsStream(file(language))) {
            if (in == null) {
                return Optional.empty();
            }
            var texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return Optional.of(texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, Map<String, String>> terms() {
        var english = read(ENGLISH).orElseThrow();
        var terms = new HashMap<String, Map<String, String>>();
        new TreeSet<>(english.stringPropertyNames()).forEach(key -> {
            int dot = key.indexOf('.');
            if (dot > 0) {
                terms.computeIfAbsent(key.substring(0, dot), k -> new HashMap<>())
                        .putIfAbsent(english.getProperty(key), key);
            }
        });
        return terms;
    }

    private static String file(String language) {
        return "words-" + language + ".properties";
    }

    /**
     * These words with the wording of a house in their place: for keys that are there, with no place that has no text.
     *
     * @return the words, or findings for keys and places that are not there
     */
    public Outcome<Words> with(Entries<Located<String>> wording) {
        var findings = new ArrayList<Diagnostic>();
        var changed = new Properties();
        changed.putAll(texts);
        for (var entry : wording.list()) {
            var key = entry.key();
            var own = texts.getProperty(key.value());
            if (own == null) {
                findings.add(Diagnostic.stop(
                        "wording-unknown",
                        key.span(),
                        "there is no text called `%s`".formatted(key.value()),
                        "a text nobody asks for would never be printed",
                        Suggest.nearest(key.value(), keys())
                                .map(near -> "did you mean `%s`?".formatted(near))
                                .orElse("see the list of texts in the manual of the program")));
            } else if (!places(own).containsAll(places(entry.value().value()))) {
                findings.add(Diagnostic.stop(
                        "wording-place",
                        entry.value().span(),
                        "this text has a place that the run puts nothing into",
                        "the reader would see the braces",
                        "use only these: %s".formatted(places(own))));
            } else {
                changed.setProperty(key.value(), entry.value().value());
            }
        }
        return findings.isEmpty() ? Outcome.of(new Words(changed, terms)) : Outcome.stopped(findings);
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    public char decimalSign() {
        return say("decimal-sign").charAt(0);
    }

    public String language() {
        return say("language");
    }

    /** A text, with what stands in its places given as name, text, name, text. */
    public String say(String key, String... namesAndTexts) {
        var template = texts.getProperty(key);
        if (template == null) {
            throw new IllegalArgumentException("no words for " + key);
        }
        return NoBreak.joined(PLACE.matcher(template)
                .replaceAll(m -> Matcher.quoteReplacement(text(key, m.group(1), namesAndTexts))));
    }

    /**
     * What the tool itself calls something, in this language. What has no text of its own there, such as a name that a
     * library gives, stays as its author wrote it.
     *
     * @param section the beginning of the keys among which it is looked for, such as {@code metric}
     * @param english as the tool calls it in English
     */
    public String term(String section, String english) {
        var key = terms.getOrDefault(section, Map.of()).get(english);
        return key == null ? english : texts.getProperty(key, english);
    }

    /** All that a section names, in English: longer names first, so that none is taken for the beginning of another. */
    List<String> named(String section) {
        return terms.getOrDefault(section, Map.of()).keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /** The cautions that go with every output, in order. */
    public List<String> cautions() {
        return IntStream.iterate(1, i -> texts.containsKey("caution." + i), i -> i + 1)
                .mapToObj(i -> say("caution." + i))
                .toList();
    }

    private static String text(String key, String place, String... namesAndTexts) {
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            if (namesAndTexts[i].equals(place)) {
                return namesAndTexts[i + 1];
            }
        }
        throw new IllegalArgumentException(key + " wants {" + place + "}");
    }

    /** The texts of all keys with one of these beginnings, their places left open, by key: for a page that speaks by itself. */
    public SortedMap<String, String> under(Set<String> beginnings) {
        var found = new TreeMap<String, String>();
        texts.stringPropertyNames().stream()
                .filter(key -> beginnings.stream().anyMatch(key::startsWith))
                .forEach(key -> found.put(key, texts.getProperty(key)));
        return found;
    }

    /** The keys, for a test that holds languages against each other. */
    public Set<String> keys() {
        return texts.stringPropertyNames();
    }
}
