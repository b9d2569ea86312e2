package comparand.diag;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes what a file holds fit to be shown: no sign that steers a terminal, no word that buries the sentence. */
final class PlainText {

    private static final int LONGEST_QUOTE = 80;
    private static final int LONGEST = 1000;
    /** From an opening sign to the next of its kind, so that what stands between two quoted words is none. */
    private static final Pattern QUOTED = Pattern.compile("`[^`]*+`|\"[^\"]*+\"");

    private PlainText() {}

    /** A sentence as one line, its quoted words shortened. */
    static String line(String text) {
        var shown = QUOTED.matcher(signs(text)).replaceAll(m -> Matcher.quoteReplacement(shortened(m.group())));
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    /** Words with the signs around them. */
    private static String shortened(String quote) {
        return quote.length() - 2 <= LONGEST_QUOTE
                ? quote
                : quote.substring(0, 1 + LONGEST_QUOTE) + "…" + quote.charAt(0);
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
