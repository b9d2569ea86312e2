package comparand.read.yaml;

/** Signs in the text of a record that nobody sees, and that change what a document says or break it. */
final class TextSigns {

    private TextSigns() {}

    /**
     * Where the first sign stands that no text file may hold, and that comes into a text by an escape only: control characters
     * but for tabs and line ends (XML 1.0, 2.2), half of a pair of surrogates, and what Unicode says is no character; -1 if none
     * does.
     */
    static int unprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = c < 0x20 ? c != '\t' && c != '\n' && c != '\r' : c >= 0x7F && c < 0xA0 && c != 0x85;
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (control || Character.isSurrogate(c) || c == '\uFFFE' || c == '\uFFFF') {
                return i;
            }
        }
        return -1;
    }

    /**
     * Where the first sign stands that turns the order in which what follows is shown: embeddings, overrides and isolates
     * (UAX 9, 2); -1 if none does. Marks of direction, which turn nothing by themselves, are left alone.
     */
    static int turning(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '\u202A' && (c <= '\u202E' || (c >= '\u2066' && c <= '\u2069'))) {
                return i;
            }
        }
        return -1;
    }
}
