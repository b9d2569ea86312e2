package comparand.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks of a few cells, with one of each thing that a cell can hold. */
final class SmallBooks {

    private SmallBooks() {}

    static List<byte[]> all() throws IOException {
        try (var book = new XSSFWorkbook()) {
            var sheet = book.createSheet("Cases");
            var heading = sheet.createRow(0);
            for (int c = 0; c < 6; c++) {
                heading.createCell(c).setCellValue("h" + c);
            }
            var day = book.createCellStyle();
            day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            var hours = book.createCellStyle();
            hours.setDataFormat(book.createDataFormat().getFormat("[h]:mm"));
            for (int r = 1; r < 4; r++) {
                var row = sheet.createRow(r);
                row.createCell(0).setCellValue("C-0" + r);
                row.createCell(1).setCellValue(1.5 * r);
                row.createCell(2).setCellValue(r % 2 == 0);
                row.createCell(3).setCellValue(46000 + r);
                row.getCell(3).setCellStyle(day);
                row.createCell(4).setCellFormula("B" + (r + 1) + "*2");
                row.createCell(5).setCellValue(1.25);
                row.getCell(5).setCellStyle(hours);
            }
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            sheet.setColumnHidden(2, true);
            sheet.addMergedRegion(CellRangeAddress.valueOf("H8:I9"));
            book.createSheet("Labs");
            var out = new ByteArrayOutputStream();
            book.write(out);
            return List.of(out.toByteArray());
        }
    }
}
