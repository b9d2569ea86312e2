package comparand.diag;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * A stretch of one line of a source file, or one cell of a workbook. Lines and columns count from 1, as editors show them;
 * columns count characters (code points), not bytes.
 *
 * @param file the file as the user would name it, relative to the library where it lies inside it
 * @param sheet in a workbook, the sheet; empty in a text file
 * @param line in a workbook, the row of the sheet
 * @param column in a workbook, the column of the sheet: 1 is A
 * @param length how many characters the stretch covers, at least 1; in a workbook, how many cells
 */
public record Span(String file, String sheet, int line, int column, int length) implements Comparable<Span> {

    private static final Comparator<Span> ORDER = Comparator.comparing(Span::file)
            .thenComparing(Span::sheet)
            .thenComparingInt(Span::line)
            .thenComparingInt(Span::column);

    private static final Pattern PLAIN_SHEET = Pattern.compile("[\\p{L}_][\\p{L}\\d_]*");

    public Span {
        requireNonNull(file, "file");
        requireNonNull(sheet, "sheet");
        if (line < 1 || column < 1 || length < 1) {
            throw new IllegalArgumentException(
                    "a span counts from 1, got line %d, column %d, length %d".formatted(line, column, length));
        }
    }

    /** A stretch of a line of a text file. */
    public Span(String file, int line, int column, int length) {
        this(file, "", line, column, length);
    }

    /** The start of a file: for faults that concern the whole of it. */
    public static Span startOf(String file) {
        return new Span(file, 1, 1, 1);
    }

    /** A cell of a workbook; row and column count from 1. */
    public static Span cell(String file, String sheet, int row, int column) {
        if (sheet.isEmpty()) {
            throw new IllegalArgumentException("a sheet has a name");
        }
        return new Span(file, sheet, row, column, 1);
    }

    /** Whether it is a cell of a workbook. */
    public boolean isCell() {
        return !sheet.isEmpty();
    }

    /** A cell's name within its sheet, such as {@code F17}; empty in a text file. */
    public String cellName() {
        if (!isCell()) {
            return "";
        }
        var letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.append(line).toString();
    }

    /**
     * The part of this span that starts {@code offset} characters in and covers {@code count} of them; of a cell there is
     * no part.
     */
    public Span part(int offset, int count) {
        return isCell() ? this : new Span(file, line, column + offset, Math.max(1, count));
    }

    @Override
    public int compareTo(Span other) {
        return ORDER.compare(this, other);
    }

    /** The place within the file: {@code 12:3}, or as spreadsheets write it, {@code Cases!F17}. */
    public String within() {
        return isCell() ? quoted(sheet) + "!" + cellName() : line + ":" + column;
    }

    /** {@code sources/a.yaml:12:3}, or {@code register.xlsx, Cases!F17}. */
    @Override
    public String toString() {
        return file + (isCell() ? ", " : ":") + within();
    }

    private static String quoted(String sheet) {
        return PLAIN_SHEET.matcher(sheet).matches() ? sheet : "'" + sheet.replace("'", "''") + "'";
    }
}
