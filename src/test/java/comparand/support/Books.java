package comparand.support;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks for tests, written by the office library, never kept as files. */
public final class Books {

    private Books() {}

    /** Fills a workbook. */
    public interface Filling {
        void fill(XSSFWorkbook book) throws IOException;
    }

    public static Path write(Path file, Filling filling) throws IOException {
        try (var book = new XSSFWorkbook();
                var out = Files.newOutputStream(file)) {
            filling.fill(book);
            book.write(out);
        }
        return file;
    }

    /** Sets the cells of a row from a column on: numbers as numbers, all else as text; an empty text stays blank. */
    public static void set(Row row, int column, Object... values) {
        for (var value : values) {
            var cell = row.createCell(column++);
            if (value instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else if (!value.toString().isEmpty()) {
                cell.setCellValue(value.toString());
            }
        }
    }
}
