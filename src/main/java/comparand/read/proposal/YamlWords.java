package comparand.read.proposal;

import java.util.regex.Pattern;

/** Texts as they are written in a record. */
final class YamlWords {

    private static final Pattern PLAIN = Pattern.compile("[\\p{L}_][\\p{L}\\d_./²µ°% -]*[\\p{L}\\d_²%]|\\p{L}");
    private static final Pattern TAKEN = Pattern.compile("(?i)y|n|yes|no|on|off|true|false|null|nan");

    private YamlWords() {}

    /** The text itself where YAML has no other meaning for it, else in double quotes. */
    static String quoted(String text) {
        if (PLAIN.matcher(text).matches() && !TAKEN.matcher(text).matches()) {
            return text;
        }
        var out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
            } else if (Character.isISOControl(c)) {
                out.append("\\u").append(Integer.toHexString(0x10000 | c).substring(1));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.append('"').toString();
    }

    /** Words in a comment: on one line, whatever they hold. */
    static String comment(String text) {
        var line = new StringBuilder();
        text.codePoints()
                .map(c -> Character.isISOControl(c) || c == '\u2028' || c == '\u2029' ? ' ' : c)
                .forEach(line::appendCodePoint);
        return line.length() > 200 ? line.substring(0, 200) + "…" : line.toString();
    }
}
