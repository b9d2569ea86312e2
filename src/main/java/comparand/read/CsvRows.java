package comparand.read;

import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.model.library.DataFileRecord;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** The rows of a separated-values file, streamed. */
final class CsvRows implements RowSource {

    private final Path path;
    private final String file;
    private final char separator;
    private final Charset charset;
    private final List<String> header;
    private static final Pattern LINE = Pattern.compile("line (\\d+)");

    private CsvRows(Path path, String file, char separator, Charset charset) {
        this.path = path;
        this.file = file;
        this.separator = separator;
        this.charset = charset;
        this.header = firstLine();
        requireHeadings();
    }

    /**
     * A file as its mapping describes it.
     *
     * @throws UnreadableRows if not even the heading can be read
     */
    static CsvRows open(Path path, String file, DataFileRecord mapping, Charset charset) throws IOException {
        if (isArchive(path)) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "this is a spreadsheet or an archive, not rows of text",
                    "save its sheet as CSV");
        }
        return new CsvRows(path, file, mapping.separator().value().sign(), charset);
    }

    private void requireHeadings() {
        if (header.isEmpty()) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "this file holds nothing",
                    "put a line of headings and the rows into it, or take it out of `files:`");
        }
        var seen = new HashSet<String>();
        for (int i = 0; i < header.size(); i++) {
            if (!seen.add(header.get(i))) {
                throw new UnreadableRows(
                        place(1, i),
                        "the heading `%s` stands over two columns".formatted(header.get(i)),
                        "give each column a heading of its own");
            }
        }
    }

    /** The first bytes of office files and archives, whatever they are called. */
    private static boolean isArchive(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            var first = in.readNBytes(4);
            return first.length == 4 && first[0] == 'P' && first[1] == 'K' && first[2] == 3 && first[3] == 4;
        }
    }

    @Override
    public String file() {
        return file;
    }

    @Override
    public List<String> header() {
        return header;
    }

    @Override
    public void forEach(Consumer<Row> visitor) {
        read((record, first) -> {
            if (!first) {
                visitor.accept(new Row(
                        (int) record.getStartingLineNumber(),
                        record.getFields().stream().map(String::strip).toList()));
            }
            return true;
        });
    }

    @Override
    public Span place(int line, int cell) {
        try (var text = new BufferedReader(text())) {
            return text.lines()
                    .skip(line - 1L)
                    .findFirst()
                    .map(raw -> cell(raw, line, cell))
                    .orElse(new Span(file, line, 1, 1));
        } catch (IOException | UncheckedIOException e) {
            return new Span(file, line, 1, 1);
        }
    }

    /** Walks to the cell over separators that do not stand in quotes. */
    private Span cell(String raw, int line, int cell) {
        int start = 0;
        int passed = 0;
        boolean quoted = false;
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            quoted ^= c == '"';
            if (c == separator && !quoted) {
                if (passed == cell) {
                    return span(raw, line, start, i);
                }
                passed++;
                start = i + 1;
            }
        }
        return span(raw, line, passed == cell ? start : 0, raw.length());
    }

    private Span span(String raw, int line, int from, int to) {
        int column = raw.codePointCount(0, from) + 1;
        return new Span(file, line, column, Math.max(1, raw.codePointCount(from, to)));
    }

    private List<String> firstLine() {
        var found = new ArrayList<String>();
        read((record, first) -> {
            record.getFields().stream().map(String::strip).forEach(found::add);
            return false;
        });
        return List.copyOf(found);
    }

    /** Returns false to stop reading. */
    private interface Visitor {
        boolean visit(CsvRecord record, boolean first);
    }

    private void read(Visitor visitor) {
        try (Reader text = text();
                CsvReader<CsvRecord> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .skipEmptyLines(true)
                        .allowUnclosedQuote(false)
                        // a row of another length is a finding of its own, with its line
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            boolean first = true;
            for (var record : csv) {
                if (!visitor.visit(record, first)) {
                    return;
                }
                first = false;
            }
        } catch (CharacterCodingException e) {
            throw encoding(e);
        } catch (UncheckedIOException e) {
            throw e.getCause() instanceof CharacterCodingException coding ? encoding(coding) : cutShort(e);
        } catch (CsvParseException e) {
            int line = lineOf(e);
            throw new UnreadableRows(
                    new Span(file, line, 1, 1),
                    "the row that begins in line %d cannot be split into cells".formatted(line),
                    "check its quotes and the declared separator",
                    e);
        } catch (IOException e) {
            throw cutShort(e);
        }
    }

    /** The parser names the line in its message only. */
    private static int lineOf(CsvParseException e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            var line = LINE.matcher(String.valueOf(t.getMessage()));
            if (line.find()) {
                return Integer.parseInt(line.group(1));
            }
        }
        return 1;
    }

    private UnreadableRows cutShort(Exception cause) {
        return new UnreadableRows(
                Span.startOf(file), "this file could not be read to its end", "check that it is whole", cause);
    }

    /** The text behind a byte order mark, which some programs write before it. */
    private Reader text() throws IOException {
        var text = new PushbackReader(
                new InputStreamReader(new BufferedInputStream(Files.newInputStream(path)), decoder()));
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

    private UnreadableRows encoding(Exception cause) {
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
                    boolean ends = sign.get() == '\n';
                    line += ends ? 1 : 0;
                    column = ends ? 1 : column + 1;
                }
                sign.clear();
            }
        } catch (IOException e) {
            return Span.startOf(file);
        }
        return new Span(file, line, column, 1);
    }
}
