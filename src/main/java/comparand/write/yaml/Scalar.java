package comparand.write.yaml;

import java.util.Set;
import java.util.regex.Pattern;

/** One text as YAML 1.2 writes it: plain where no reader could take it for anything else, else in double quotes. */
final class Scalar {

    /** What others printed or said is in quotes always, so that it is seen to be theirs. */
    private static final Set<String> VERBATIM = Set.of(
            "printed", "quote", "translation", "claim", "title", "notice", "reason", "remark", "original", "terms");

    /** Letters, digits and the signs of quantities, behind a sign that opens nothing in YAML. */
    private static final Pattern PLAIN = Pattern.compile(
            "[\\p{L}\\p{N}.+≥≤<°µ±/(](?:[\\p{L}\\p{N}.+°µ²³±·≥≤<>/()%;=^_ -]|:(?=[^ ]))*+|-[\\p{N}.][\\p{L}\\p{N}.°µ²³/()% -]*+");

    private static final Set<String> NOT_TEXT =
            Set.of("null", "Null", "NULL", "true", "True", "TRUE", "false", "False", "FALSE", "<<");

    private Scalar() {}

    static String of(String key, String text) {
        return !VERBATIM.contains(key) && isPlain(text) ? text : quoted(text);
    }

    /** A key. */
    static String key(String text) {
        return isPlain(text) && text.indexOf(':') < 0 ? text : quoted(text);
    }

    private static boolean isPlain(String text) {
        return PLAIN.matcher(text).matches() && !text.endsWith(" ") && !text.endsWith(":") && !NOT_TEXT.contains(text);
    }

    private static String quoted(String text) {
        var out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (isShown(c)) {
                        out.appendCodePoint(c);
                    } else {
                        out.append(c > 0xFFFF ? "\\U%08X".formatted(c) : "\\u%04X".formatted(c));
                    }
                }
            }
        });
        return out.append('"').toString();
    }

    /** Signs that an editor shows as they are; the others, such as a byte order mark, are written as escapes. */
    private static boolean isShown(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            case Character.SPACE_SEPARATOR -> c == ' ';
            default -> true;
        };
    }
}
