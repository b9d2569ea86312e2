package comparand.reference.format;

import comparand.diag.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An entry of a BibTeX file, its values still in TeX. */
record BibtexEntry(String type, String key, Span at, List<Field> fields) {

    /**
     * @param name in small letters
     * @param tex with strings expanded
     * @param months the same with the names of months left as they are called, {@code jan} to {@code dec}
     */
    record Field(String name, String tex, String months, Span span) {}

    BibtexEntry {
        type = type.toLowerCase(Locale.ROOT);
        fields = List.copyOf(fields);
    }

    Optional<Field> field(String name) {
        return fields.stream().filter(f -> f.name().equals(name)).findFirst();
    }
}
