package comparand.document.record;

import static java.util.Objects.requireNonNull;

/** One key of a record, and what stands behind it. */
public record Field(String key, Entry value) {

    public Field {
        requireNonNull(value, "value");
        if (key.isEmpty()) {
            throw new IllegalArgumentException("a key is a word");
        }
    }

    public static Field of(String key, String text) {
        return new Field(key, new Entry.Words(text));
    }
}
