package comparand.manual.example;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row.MissingCellPolicy;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * One change of a workbook, as a person makes it: a cell found by its name ({@code cell}), by what stands left of it
 * ({@code beside}), or in a row of a form {@code under} a heading, gets a text ({@code is}), a {@code formula} or a {@code day};
 * a {@code heading} is written otherwise, a sheet {@code remove}d, a row, column or sheet hidden ({@code hide}), a row written
 * {@code like} another, one is {@code shorten}ed, new sheets are written ({@code rows}).
 */
final class BookStep {

    /** The row of the headings of a form, and the first below, counted from 0. */
    private static final int HEADINGS = 3;

    private static final int FIRST = 4;

    private final JsonNode step;

    private BookStep(JsonNode step) {
        this.step = step;
    }

    /** Changes of one workbook, in their order. */
    static void apply(List<JsonNode> steps, Path place) throws IOException {
        var name = steps.get(0).path("book").asText();
        var file = name.startsWith("studies/") ? place.resolve(Bench.LIBRARY).resolve(name) : place.resolve(name);
        try (var book = Files.exists(file) ? opened(file) : new XSSFWorkbook()) {
            steps.forEach(step -> new BookStep(step).change(book));
            try (var out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    private static XSSFWorkbook opened(Path file) {
        try (var in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void change(XSSFWorkbook book) {
        if (step.has("rows")) {
            step.path("rows").properties().forEach(e -> write(book.createSheet(e.getKey()), e.getValue()));
            if (step.path("hide").asText().equals("sheet")) {
                book.setSheetHidden(book.getNumberOfSheets() - 1, true);
            }
            return;
        }
        var sheet = book.getSheet(text("sheet"));
        if (step.has("shorten")) {
            shorten(sheet, step.path("shorten").asInt());
        } else if (step.has("remove")) {
            book.removeSheetAt(book.getSheetIndex(sheet));
        } else if (step.has("row-of-headings")) {
            sheet.removeRow(sheet.getRow(HEADINGS));
        } else if (step.has("like")) {
            like(sheet, row(), FIRST - 1 + step.path("like").asInt());
        } else if (text("hide").equals("row")) {
            sheet.getRow(step.path("row").asInt() - 1).setZeroHeight(true);
        } else if (text("hide").equals("column")) {
            sheet.setColumnHidden(new CellReference(text("cell")).getCol(), true);
        } else {
            fill(book, cell(sheet));
        }
    }

    /** Takes empty rows from the end of a form; a person who fills in one row does not miss them. */
    private static void shorten(Sheet sheet, int rows) {
        for (int at = sheet.getLastRowNum(); at >= FIRST + rows; at--) {
            if (sheet.getRow(at) != null) {
                sheet.removeRow(sheet.getRow(at));
            }
        }
    }

    /** A row of a form, counted from 1 below the headings. */
    private int row() {
        return FIRST - 1 + step.path("row").asInt();
    }

    private static void write(XSSFSheet sheet, JsonNode rows) {
        for (int r = 0; r < rows.size(); r++) {
            var row = sheet.createRow(r);
            for (int c = 0; c < rows.get(r).size(); c++) {
                var value = rows.get(r).get(c);
                if (value.isNumber()) {
                    row.createCell(c).setCellValue(value.asDouble());
                } else {
                    row.createCell(c).setCellValue(value.asText());
                }
            }
        }
    }

    private static void like(XSSFSheet sheet, int to, int from) {
        for (var cell : sheet.getRow(from)) {
            if (!shown(cell).isEmpty()) {
                at(sheet, to, cell.getColumnIndex()).setCellValue(shown(cell));
            }
        }
    }

    private XSSFCell cell(XSSFSheet sheet) {
        if (step.has("cell")) {
            var name = new CellReference(text("cell"));
            return at(sheet, name.getRow(), name.getCol());
        }
        if (step.has("beside")) {
            for (var row : sheet) {
                if (row.getCell(0) != null && shown(row.getCell(0)).equals(text("beside"))) {
                    return at(sheet, row.getRowNum(), 1);
                }
            }
        }
        if (step.has("column-of")) {
            // the heading was taken out in a step before; the column is the one behind the last that has one
            return at(sheet, row(), emptyHeading(sheet));
        }
        var heading = text(step.has("heading") ? "heading" : "under");
        for (var top : sheet.getRow(HEADINGS)) {
            if (shown(top).equals(heading)) {
                return step.has("heading")
                        ? at(sheet, HEADINGS, top.getColumnIndex())
                        : at(sheet, row(), top.getColumnIndex());
            }
        }
        throw new IllegalArgumentException("no cell is meant by " + step);
    }

    private static int emptyHeading(XSSFSheet sheet) {
        for (var top : sheet.getRow(HEADINGS)) {
            if (shown(top).isEmpty()) {
                return top.getColumnIndex();
            }
        }
        throw new IllegalArgumentException("every column has its heading");
    }

    private void fill(XSSFWorkbook book, XSSFCell cell) {
        if (step.has("formula")) {
            cell.setCellFormula(text("formula"));
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
        } else if (step.has("day")) {
            var style = book.createCellStyle();
            style.setDataFormat((short) 14);
            cell.setCellStyle(style);
            cell.setCellValue(step.path("day").asDouble());
        } else if (text("is").isEmpty()) {
            cell.setBlank();
        } else {
            cell.setCellValue(text("is"));
        }
    }

    private static XSSFCell at(XSSFSheet sheet, int row, int column) {
        var there = sheet.getRow(row);
        return (there == null ? sheet.createRow(row) : there).getCell(column, MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }

    private static String shown(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> cell.getStringCellValue();
            case NUMERIC -> Double.toString(cell.getNumericCellValue());
            case _NONE, FORMULA, BLANK, BOOLEAN, ERROR -> "";
        };
    }

    private String text(String key) {
        return step.path(key).asText();
    }
}
