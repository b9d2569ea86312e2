package comparand.write.pdf;

import java.nio.charset.StandardCharsets;

/**
 * The PDF library names embedded subsets by six random letters. Here they are replaced, outside of streams and without
 * moving a byte, so that one document gives one file.
 */
final class StableBytes {

    private static final int PREFIX = 6;
    private static final byte[] STREAM = "stream".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = "endstream".getBytes(StandardCharsets.US_ASCII);

    private StableBytes() {}

    static byte[] of(byte[] pdf) {
        var out = pdf.clone();
        int i = 0;
        while (i < out.length - PREFIX - 1) {
            if (startsWith(out, i, STREAM) && !startsWith(out, i - 3, END)) {
                i = behind(out, i);
            } else if (out[i] == '/' && isPrefix(out, i + 1)) {
                for (int k = 1; k <= PREFIX; k++) {
                    out[i + k] = 'A';
                }
                i += PREFIX;
            } else {
                i++;
            }
        }
        return out;
    }

    private static boolean isPrefix(byte[] bytes, int at) {
        for (int k = 0; k < PREFIX; k++) {
            if (bytes[at + k] < 'A' || bytes[at + k] > 'Z') {
                return false;
            }
        }
        return bytes[at + PREFIX] == '+';
    }

    private static int behind(byte[] bytes, int stream) {
        for (int i = stream; i < bytes.length; i++) {
            if (startsWith(bytes, i, END)) {
                return i + END.length;
            }
        }
        return bytes.length;
    }

    private static boolean startsWith(byte[] bytes, int at, byte[] word) {
        if (at < 0 || at + word.length > bytes.length) {
            return false;
        }
        for (int i = 0; i < word.length; i++) {
            if (bytes[at + i] != word[i]) {
                return false;
            }
        }
        return true;
    }
}
