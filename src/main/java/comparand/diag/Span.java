package comparand.diag;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;

/**
 * A stretch of one line of a source file. Lines and columns count from 1, as editors show them; columns
 * count characters (code points), not bytes.
 *
 * @param file the file as the user would name it, relative to the library where it lies inside it
 * @param length how many characters the stretch covers, at least 1
 */
public record Span(String file, int line, int column, int length) implements Comparable<Span> {

    private static final Comparator<Span> ORDER =
            Comparator.comparing(Span::file).thenComparingInt(Span::line).thenComparingInt(Span::column);

    public Span {
        requireNonNull(file, "file");
        if (line < 1 || column < 1 || length < 1) {
            throw new IllegalArgumentException(
                    "a span counts from 1, got line %d, column %d, length %d".formatted(line, column, length));
        }
    }

    /** The start of a file: for faults that concern the whole of it. */
    public static Span startOf(String file) {
        return new Span(file, 1, 1, 1);
    }

    /** The part of this span that starts {@code offset} characters in and covers {@code count} of them. */
    public Span part(int offset, int count) {
        return new Span(file, line, column + offset, Math.max(1, count));
    }

    @Override
    public int compareTo(Span other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
