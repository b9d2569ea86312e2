package comparand.reference.format;

import comparand.reference.Field;
import java.util.regex.Pattern;

/** International standard numbers, which RIS puts under one tag: four and four digits of a serial, or those of a book. */
final class SerialNumbers {

    private static final Pattern ISSN = Pattern.compile("\\d{4}-?\\d{3}[\\dXx]");
    private static final Pattern ISBN = Pattern.compile("(?:97[89][- ]?)?\\d[\\d -]{7,14}[\\dXx]");

    private SerialNumbers() {}

    static void read(Draft draft, String tag, String raw) {
        var text = Plain.text(raw);
        if (ISSN.matcher(text).matches() && !draft.has(Field.ISSN)) {
            draft.set(Field.ISSN, text);
        } else if (ISBN.matcher(text).matches() && !ISSN.matcher(text).matches() && !draft.has(Field.ISBN)) {
            draft.set(Field.ISBN, text);
        } else {
            draft.keep(tag, text);
        }
    }
}
