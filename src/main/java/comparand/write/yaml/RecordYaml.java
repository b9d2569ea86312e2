package comparand.write.yaml;

import comparand.document.record.Entry;
import comparand.document.record.Field;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A record as the text of a file: keys in their order, what is short on one line, what is long on lines of its own. The same
 * record gives the same text, and a changed field changes few lines.
 */
public final class RecordYaml {

    /** As long as a line may be before its parts get lines of their own. */
    private static final int WIDEST = 118;

    private RecordYaml() {}

    /**
     * The text of a new file.
     *
     * @param comments lines for the head of the file, without the sign that opens a comment
     */
    public static String text(Entry.Fields record, List<String> comments) {
        var out = new StringBuilder();
        comments.forEach(c -> out.append("# ").append(c).append('\n'));
        record.list().forEach(f -> out.append(field(f, 0)).append('\n'));
        return out.toString();
    }

    /** A key with its value, without indentation before it and without a line end behind it. */
    static String field(Field field, int indent) {
        return Scalar.key(field.key()) + ":" + value(field, indent);
    }

    /** What follows the colon: a space and one line, or lines of their own. */
    static String value(Field field, int indent) {
        var line = inline(field.key(), field.value());
        boolean fits = indent + field.key().length() + 2 + line.codePointCount(0, line.length()) <= WIDEST;
        return field.value()
                .<String>fold(
                        words -> " " + line,
                        items -> items.isEmpty()
                                        || (fits && items.list().stream().allMatch(RecordYaml::isFlat))
                                ? " " + line
                                : block(field.key(), items, indent + 2),
                        fields ->
                                fields.isEmpty() || (fits && isFlat(fields)) ? " " + line : block(fields, indent + 2));
    }

    /** An item of a list on lines of its own, behind its dash. */
    static String item(String key, Entry item, int indent) {
        return "- "
                + (item instanceof Entry.Fields fields && !fields.isEmpty()
                        ? lines(fields, indent + 2)
                        : inline(key, item));
    }

    private static String block(Entry.Fields fields, int indent) {
        return "\n" + " ".repeat(indent) + lines(fields, indent);
    }

    private static String lines(Entry.Fields fields, int indent) {
        return fields.list().stream().map(f -> field(f, indent)).collect(Collectors.joining("\n" + " ".repeat(indent)));
    }

    private static String block(String key, Entry.Items items, int indent) {
        var margin = "\n" + " ".repeat(indent);
        return items.list().stream().map(i -> margin + item(key, i, indent)).collect(Collectors.joining());
    }

    /** Whether its parts hold no parts of their own, but lists of words. */
    private static boolean isFlat(Entry entry) {
        return entry.<Boolean>fold(
                words -> true,
                items -> items.list().stream().allMatch(i -> i instanceof Entry.Words),
                fields -> fields.list().stream()
                        .allMatch(f -> !(f.value() instanceof Entry.Fields) && isFlat(f.value())));
    }

    /** All of it on one line, whatever its length. */
    static String inline(String key, Entry entry) {
        return entry.fold(
                words -> Scalar.of(key, words.text()),
                items -> items.list().stream().map(i -> inline(key, i)).collect(Collectors.joining(", ", "[", "]")),
                fields -> fields.list().stream()
                        .map(f -> Scalar.key(f.key()) + ": " + inline(f.key(), f.value()))
                        .collect(Collectors.joining(", ", "{", "}")));
    }
}
