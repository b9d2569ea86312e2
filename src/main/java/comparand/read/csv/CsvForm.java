package comparand.read.csv;

import comparand.model.library.Separator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be seen of a text file nobody has described yet: never used to read data, only to propose a mapping.
 *
 * @param encodingSeen from what the encoding was concluded
 * @param separatorSeen from what the separator was concluded
 * @param first the first rows
 */
public record CsvForm(
        Charset encoding, String encodingSeen, Separator separator, String separatorSeen, List<Line> first) {

    private static final int LOOKED_AT = 200;

    /** In the order in which they are believed: a comma also stands within numbers. */
    private static final List<Separator> ORDER =
            List.of(Separator.TAB, Separator.SEMICOLON, Separator.BAR, Separator.COMMA);

    /**
     * A row.
     *
     * @param number of the line it begins on
     */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    public CsvForm {
        first = List.copyOf(first);
    }

    /** Looks at a file; empty if it is no text that falls into columns. */
    public static Optional<CsvForm> of(Path path) throws IOException {
        var encoding = encoding(path);
        var best = Optional.<CsvForm>empty();
        double bestShare = 0;
        for (var separator : ORDER) {
            var rows = rows(path, encoding.charset, separator);
            var usual = usualLength(rows);
            double share = rows.isEmpty()
                    ? 0
                    : (double) rows.stream()
                                    .filter(r -> r.cells.size() == usual)
                                    .count()
                            / rows.size();
            if (usual > 1 && share > bestShare + 0.1) {
                bestShare = share;
                best = Optional.of(new CsvForm(
                        encoding.charset,
                        encoding.seen,
                        separator,
                        "at this sign %d of the first %d rows fall into %d cells"
                                .formatted(Math.round(share * rows.size()), rows.size(), usual),
                        rows));
            }
        }
        return best;
    }

    private record Seen(Charset charset, String seen) {}

    private static Seen encoding(Path path) throws IOException {
        byte[] mark;
        try (InputStream in = Files.newInputStream(path)) {
            mark = in.readNBytes(3);
        }
        if (mark.length >= 2 && ((mark[0] == -1 && mark[1] == -2) || (mark[0] == -2 && mark[1] == -1))) {
            return new Seen(StandardCharsets.UTF_16, "its first two bytes are the mark of UTF-16");
        }
        if (mark.length == 3 && mark[0] == (byte) 0xEF && mark[1] == (byte) 0xBB && mark[2] == (byte) 0xBF) {
            return new Seen(StandardCharsets.UTF_8, "its first three bytes are the mark of UTF-8");
        }
        var utf8 = new CsvText(path, path.toString(), StandardCharsets.UTF_8);
        if (utf8.isWhole()) {
            return new Seen(
                    StandardCharsets.UTF_8,
                    utf8.isWholeWithSignsBeyondAscii()
                            ? "all its signs beyond ASCII are whole in UTF-8"
                            : "all its signs are ASCII, which UTF-8 contains");
        }
        var windows = Charset.forName("windows-1252");
        return new CsvText(path, path.toString(), windows).isWhole()
                ? new Seen(windows, "it is not UTF-8; look whether the signs beyond ASCII are right")
                : new Seen(StandardCharsets.ISO_8859_1, "it is neither UTF-8 nor windows-1252; look at its signs");
    }

    private static int usualLength(List<Line> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        rows.forEach(r -> counts.merge(r.cells.size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static List<Line> rows(Path path, Charset charset, Separator separator) throws IOException {
        var rows = new ArrayList<Line>();
        try (Reader text = new CsvText(path, path.toString(), charset).open();
                CsvReader<CsvRecord> csv = CsvReader.builder()
                        .fieldSeparator(separator.sign())
                        .skipEmptyLines(true)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            for (var record : csv) {
                rows.add(new Line(
                        (int) record.getStartingLineNumber(),
                        record.getFields().stream().map(String::strip).toList()));
                if (rows.size() == LOOKED_AT) {
                    break;
                }
            }
        } catch (CsvParseException | UncheckedIOException | CharacterCodingException e) {
            // this separator splits the file up to here; that it does no better counts against it
            return rows;
        }
        return rows;
    }
}
