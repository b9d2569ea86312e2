package comparand.write.xlsx;

import java.util.HashMap;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Texts that begin like a formula: stored as texts, they are none; marked as quoted (ECMA-376 part 1, 18.8.45,
 * {@code quotePrefix}), they stay texts also when somebody edits their cell.
 */
final class QuotedTexts {

    private static final Pattern LIKE_A_FORMULA = Pattern.compile("[=+\\-@\\t\\r]");

    private QuotedTexts() {}

    /** Marks every one of a workbook, whatever its cell looks like. */
    static void mark(XSSFWorkbook workbook) {
        var quoted = new HashMap<Short, XSSFCellStyle>();
        for (var sheet : workbook) {
            for (var row : sheet) {
                for (var cell : row) {
                    if (cell instanceof XSSFCell own
                            && own.getCellType() == CellType.STRING
                            && !own.getCellStyle().getQuotePrefixed()
                            && LIKE_A_FORMULA.matcher(own.getStringCellValue()).lookingAt()) {
                        own.setCellStyle(quoted.computeIfAbsent(
                                own.getCellStyle().getIndex(), i -> quoted(workbook, own.getCellStyle())));
                    }
                }
            }
        }
    }

    private static XSSFCellStyle quoted(XSSFWorkbook workbook, XSSFCellStyle of) {
        var style = workbook.createCellStyle();
        style.cloneStyleFrom(of);
        style.setQuotePrefixed(true);
        return style;
    }
}
