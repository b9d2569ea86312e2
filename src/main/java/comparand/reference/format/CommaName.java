package comparand.reference.format;

import comparand.reference.Name;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names as RIS has them: {@code Family, Given, Suffix}; a body is closed by a comma, so that commas within it are its own. */
final class CommaName {

    private static final Pattern INITIALS_BEHIND =
            Pattern.compile("(\\p{Lu}[\\p{L}'\u2019-]*) ((?:\\p{Lu}\\.? ?){1,3})");

    private CommaName() {}

    /** Empty if nothing is said, or only that there are others. */
    static Optional<Name> read(String raw) {
        var text = Plain.text(raw);
        if (text.replace(",", "").isBlank() || text.matches("(?i)et\\.? al\\.?,?|others")) {
            return Optional.empty();
        }
        if (text.endsWith(",")) {
            return Optional.of(Name.body(text.substring(0, text.length() - 1).strip()));
        }
        var parts = text.split("\\s*,\\s*", 3);
        if (parts.length > 1 && !parts[0].isEmpty()) {
            return Optional.of(Name.splitting(parts[0], parts[1], parts.length > 2 ? parts[2] : ""));
        }
        var brief = INITIALS_BEHIND.matcher(text);
        if (brief.matches()) {
            return Optional.of(Name.person(brief.group(1), brief.group(2).strip()));
        }
        return Optional.of(text.indexOf(' ') < 0 && parts.length == 1 ? Name.person(text, "") : Name.body(text));
    }

    static String text(Name name) {
        if (name.isBody()) {
            return name.literal() + ",";
        }
        var given = name.first();
        return name.last()
                + (given.isEmpty() && name.suffix().isEmpty() ? "" : ", " + given)
                + (name.suffix().isEmpty() ? "" : ", " + name.suffix());
    }
}
