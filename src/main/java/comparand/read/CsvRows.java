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
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The rows of a separated-values file, streamed. */
final class CsvRows implements RowSource {

    private final Path path;
    private final String file;
    private final char separator;
    private final Charset charset;
    private final List<String> header;

    private CsvRows(Path path, String file, char separator, Charset charset) {
        this.path = path;
        this.file = file;
        this.separator = separator;
        this.charset = charset;
        this.header = firstLine();
    }

    /**
     * A file as its mapping describes it.
     *
     * @throws UnreadableRows if not even the heading can be read
     */
    static CsvRows open(Path path, String file, DataFileRecord mapping, Charset charset) {
        return new CsvRows(path, file, mapping.separator().value().sign(), charset);
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
        try (var text = new BufferedReader(new InputStreamReader(Files.newInputStream(path), decoder()))) {
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
            record.getFields().stream()
                    .map(CsvRows::withoutMark)
                    .map(String::strip)
                    .forEach(found::add);
            return false;
        });
        return List.copyOf(found);
    }

    private static String withoutMark(String heading) {
        return heading.startsWith("\uFEFF") ? heading.substring(1) : heading;
    }

    /** Returns false to stop reading. */
    private interface Visitor {
        boolean visit(CsvRecord record, boolean first);
    }

    private void read(Visitor visitor) {
        int line = 1;
        try (Reader text = new InputStreamReader(new BufferedInputStream(Files.newInputStream(path)), decoder());
                CsvReader<CsvRecord> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .skipEmptyLines(true)
                        // a row of another length is a finding of its own, with its line
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            boolean first = true;
            for (var record : csv) {
                line = (int) record.getStartingLineNumber();
                if (!visitor.visit(record, first)) {
                    return;
                }
                first = false;
            }
        } catch (CharacterCodingException e) {
            throw encoding(line, e);
        } catch (UncheckedIOException e) {
            throw e.getCause() instanceof CharacterCodingException coding
                    ? encoding(line, coding)
                    : new UnreadableRows(
                            line, "this file could not be read to its end", "check that it is whole and try again", e);
        } catch (CsvParseException e) {
            throw new UnreadableRows(
                    line,
                    "the row behind line %d cannot be split into cells".formatted(line),
                    "check its quotes and the declared separator",
                    e);
        } catch (IOException e) {
            throw new UnreadableRows(
                    line, "this file could not be read to its end", "check that it is whole and may be read", e);
        }
    }

    private CharsetDecoder decoder() {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    private UnreadableRows encoding(int line, Exception cause) {
        return new UnreadableRows(
                line,
                "a byte behind line %d is not %s".formatted(line, charset.name()),
                "declare the encoding the file was saved in, often `encoding: windows-1252` for older spreadsheets",
                cause);
    }
}
