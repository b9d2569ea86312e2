package comparand.write.xlsx;

import comparand.document.Block.Table;
import comparand.document.Cell;
import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The rows of long tables, which are written to disk as they are made: held in memory as the library holds cells, a table of
 * half a million of them would not fit. All else of their sheets is set beforehand.
 */
final class StreamedRows {

    /** From here on a table is streamed. */
    private static final int LONG = 1000;

    /** How many rows the library holds at a time. */
    private static final int WINDOW = 100;

    private final XSSFWorkbook workbook;
    private final Map<XSSFSheet, Consumer<Sheet>> waiting = new LinkedHashMap<>();

    StreamedRows(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** Whether a table is long; one with formulas has to wait for the places of all others, and is held in memory. */
    static boolean isFor(Table table) {
        return table.rows().size() >= LONG && !hasFormula(table);
    }

    private static boolean hasFormula(Table table) {
        for (var row : table.rows()) {
            for (var cell : row) {
                if (cell instanceof Cell.Formula) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Leaves the rows of a sheet for later. */
    void add(XSSFSheet sheet, Consumer<Sheet> rows) {
        waiting.put(sheet, rows);
    }

    /** Writes the workbook with all its rows. */
    void write(OutputStream out) throws IOException {
        if (waiting.isEmpty()) {
            workbook.write(out);
            return;
        }
        try (var streaming = new SXSSFWorkbook(workbook, WINDOW)) {
            // as archives below 4 GB are written by everybody else, so that every reader opens them
            streaming.setZip64Mode(Zip64Mode.AsNeeded);
            waiting.forEach((sheet, rows) -> rows.accept(streaming.getSheet(sheet.getSheetName())));
            streaming.write(out);
        }
    }
}
