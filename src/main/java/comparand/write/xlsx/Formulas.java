package comparand.write.xlsx;

import comparand.document.Block.Align;
import comparand.document.Cell;
import comparand.document.Cell.Formula.At;
import comparand.document.Cell.Formula.Piece;
import comparand.document.Cell.Formula.Quoted;
import comparand.document.Cell.Formula.Sign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;

/**
 * Formulas of a workbook. They may speak of tables that stand on later sheets, and are set when all tables have their place.
 * Each cell also holds the result as the document gives it, for programs that do not work formulas out.
 */
final class Formulas {

    private record Place(String sheet, int top) {}

    private record Waiting(org.apache.poi.ss.usermodel.Cell cell, Cell.Formula formula, Align align) {}

    private final Styles styles;
    private final Map<String, Place> places = new HashMap<>();
    private final List<Waiting> waiting = new ArrayList<>();

    Formulas(Styles styles) {
        this.styles = styles;
    }

    /** Where the headings of a table stand. */
    void stands(String table, String sheet, int top) {
        places.put(table, new Place(sheet, top));
    }

    void add(org.apache.poi.ss.usermodel.Cell cell, Cell.Formula formula, Align align) {
        waiting.add(new Waiting(cell, formula, align));
    }

    /** Writes all that wait. */
    void set() {
        waiting.forEach(this::set);
    }

    private void set(Waiting w) {
        var text = new StringBuilder();
        w.formula.pieces().forEach(p -> text.append(piece(p, w.cell)));
        w.cell.setCellFormula(text.toString());
        // with a formula in the cell, a value is what programs show until they work it out
        if (w.formula.result() instanceof Cell.Figure figure) {
            w.cell.setCellValue(figure.value());
        } else {
            w.cell.setCellValue(w.formula.result().shown());
        }
        w.cell.setCellStyle(styles.worked(w.align, w.formula.decimals()));
    }

    private String piece(Piece piece, org.apache.poi.ss.usermodel.Cell from) {
        if (piece instanceof Sign sign) {
            return sign.text();
        }
        if (piece instanceof Quoted quoted) {
            return "\"" + quoted.text().replace("\"", "\"\"") + "\"";
        }
        return reference((At) piece, from);
    }

    /** Cells of the same row move with it when a table is sorted; all others stay where they are. */
    private String reference(At at, org.apache.poi.ss.usermodel.Cell from) {
        var place = places.get(at.table());
        if (place == null) {
            throw new IllegalArgumentException("there is no table " + at.table());
        }
        int first = place.top + 1 + at.row();
        int last = place.top + 1 + at.toRow();
        boolean here = place.sheet.equals(from.getSheet().getSheetName());
        if (here && first == last && first == from.getRowIndex()) {
            return new CellReference(first, at.column(), false, true).formatAsString();
        }
        var cells = new CellReference(first, at.column(), true, true).formatAsString()
                + (first == last ? "" : ":" + new CellReference(last, at.column(), true, true).formatAsString());
        return here ? cells : "'" + place.sheet.replace("'", "''") + "'!" + cells;
    }
}
