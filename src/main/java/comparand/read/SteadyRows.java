package comparand.read;

import comparand.diag.Span;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import java.util.List;
import java.util.function.Consumer;

/** The rows of a file that does not change while it is read. */
record SteadyRows(RowSource rows, Steady steady) implements RowSource {

    @Override
    public String file() {
        return rows.file();
    }

    @Override
    public List<String> header() {
        return rows.header();
    }

    @Override
    public void forEach(Consumer<Row> visitor) {
        try {
            rows.forEach(visitor);
        } catch (UnreadableRows e) {
            // half of a file that is being written looks broken, and is not
            steady.require();
            throw e;
        }
        steady.require();
    }

    @Override
    public void requireDistinctHeadings() {
        rows.requireDistinctHeadings();
    }

    @Override
    public Span heading(int cell) {
        return rows.heading(cell);
    }

    @Override
    public Span place(int line, int cell) {
        return rows.place(line, cell);
    }

    @Override
    public Span row(int line) {
        return rows.row(line);
    }
}
