package comparand.read.csv;

import comparand.diag.Span;
import comparand.model.UnreadableRows;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A text file in its declared encoding. No byte is replaced: one that does not belong to the encoding ends the reading. */
final class CsvText {

    private static final int[] UTF_8_MARK = {0xEF, 0xBB, 0xBF};
    private static final int CHUNK = 1 << 16;

    private final Path path;
    private final String file;
    private final Charset charset;

    CsvText(Path path, String file, Charset charset) {
        this.path = path;
        this.file = file;
        this.charset = charset;
    }

    /**
     * Looks at what the bytes say of themselves.
     *
     * @throws UnreadableRows if they are no text, or plainly in another encoding than the declared one
     */
    void requireDeclaredEncoding() throws IOException {
        byte[] first;
        try (InputStream in = Files.newInputStream(path)) {
            first = in.readNBytes(4);
        }
        if (startsWith(first, 'P', 'K', 3, 4) || startsWith(first, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "this is a spreadsheet or an archive, not rows of text",
                    "save its sheet as CSV, or give the file its own ending, .xlsx");
        }
        boolean isUtf16 = startsWith(first, 0xFF, 0xFE) || startsWith(first, 0xFE, 0xFF);
        if (isUtf16 && !charset.name().startsWith("UTF-16")) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "by its first bytes this file is UTF-16, and it is declared to be " + charset.name(),
                    "write `encoding: UTF-16`, or save the file as UTF-8");
        }
        if (isSingleByte()) {
            refuseUtf8(startsWith(first, UTF_8_MARK));
        }
    }

    private boolean isSingleByte() {
        return charset.canEncode()
                && charset.newEncoder().maxBytesPerChar() == 1.0f
                && !charset.name().equals("US-ASCII");
    }

    /** Text in UTF-8 can be read in any encoding of one byte, as other signs. */
    private void refuseUtf8(boolean marked) throws IOException {
        var utf8 = new CsvText(path, file, StandardCharsets.UTF_8);
        if (marked || utf8.isWholeWithSignsBeyondAscii()) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "by its bytes this file is UTF-8, and it is declared to be " + charset.name(),
                    "write `encoding: UTF-8`");
        }
    }

    /** Whether every byte belongs to the encoding. */
    boolean isWhole() throws IOException {
        var buffer = new char[CHUNK];
        try (Reader text = open()) {
            while (text.read(buffer) >= 0) {
                // only that it can be read counts
            }
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    boolean isWholeWithSignsBeyondAscii() throws IOException {
        var buffer = new char[CHUNK];
        boolean beyond = false;
        try (Reader text = open()) {
            for (int n = text.read(buffer); n >= 0; n = text.read(buffer)) {
                for (int i = 0; i < n && !beyond; i++) {
                    beyond = buffer[i] > 0x7F;
                }
            }
        } catch (CharacterCodingException e) {
            return false;
        }
        return beyond;
    }

    /** The text behind a byte order mark, which some programs write before it. */
    Reader open() throws IOException {
        var text = new PushbackReader(
                new InputStreamReader(new BufferedInputStream(Files.newInputStream(path), CHUNK), decoder()));
        int mark = text.read();
        if (mark != '\uFEFF' && mark >= 0) {
            text.unread(mark);
        }
        return text;
    }

    private CharsetDecoder decoder() {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** What to say when decoding has failed. */
    UnreadableRows undecodable(Exception cause) {
        var place = undecoded();
        return new UnreadableRows(
                place,
                "a byte in line %d is not %s".formatted(place.line(), charset.name()),
                "declare the encoding the file was saved in, often `encoding: windows-1252` for older spreadsheets",
                cause);
    }

    /** Reads sign by sign up to the one that cannot be decoded: slow, and done once. */
    private Span undecoded() {
        int line = 1;
        int column = 1;
        char before = '\0';
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
            var decoder = decoder();
            var bytes = ByteBuffer.allocate(16);
            var sign = CharBuffer.allocate(4);
            for (int b = in.read(); b >= 0; b = in.read()) {
                bytes.put((byte) b).flip();
                if (decoder.decode(bytes, sign, false).isError()) {
                    break;
                }
                bytes.compact();
                sign.flip();
                while (sign.hasRemaining()) {
                    char c = sign.get();
                    // a line ends with LF, CR, or both, as the parser and the editors count
                    boolean ends = c == '\r' || (c == '\n' && before != '\r');
                    line += ends ? 1 : 0;
                    column = ends || c == '\n' ? 1 : column + 1;
                    before = c;
                }
                sign.clear();
            }
        } catch (IOException e) {
            return Span.startOf(file);
        }
        return new Span(file, line, column, 1);
    }

    private static boolean startsWith(byte[] bytes, int... magic) {
        return bytes.length >= magic.length
                && Arrays.equals(Arrays.stream(magic).toArray(), unsigned(bytes, magic.length));
    }

    private static int[] unsigned(byte[] bytes, int count) {
        var numbers = new int[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = bytes[i] & 0xFF;
        }
        return numbers;
    }
}
