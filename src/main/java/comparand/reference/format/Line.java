package comparand.reference.format;

import comparand.diag.Span;

/**
 * A line of a text file.
 *
 * @param number from 1
 * @param offset of its first sign in the text
 */
record Line(String file, int number, int offset, String text) {

    /** The stretch of it that begins at an index of its text. */
    Span part(int index, int length) {
        int from = Math.min(Math.max(0, index), text.length());
        int to = Math.min(text.length(), from + Math.max(0, length));
        return new Span(file, number, text.codePointCount(0, from) + 1, Math.max(1, text.codePointCount(from, to)));
    }

    Span whole() {
        int from = text.length() - text.stripLeading().length();
        return part(from, text.strip().length());
    }
}
