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
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The words of one language. */
public final class Words {

    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]+)}");

    private final Properties texts;

    private Words(Properties texts) {
        this.texts = texts;
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
        if (!language.matches("[a-z]{2,3}(-[A-Za-z0-9]+)*")) {
            return Optional.empty();
        }
        try (var in = Words.class.getResourceAsStream(file(language))) {
            if (in == null) {
                return Optional.empty();
            }
            var texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return Optional.of(new Words(texts));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
        return findings.isEmpty() ? Outcome.of(new Words(changed)) : Outcome.stopped(findings);
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

    /** The keys, for a test that holds languages against each other. */
    public Set<String> keys() {
        return texts.stringPropertyNames();
    }
}
