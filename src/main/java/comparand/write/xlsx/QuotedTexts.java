package comparand.write.xlsx;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Texts that begin like a formula: stored as texts, they are none; marked as quoted (ECMA-376 part 1, 18.8.45,
 * {@code quotePrefix}), they stay texts also when somebody edits their cell.
 */
final class QuotedTexts {

    private static final String SIGNS = "=+-@\t\r";

    private final XSSFWorkbook workbook;
    private final Map<Short, XSSFCellStyle> quoted = new HashMap<>();

    QuotedTexts(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** Marks every one of a workbook that is held in memory, whatever its cell looks like. */
    void mark() {
        workbook.forEach(sheet -> sheet.forEach(this::mark));
    }

    /** Marks those of a row. */
    void mark(Row row) {
        row.forEach(this::mark);
    }

    private void mark(Cell cell) {
        if (cell.getCellType() == CellType.STRING
                && isLikeFormula(cell.getStringCellValue())
                && cell.getCellStyle() instanceof XSSFCellStyle style
                && !style.getQuotePrefixed()) {
            cell.setCellStyle(quoted.computeIfAbsent(style.getIndex(), i -> quoted(style)));
        }
    }

    private static boolean isLikeFormula(String text) {
        return !text.isEmpty() && SIGNS.indexOf(text.charAt(0)) >= 0;
    }

    private XSSFCellStyle quoted(XSSFCellStyle of) {
        var style = workbook.createCellStyle();
        style.cloneStyleFrom(of);
        style.setQuotePrefixed(true);
        return style;
    }
}
