package comparand.document;

import java.time.LocalDate;
import java.util.List;

/**
 * What every output of a run carries.
 *
 * @param subtitle the question, in one sentence
 * @param date the day the report speaks of; also the time stamp written into files, so that no clock is read
 * @param fingerprint the first eight characters of the fingerprint of all inputs
 * @param state draft or released, in words
 * @param marks what must stand on every page, such as that the data are invented; may be empty
 * @param cautions the cautions, one paragraph each
 * @param language BCP 47 language of the text
 */
public record Edition(
        String title,
        String subtitle,
        LocalDate date,
        String preparedBy,
        String tool,
        String fingerprint,
        String state,
        List<String> marks,
        List<String> cautions,
        String language) {

    public Edition {
        marks = List.copyOf(marks);
        cautions = List.copyOf(cautions);
    }

    /** The same for a part that is a file of its own: under its own title, and under the whole title as its subject. */
    public Edition of(String part) {
        return new Edition(part, title, date, preparedBy, tool, fingerprint, state, marks, cautions, language);
    }

    /** One line: date, state, tool and fingerprint. */
    public String imprint(String join) {
        return String.join(join, date.toString(), state, tool, fingerprint);
    }
}
