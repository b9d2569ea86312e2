package comparand.reference;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The form of a digital object identifier: {@code 10.}, a registrant, a slash and anything printable (ISO 26324; DOI Handbook,
 * section 2.2). Whether it leads anywhere is not known here: nothing is looked up.
 */
public final class Doi {

    private static final Pattern BEFORE =
            Pattern.compile("(?i)^\\s*(?:<)?(?:(?:https?://)?(?:dx\\.|www\\.)?doi\\.org/|doi\\s*[:=]?\\s*|info:doi/)");
    private static final Pattern FORM = Pattern.compile("10\\.\\d{4,9}(?:\\.\\d+)*/[^\\s\\p{Cntrl}]+");
    private static final Pattern INSIDE = Pattern.compile("10\\.\\d{4,9}(?:\\.\\d+)*/[^\\s\"<>]+");

    private Doi() {}

    /** The name itself, without an address or the word before it; empty if the text has not the form of one. */
    public static Optional<String> read(String text) {
        var name = text.strip();
        for (var before = BEFORE.matcher(name); before.find(); before = BEFORE.matcher(name)) {
            name = name.substring(before.end()).strip();
        }
        name = name.replaceAll("(?i)%2F", "/").replaceFirst("[>\\s]+$", "");
        return FORM.matcher(name).matches() ? Optional.of(name) : Optional.empty();
    }

    /** Whether an address leads to a DOI. */
    public static boolean isAddress(String url) {
        return url.matches("(?i)\\s*https?://(?:dx\\.|www\\.)?doi\\.org/.*")
                && read(url).isPresent();
    }

    /** The first that stands within a text, without the full stop of its sentence. */
    public static Optional<String> within(String text) {
        var found = INSIDE.matcher(text);
        return found.find() ? Optional.of(found.group().replaceFirst("[.,;:)\\]]+$", "")) : Optional.empty();
    }

    /** Names that differ only in capitals are one name (DOI Handbook, 2.4). */
    public static String key(String name) {
        return read(name).orElse(name.strip()).toLowerCase(Locale.ROOT);
    }
}
