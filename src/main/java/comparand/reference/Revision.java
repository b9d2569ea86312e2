package comparand.reference;

import java.util.Optional;
import java.util.regex.Pattern;

/** The revision of a controlled document, which references have where books have their edition. */
final class Revision {

    private static final Pattern FORM =
            Pattern.compile("(?i)(?:rev(?:ision)?|version|issue|ausgabe)\\.?\\s*:?\\s*(?<name>\\S{1,12})");

    private Revision() {}

    static String text(String revision) {
        return "Revision " + revision;
    }

    /** Empty where an edition names no revision. */
    static Optional<String> read(String edition) {
        var form = FORM.matcher(edition.strip());
        return form.matches() ? Optional.of(form.group("name")) : Optional.empty();
    }
}
