package comparand.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet of the raw workbook whose cells can be changed; its headings stand in the third line. */
final class CaseDataSheetGrid extends CaseDataGrid {

    private static final int HEADINGS = 3;

    private final XSSFSheet cells;

    CaseDataSheetGrid(XSSFSheet cells) {
        super(CaseDataHospital.ST_ALDWYN, CaseDataStAldwyn.FILE, cells.getSheetName());
        this.cells = cells;
    }

    @Override
    List<String> headings() {
        var headings = new ArrayList<String>();
        cells.getRow(HEADINGS - 1).forEach(c -> headings.add(c.getStringCellValue()));
        return headings;
    }

    @Override
    int headingsLine() {
        return HEADINGS;
    }

    @Override
    int lastLine() {
        return cells.getLastRowNum() + 1;
    }

    @Override
    String get(int line, String heading) {
        var cell = cell(line, heading);
        var type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return type == CellType.NUMERIC ? plain(cell.getNumericCellValue()) : cell.getStringCellValue();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    @Override
    void set(int line, String heading, String text) {
        var cell = cell(line, heading);
        if (text.isEmpty()) {
            cell.setBlank();
        } else {
            CaseDataWorkbook.enter(cell, text);
        }
    }

    @Override
    void rename(String heading, String by) {
        cell(HEADINGS, heading).setCellValue(by);
    }

    @Override
    int repeat(int line) {
        int last = lastLine();
        var copy = cells.createRow(last);
        for (var cell : cells.getRow(line - 1)) {
            var target = copy.createCell(cell.getColumnIndex());
            target.setCellStyle(cell.getCellStyle());
            if (cell.getCellType() == CellType.FORMULA) {
                var ofThisRow =
                        cell.getCellFormula().replaceAll("(?<=[A-Z])" + line + "\\b", Integer.toString(last + 1));
                target.setCellFormula(ofThisRow);
            } else if (cell.getCellType() == CellType.NUMERIC) {
                target.setCellValue(cell.getNumericCellValue());
            } else {
                target.setCellValue(cell.getStringCellValue());
            }
        }
        return last + 1;
    }

    private Cell cell(int line, String heading) {
        return cells.getRow(line - 1).getCell(headings().indexOf(heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }
}
