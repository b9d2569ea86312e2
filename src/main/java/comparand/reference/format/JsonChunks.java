package comparand.reference.format;

import java.util.ArrayList;
import java.util.List;

/**
 * The objects of a JSON list, each as a stretch of the text: so that a fault in one does not hide the others.
 */
final class JsonChunks {

    /**
     * @param offset of its opening brace in the text
     * @param text from that brace to the one that closes it, or to where the next object or the end of the text comes first
     */
    record Chunk(int offset, String text) {}

    private JsonChunks() {}

    static List<Chunk> of(String text) {
        var chunks = new ArrayList<Chunk>();
        for (int at = text.indexOf('{'); at >= 0; ) {
            int end = end(text, at);
            chunks.add(new Chunk(at, text.substring(at, end)));
            at = text.indexOf('{', end);
        }
        return chunks;
    }

    private static int end(String text, int from) {
        int depth = 0;
        boolean quoted = false;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                i += c == '\\' ? 1 : 0;
                // a text goes over no line: one that does has lost its closing quote
                quoted = c != '"' && c != '\n';
            } else if (c == '"') {
                quoted = true;
            } else {
                depth += c == '{' ? 1 : c == '}' ? -1 : 0;
                if (depth == 0) {
                    return i + 1;
                }
            }
        }
        return text.length();
    }
}
