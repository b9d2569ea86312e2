package comparand.reference.format;

/** Text of a file made fit for a record: one line, single blanks, no sign that steers a terminal, turns the order of others or is forbidden by YAML. */
final class Plain {

    private Plain() {}

    static String text(String raw) {
        var out = new StringBuilder(raw.length());
        raw.codePoints().forEach(c -> {
            if (c == 0xFEFF || c == 0x200B || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069)) {
                return;
            }
            boolean isBlank = Character.isWhitespace(c) || (Character.isSpaceChar(c) && c != 0xA0 && c != 0x202F);
            boolean isForbidden = Character.isISOControl(c)
                    || (c >= 0xD800 && c <= 0xDFFF)
                    || (c & 0xFFFE) == 0xFFFE
                    || (c >= 0xFDD0 && c <= 0xFDEF);
            if (!isBlank && !isForbidden) {
                out.appendCodePoint(c);
            } else if (!out.isEmpty() && out.charAt(out.length() - 1) != ' ') {
                out.append(' ');
            }
        });
        return out.toString().strip();
    }
}
