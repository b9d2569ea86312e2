package comparand.reference.format;

import comparand.reference.Name;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names of MEDLINE: {@code Family, Given Suffix} in full, {@code Family JA Suffix} in short, without commas or full stops. */
final class MedlineName {

    private static final String SUFFIX = "(?:Jr\\.?|Sr\\.?|2nd|3rd|4th|5th|II|III|IV)";
    private static final Pattern FULL = Pattern.compile("(?<given>.*?)(?:(?<!\\s)\\s++(?<suffix>" + SUFFIX + "))?");
    private static final Pattern BRIEF =
            Pattern.compile("(?<family>.+?) (?<initials>\\p{Lu}{1,4})(?:\\s+(?<suffix>" + SUFFIX + "))?");

    private MedlineName() {}

    static Optional<Name> full(String text) {
        int comma = text.indexOf(',');
        var family = comma < 0 ? text : text.substring(0, comma).strip();
        if (family.isEmpty()) {
            return Optional.empty();
        }
        var rest = FULL.matcher(comma < 0 ? "" : text.substring(comma + 1).strip());
        if (!rest.matches()) {
            return Optional.of(Name.person(family, ""));
        }
        var suffix = rest.group("suffix");
        return Optional.of(Name.splitting(family, rest.group("given"), suffix == null ? "" : suffix));
    }

    static Optional<Name> brief(String text) {
        var form = BRIEF.matcher(text);
        if (form.matches()) {
            var suffix = form.group("suffix");
            return Optional.of(
                    Name.splitting(form.group("family"), form.group("initials"), suffix == null ? "" : suffix));
        }
        return full(text);
    }

    static String fullText(Name name) {
        var given = (name.first() + " " + name.suffix()).strip();
        return name.last() + (given.isEmpty() ? "" : ", " + given);
    }
}
