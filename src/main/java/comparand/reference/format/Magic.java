package comparand.reference.format;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What a file is that is no text, by its first bytes. */
final class Magic {

    private static final int LOOKED_AT = 4096;

    private Magic() {}

    static Optional<String> of(byte[] bytes) {
        var start = new String(bytes, 0, Math.min(bytes.length, 8), StandardCharsets.ISO_8859_1);
        if (start.startsWith("PK\u0003\u0004")) {
            return Optional.of("an archive or an office file");
        }
        if (start.startsWith("%PDF")) {
            return Optional.of("a PDF");
        }
        if (start.startsWith("\u00D0\u00CF\u0011\u00E0")) {
            return Optional.of("an old office file");
        }
        boolean marked = start.startsWith("\u00FF\u00FE") || start.startsWith("\u00FE\u00FF");
        return !marked && zeros(bytes) ? Optional.of("UTF-16 without its mark, or no text at all") : Optional.empty();
    }

    /** Text of one byte a sign holds no zero; a single one may be damage. */
    private static boolean zeros(byte[] bytes) {
        int looked = Math.min(bytes.length, LOOKED_AT);
        int zeros = 0;
        for (int i = 0; i < looked; i++) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return zeros > Math.max(8, looked / 10);
    }
}
