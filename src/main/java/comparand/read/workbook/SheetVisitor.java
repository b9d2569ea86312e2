package comparand.read.workbook;

import comparand.model.DataCell;
import org.apache.poi.ss.util.CellRangeAddress;

/** Is told what stands in a sheet, from top to bottom; rows and columns count from 0, as the office library counts. */
interface SheetVisitor {

    /** How the content of a cell came there. */
    enum Source {
        TYPED,
        FORMULA,
        /** A formula whose result the workbook does not hold. */
        FORMULA_WITHOUT_RESULT
    }

    /** A cell that is not blank. */
    void cell(int row, int column, DataCell content, Source source);

    /** After the last cell of a row. */
    default void rowEnds(int row, boolean hidden) {}

    default void hiddenColumns(int first, int last) {}

    default void merged(CellRangeAddress range) {}
}
