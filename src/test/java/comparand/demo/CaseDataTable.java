package comparand.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A table of a raw file: what each column is called, and what each row writes into it. */
final class CaseDataTable<R> {

    /** A column. */
    record Column<R>(String heading, Function<R, String> cell) {}

    private final List<Column<R>> columns = new ArrayList<>();

    CaseDataTable<R> column(String heading, Function<R, String> cell) {
        columns.add(new Column<>(heading, cell));
        return this;
    }

    List<String> headings() {
        return columns.stream().map(Column::heading).toList();
    }

    List<String> cells(R row) {
        return columns.stream().map(c -> c.cell().apply(row)).toList();
    }

    /** The text of a file; no cell may need quoting. */
    String text(String separator, List<R> rows) {
        var lines = new ArrayList<String>();
        lines.add(line(separator, headings()));
        rows.forEach(r -> lines.add(line(separator, cells(r))));
        return String.join("\n", lines) + "\n";
    }

    private static String line(String separator, List<String> cells) {
        if (cells.stream().anyMatch(c -> c.contains(separator) || c.contains("\"") || c.contains("\n"))) {
            throw new IllegalArgumentException("a cell holds what separates cells: " + cells);
        }
        return String.join(separator, cells);
    }

    /** The cells of a line that {@link #text} wrote. */
    static List<String> split(String separator, String line) {
        return Arrays.asList(line.split(Pattern.quote(separator), -1));
    }
}
