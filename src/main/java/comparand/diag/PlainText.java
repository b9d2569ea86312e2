package comparand.diag;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes what a file holds fit to be shown: no sign that steers a terminal, no word that buries the sentence. */
final class PlainText {

    private static final int LONGEST_QUOTE = 80;
    private static final int LONGEST = 1000;
    /** From an opening sign to the next of its kind, so that what stands between two quoted words is none. */
    private static final Pattern QUOTED = Pattern.compile("([`\"])((?:(?!\\1).)*+)\\1", Pattern.DOTALL);

    private PlainText() {}

    /** A sentence as one line, its quoted words shortened. */
    static String line(String text) {
        var shown = QUOTED.matcher(signs(text))
                .replaceAll(m -> Matcher.quoteReplacement(
                        m.group(2).length() <= LONGEST_QUOTE
                                ? m.group()
                                : m.group(1) + m.group(2).substring(0, LONGEST_QUOTE) + "…" + m.group(1)));
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    /** Every control character as a dot, so that columns stay where they are; a tab as a blank. */
    static String signs(String text) {
        if (text.codePoints().noneMatch(Character::isISOControl)) {
            return text;
        }
        return text.codePoints()
                .map(c -> c == '\t' ? ' ' : Character.isISOControl(c) ? '·' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
