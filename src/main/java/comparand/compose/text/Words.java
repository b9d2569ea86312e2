package comparand.compose.text;

import comparand.document.NoBreak;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
        var name = "words-" + language + ".properties";
        try (var in = Words.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no " + name);
            }
            var texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return new Words(texts);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
