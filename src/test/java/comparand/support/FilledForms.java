package comparand.support;

import comparand.document.form.FormTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Fills forms as a person would: sheet by sheet, under the headings, with the office library's own hands. */
public final class FilledForms {

    private FilledForms() {}

    /** Opens a form, lets it be filled, and saves it. */
    public static void fill(Path form, Consumer<XSSFWorkbook> hand) {
        try (var in = Files.newInputStream(form);
                var book = new XSSFWorkbook(in)) {
            hand.accept(book);
            try (var out = Files.newOutputStream(form)) {
                book.write(out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes the reader and the day. */
    public static void start(XSSFWorkbook book, String reader, String day) {
        for (var row : book.getSheet("Start")) {
            var name = row.getCell(0) == null ? "" : row.getCell(0).getStringCellValue();
            if (name.equals("reader's initials")) {
                row.getCell(1).setCellValue(reader);
            } else if (name.equals("day of reading")) {
                row.getCell(1).setCellValue(day);
            }
        }
    }

    /** Fills a row, counted from 0 below the headings. */
    public static void row(XSSFSheet sheet, int at, Map<String, String> cells) {
        cells.forEach((heading, text) -> cell(sheet, at, heading).setCellValue(text));
    }

    /** The first row below the headings in which nothing stands, counted from 0. */
    public static int firstEmpty(XSSFSheet sheet) {
        int at = 0;
        while (!sheet.getRow(FormTable.FIRST_ROW - 1 + at)
                .getCell(0)
                .getStringCellValue()
                .isEmpty()) {
            at++;
        }
        return at;
    }

    /** The cell below a heading, in a row counted from 0. */
    public static XSSFCell cell(XSSFSheet sheet, int at, String heading) {
        for (var top : sheet.getRow(FormTable.HEADING_ROW - 1)) {
            if (top.getStringCellValue().equals(heading)) {
                return sheet.getRow(FormTable.FIRST_ROW - 1 + at).getCell(top.getColumnIndex());
            }
        }
        throw new IllegalArgumentException(sheet.getSheetName() + " has no column " + heading);
    }
}
