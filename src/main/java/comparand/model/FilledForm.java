package comparand.model;

import comparand.diag.Span;
import java.util.List;
import java.util.Optional;

/** What stands in a workbook that somebody filled in: every sheet, cell by cell. */
public record FilledForm(String file, List<Sheet> sheets) {

    public FilledForm {
        sheets = List.copyOf(sheets);
    }

    public Optional<Sheet> sheet(String name) {
        return sheets.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** One sheet; rows without any content are not in it. */
    public record Sheet(String name, List<Row> rows) {
        public Sheet {
            rows = List.copyOf(rows);
        }
    }

    /** A row, with its number as the sheet shows it, and its cells that are not blank. */
    public record Row(int number, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public Optional<Cell> cell(int column) {
            return cells.stream().filter(c -> c.column() == column).findFirst();
        }
    }

    /**
     * One cell.
     *
     * @param column counted from 1
     * @param computed whether a formula stands in it
     */
    public record Cell(int column, DataCell content, boolean computed) {}

    public Span at(Sheet sheet, Row row, int column) {
        return Span.cell(file, sheet.name(), row.number(), column);
    }
}
