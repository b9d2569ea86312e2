package comparand.model;

import comparand.diag.Span;
import java.util.List;
import java.util.function.Consumer;

/** A raw data file, read row by row and anew at each call, so that its size costs no memory. */
public interface RowSource {

    /** The file as findings name it. */
    String file();

    /** The headings of its columns. */
    List<String> header();

    /** Hands over every row behind the heading, in file order. */
    void forEach(Consumer<Row> visitor);

    /**
     * Where a cell stands in the file, for a finding.
     *
     * @param cell counted from 0
     */
    Span place(int line, int cell);

    /**
     * One row.
     *
     * @param line the line it starts on; the heading is line 1
     * @param cells the texts of its cells, stripped, as many as the row has
     */
    record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
