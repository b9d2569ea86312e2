package comparand.read.yaml;

import comparand.diag.Span;

/** Places in the text of a file by their offset: lines end as YAML ends them (1.2.2, 5.4), with LF, CR, or both. */
final class TextPlace {

    private TextPlace() {}

    /** The sign at an offset, counted in UTF-16 units. */
    static Span of(String file, CharSequence text, int offset) {
        int line = 1;
        int start = 0;
        int end = Math.min(offset, text.length());
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
                line++;
                start = i + 1;
            }
        }
        return new Span(file, line, Character.codePointCount(text, start, end) + 1, 1);
    }
}
