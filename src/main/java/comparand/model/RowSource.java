package comparand.model;

import comparand.diag.Span;
import java.util.HashSet;
import java.util.List;
import java.util.function.Consumer;

/**
 * A raw data file or one sheet of a workbook, read row by row and anew at each call, so that its size costs no memory. Rows
 * without a single filled cell are passed over.
 */
public interface RowSource {

    /** The file as findings name it; for a workbook with the sheet behind a comma. */
    String file();

    /** The headings of its columns. */
    List<String> header();

    /**
     * Hands over every row behind the heading, in file order.
     *
     * @throws UnreadableRows if the file cannot be read to its end
     */
    void forEach(Consumer<Row> visitor);

    /**
     * Refuses one heading over two columns: which of them a mapping means, nobody could say.
     *
     * @throws UnreadableRows at the heading that stands there a second time
     */
    default void requireDistinctHeadings() {
        var seen = new HashSet<String>();
        for (int i = 0; i < header().size(); i++) {
            if (!seen.add(header().get(i))) {
                throw new UnreadableRows(
                        heading(i),
                        "the heading `%s` stands over two columns".formatted(header().get(i)),
                        "give each column a heading of its own");
            }
        }
    }

    /** Where a heading stands. */
    Span heading(int cell);

    /**
     * Where a cell stands, for a finding.
     *
     * @param line the line or sheet row of a {@link Row}
     * @param cell counted from 0
     */
    Span place(int line, int cell);

    /** Where a row stands: its first sign, or the cell in the column of the first heading. */
    Span row(int line);

    /**
     * One row.
     *
     * @param line the line of the file it starts on, or its row in the sheet, both counted from 1
     * @param cells as many as the row has; a sheet's row has at least as many as there are headings
     */
    record Row(int line, List<DataCell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
