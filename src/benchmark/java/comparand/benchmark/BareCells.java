package comparand.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** The cells of {@link Cells} with the streaming writer of the library alone: values and four styles. */
final class BareCells {

    private BareCells() {}

    /** Argument: the workbook to write. */
    public static void main(String[] args) throws IOException {
        try (var workbook = new SXSSFWorkbook(100);
                var out = Files.newOutputStream(Path.of(args[0]))) {
            var words = style(workbook, "");
            var numbers = new CellStyle[] {style(workbook, "0"), style(workbook, "0.0"), style(workbook, "0.00")};
            var sheet = workbook.createSheet("Cells");
            var heading = sheet.createRow(0);
            for (int c = 0; c < Cells.COLUMNS; c++) {
                sheet.setColumnWidth(c, 12 * 256);
                heading.createCell(c).setCellValue(Cells.heading(c));
                heading.getCell(c).setCellStyle(words);
            }
            for (int r = 0; r < Cells.ROWS; r++) {
                var row = sheet.createRow(r + 1);
                row.setHeightInPoints(14);
                for (int c = 0; c < Cells.COLUMNS; c++) {
                    var cell = row.createCell(c);
                    if (Cells.isWord(c)) {
                        cell.setCellValue(Cells.word(r, c));
                        cell.setCellStyle(words);
                    } else {
                        cell.setCellValue(Cells.number(r, c).doubleValue());
                        cell.setCellStyle(numbers[Cells.decimals(c)]);
                    }
                }
            }
            sheet.setAutoFilter(new CellRangeAddress(0, Cells.ROWS, 0, Cells.COLUMNS - 1));
            sheet.createFreezePane(1, 1);
            workbook.write(out);
        }
    }

    private static CellStyle style(SXSSFWorkbook workbook, String format) {
        var style = workbook.createCellStyle();
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setBorderBottom(BorderStyle.THIN);
        if (!format.isEmpty()) {
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
        }
        return style;
    }
}
