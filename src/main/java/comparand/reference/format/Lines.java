package comparand.reference.format;

import comparand.diag.Span;
import java.util.ArrayList;
import java.util.List;

/** A text as lines, whatever ends them, and places in it by their offset. */
final class Lines {

    private final String file;
    private final List<Line> lines;

    private Lines(String file, List<Line> lines) {
        this.file = file;
        this.lines = lines;
    }

    static List<Line> of(String file, String text) {
        var lines = new ArrayList<Line>();
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                lines.add(new Line(file, lines.size() + 1, from, text.substring(from, i)));
                i += c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n' ? 1 : 0;
                from = i + 1;
            }
        }
        if (from < text.length()) {
            lines.add(new Line(file, lines.size() + 1, from, text.substring(from)));
        }
        return lines;
    }

    static Lines at(String file, String text) {
        return new Lines(file, of(file, text));
    }

    /** The place of a stretch of the text, as far as it lies on its first line. */
    Span span(int offset, int length) {
        if (lines.isEmpty()) {
            return Span.startOf(file);
        }
        int low = 0;
        int high = lines.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (lines.get(middle).offset() <= offset) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        var line = lines.get(low);
        return line.part(offset - line.offset(), length);
    }
}
