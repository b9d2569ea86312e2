package comparand.compose.table;

import comparand.document.Cell;
import comparand.document.Cell.Formula.At;
import comparand.document.Cell.Formula.Piece;
import comparand.document.Cell.Formula.Quoted;
import comparand.document.Cell.Formula.Sign;
import java.util.ArrayList;
import java.util.List;

/** A formula that is being put together, piece by piece. */
final class FormulaDraft {

    private final List<Piece> pieces = new ArrayList<>();

    static FormulaDraft of(String sign) {
        return new FormulaDraft().sign(sign);
    }

    FormulaDraft sign(String text) {
        pieces.add(new Sign(text));
        return this;
    }

    FormulaDraft quoted(String text) {
        pieces.add(new Quoted(text));
        return this;
    }

    FormulaDraft cell(String table, int row, int column) {
        pieces.add(new At(table, row, row, column));
        return this;
    }

    /** The whole column of a table with so many rows. */
    FormulaDraft column(String table, int rows, int column) {
        pieces.add(new At(table, 0, rows - 1, column));
        return this;
    }

    /** Cells of one row, with commas between them. */
    FormulaDraft cells(String table, int row, int from, int count) {
        for (int i = 0; i < count; i++) {
            sign(i == 0 ? "" : ",").cell(table, row, from + i);
        }
        return this;
    }

    Cell gives(Cell result, int decimals) {
        return new Cell.Formula(pieces, result, decimals);
    }
}
