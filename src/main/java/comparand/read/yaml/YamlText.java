package comparand.read.yaml;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The bytes of a file as UTF-8 text, or the finding that says why they are none. */
final class YamlText {

    static final int LARGEST_FILE = RecordBytes.LARGEST;

    private YamlText() {}

    static Optional<String> decode(String file, byte[] bytes, List<Diagnostic> findings) {
        if (bytes.length > LARGEST_FILE) {
            findings.add(Diagnostic.stop(
                    "file-too-large",
                    Span.startOf(file),
                    "this file has more than the %d bytes a record may have".formatted(LARGEST_FILE),
                    "a record file is written and read by people; one of this size is something else",
                    "split it, or move raw data into a CSV or XLSX file of a study"));
            return Optional.empty();
        }
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            findings.add(Diagnostic.stop(
                    "file-not-text",
                    Span.startOf(file),
                    "this file is written in UTF-16",
                    "records are plain text in one encoding, so that every program shows the same signs",
                    "save it as UTF-8"));
            return Optional.empty();
        }
        if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, '%', 'P', 'D', 'F') || contains(bytes, (byte) 0)) {
            findings.add(Diagnostic.stop(
                    "file-not-text",
                    Span.startOf(file),
                    "this is not a text file",
                    "records are plain text that a successor can read",
                    "save it as plain text in UTF-8, or move it out of the library"));
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        var in = ByteBuffer.wrap(bytes);
        var out = CharBuffer.allocate(bytes.length + 1);
        var result = decoder.decode(in, out, true);
        out.flip();
        var text = out.toString();
        if (result.isError()) {
            int at = bytes[in.position()] & 0xFF;
            findings.add(Diagnostic.stop(
                    "file-not-utf8",
                    TextPlace.of(file, text, text.length()),
                    isCutOff(bytes, in.position())
                            ? "the file ends in the middle of a sign, after the byte 0x%02X".formatted(at)
                            : "the byte 0x%02X here is not UTF-8".formatted(at),
                    "in another encoding °, ±, µ and ² turn into other signs, and numbers lose their units",
                    "save the file as UTF-8"));
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    /** Whether the sign that starts here would need more bytes than the file has. */
    private static boolean isCutOff(byte[] bytes, int start) {
        int lead = bytes[start] & 0xFF;
        int needed = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 1;
        return start + needed > bytes.length;
    }

    private static boolean startsWith(byte[] bytes, int... magic) {
        if (bytes.length < magic.length) {
            return false;
        }
        for (int i = 0; i < magic.length; i++) {
            if (bytes[i] != (byte) magic[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean contains(byte[] bytes, byte wanted) {
        for (byte b : bytes) {
            if (b == wanted) {
                return true;
            }
        }
        return false;
    }
}
