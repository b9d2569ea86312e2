package comparand.write.html;

import java.util.ArrayDeque;
import java.util.Deque;

/** Markup as it grows. Every text and every attribute value that is not made here goes through {@link #escaped}. */
final class Html {

    private final StringBuilder markup = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * Begins an element.
     *
     * @param attributes names and values in turn
     */
    Html open(String element, String... attributes) {
        tag(element, attributes);
        open.push(element);
        return this;
    }

    /** Ends the element that was begun last. */
    Html close() {
        markup.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element that has no content, such as {@code meta}. */
    Html empty(String element, String... attributes) {
        tag(element, attributes);
        return this;
    }

    /** An element that holds text alone. */
    Html element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    Html text(String text) {
        markup.append(escaped(text));
        return this;
    }

    /** Markup that was escaped where it was made: a drawing, or what a script or style element holds. */
    Html made(String other) {
        markup.append(other);
        return this;
    }

    /** A line end between two elements where white space has no meaning. */
    Html line() {
        markup.append('\n');
        return this;
    }

    /** All of it. */
    String whole() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("elements are still open: " + open);
        }
        return markup.toString();
    }

    private void tag(String element, String... attributes) {
        markup.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            markup.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
        markup.append('>');
    }

    /**
     * Text as it may stand between tags and in quoted attribute values, so that a parser by the HTML Living Standard, sections
     * 13.2.5.1 and 13.2.5.36 (data state, double-quoted attribute value state), gives it back letter by letter. What no document
     * may hold (controls, halves of surrogate pairs, noncharacters) becomes U+FFFD, as parsers do with such input.
     */
    static String escaped(String text) {
        var escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                case '\r' -> escaped.append("&#13;");
                default -> escaped.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    private static boolean allowed(int c) {
        boolean control = Character.getType(c) == Character.CONTROL && c != '\n' && c != '\t';
        boolean half = Character.getType(c) == Character.SURROGATE;
        boolean none = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return !control && !half && !none;
    }
}
