package comparand.read.csv;

import comparand.diag.Span;
import comparand.model.DataCell;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** The rows of a separated-values file, streamed. */
public final class CsvRows implements RowSource {

    private static final Pattern LINE = Pattern.compile("line (\\d+)");

    /** Far more than a cell holds; without a bound, a quote that is never closed keeps the whole file in memory. */
    private static final int LONGEST_CELL = 1 << 20;

    private final CsvText text;
    private final CsvPlaces places;
    private final String file;
    private final char separator;
    private final OptionalInt declaredHeading;
    private final List<String> header;
    private int headingLine = 1;

    /**
     * A file as its mapping describes it.
     *
     * @param headingLine the declared line of headings; else it is the first that is not empty
     * @throws UnreadableRows if not even the headings can be read
     */
    public CsvRows(Path path, String file, char separator, Charset charset, OptionalInt headingLine)
            throws IOException {
        this.text = new CsvText(path, file, charset);
        text.requireDeclaredEncoding();
        this.places = new CsvPlaces(text, file, separator);
        this.file = file;
        this.separator = separator;
        this.declaredHeading = headingLine;
        this.header = headings();
        if (header.isEmpty()) {
            throw new UnreadableRows(
                    Span.startOf(file),
                    "this file holds nothing",
                    "put a line of headings and the rows into it, or take it out of `files:`");
        }
        requireDistinctHeadings();
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
                var cells = cells(record);
                for (var cell : cells) {
                    if (!cell.isBlank()) {
                        visitor.accept(new Row((int) record.getStartingLineNumber(), cells));
                        break;
                    }
                }
            }
            return true;
        });
    }

    private static List<DataCell> cells(CsvRecord record) {
        int count = record.getFieldCount();
        var cells = new DataCell[count];
        for (int i = 0; i < count; i++) {
            cells[i] = DataCell.of(record.getField(i));
        }
        return List.of(cells);
    }

    @Override
    public Span heading(int cell) {
        return places.cell(headingLine, cell);
    }

    @Override
    public Span place(int line, int cell) {
        return places.cell(line, cell);
    }

    @Override
    public Span row(int line) {
        return new Span(file, line, 1, 1);
    }

    private List<String> headings() {
        var found = new ArrayList<String>();
        read((record, first) -> {
            headingLine = (int) record.getStartingLineNumber();
            record.getFields().stream().map(String::strip).forEach(found::add);
            return false;
        });
        if (declaredHeading.isPresent() && (found.isEmpty() || headingLine != declaredHeading.getAsInt())) {
            throw noHeadings();
        }
        return List.copyOf(found);
    }

    private UnreadableRows noHeadings() {
        return new UnreadableRows(
                Span.startOf(file),
                "line %d, declared to hold the headings, is empty or not there".formatted(declaredHeading.orElse(1)),
                "write the number of the line with the headings under `header-row:`");
    }

    private void skipToHeadings(CsvReader<CsvRecord> csv) {
        try {
            csv.skipLines(declaredHeading.orElse(1) - 1);
        } catch (CsvParseException e) {
            // the file has fewer lines than that
            throw noHeadings();
        }
    }

    /** Returns false to stop reading. */
    private interface Visitor {
        boolean visit(CsvRecord record, boolean first);
    }

    private void read(Visitor visitor) {
        try (Reader in = text.open();
                CsvReader<CsvRecord> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .skipEmptyLines(true)
                        .allowUnclosedQuote(false)
                        .maxBufferSize(LONGEST_CELL)
                        // a row of another length is a finding of its own, with its line
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(in)) {
            skipToHeadings(csv);
            boolean first = true;
            for (var record : csv) {
                if (!visitor.visit(record, first)) {
                    return;
                }
                first = false;
            }
        } catch (CharacterCodingException e) {
            throw text.undecodable(e);
        } catch (UncheckedIOException e) {
            throw e.getCause() instanceof CharacterCodingException coding ? text.undecodable(coding) : cutShort(e);
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
}
