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
        return cut(QUOTED.matcher(signs(text)).replaceAll(m -> Matcher.quoteReplacement(shortened(m.group()))));
    }

    /** What is to be typed, as one line: shortened, its quoted words would be of no use. */
    static String toType(String text) {
        return cut(signs(text));
    }

    private static String cut(String shown) {
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    /** Words with the signs around them. */
    private static String shortened(String quote) {
        return quote.length() - 2 <= LONGEST_QUOTE
                ? quote
                : quote.substring(0, 1 + LONGEST_QUOTE) + "…" + quote.charAt(0);
    }

    /**
     * Every control character as a dot, so that columns stay where they are, and so every sign that turns the order of what is
     * shown (UAX 9, 2) and every half of a pair of surrogates; a tab as a blank.
     */
    static String signs(String text) {
        int at = 0;
        while (at < text.length() && !steers(text, at)) {
            at++;
        }
        if (at == text.length()) {
            return text;
        }
        var out = new StringBuilder(text);
        for (int i = at; i < out.length(); i++) {
            if (steers(text, i)) {
                out.setCharAt(i, text.charAt(i) == '\t' ? ' ' : '·');
            }
        }
        return out.toString();
    }

    private static boolean steers(String text, int at) {
        char c = text.charAt(at);
        if (c < 0x2028) {
            return Character.isISOControl(c);
        }
        return c <= 0x202E
                || (c >= 0x2066 && c <= 0x2069)
                || (Character.isHighSurrogate(c)
                        && (at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1))))
                || (Character.isLowSurrogate(c) && (at == 0 || !Character.isHighSurrogate(text.charAt(at - 1))));
    }
}
