package comparand.reference;

import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Languages by the two letters of ISO 639-1, which records use, and by the three of ISO 639-2 for bibliographies, which MEDLINE
 * uses ({@code ger}, not {@code deu}).
 */
public final class Languages {

    /** Where ISO 639-2 has two codes, the one of bibliographies. */
    private static final Map<String, String> FOR_BIBLIOGRAPHIES = Map.ofEntries(
            Map.entry("sq", "alb"),
            Map.entry("hy", "arm"),
            Map.entry("eu", "baq"),
            Map.entry("my", "bur"),
            Map.entry("zh", "chi"),
            Map.entry("cs", "cze"),
            Map.entry("nl", "dut"),
            Map.entry("fr", "fre"),
            Map.entry("ka", "geo"),
            Map.entry("de", "ger"),
            Map.entry("el", "gre"),
            Map.entry("is", "ice"),
            Map.entry("mk", "mac"),
            Map.entry("mi", "mao"),
            Map.entry("ms", "may"),
            Map.entry("fa", "per"),
            Map.entry("ro", "rum"),
            Map.entry("sk", "slo"),
            Map.entry("bo", "tib"),
            Map.entry("cy", "wel"));

    private static final Map<String, String> TWO_LETTERS = twoLetters();

    private Languages() {}

    private static Map<String, String> twoLetters() {
        var known = new TreeMap<String, String>();
        Arrays.stream(Locale.getISOLanguages()).sorted().forEach(two -> {
            var locale = Locale.forLanguageTag(two);
            known.putIfAbsent(locale.getISO3Language(), locale.getLanguage());
            known.putIfAbsent(locale.getDisplayLanguage(Locale.ENGLISH).toLowerCase(Locale.ROOT), locale.getLanguage());
            known.putIfAbsent(locale.getLanguage(), locale.getLanguage());
        });
        FOR_BIBLIOGRAPHIES.forEach((two, three) -> known.put(three, two));
        return Collections.unmodifiableMap(known);
    }

    /** The two letters for a code or an English name; a text that is neither stays as it is. */
    public static String two(String text) {
        return TWO_LETTERS.getOrDefault(text.strip().toLowerCase(Locale.ROOT), text.strip());
    }

    /** The three letters that bibliographies use; a text that is no code stays as it is. */
    public static String three(String text) {
        var known = FOR_BIBLIOGRAPHIES.get(text);
        if (known != null) {
            return known;
        }
        return text.equals(TWO_LETTERS.get(text)) ? Locale.forLanguageTag(text).getISO3Language() : text;
    }
}
