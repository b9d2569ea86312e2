package comparand.write.chart;

import java.io.IOException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xddf.usermodel.chart.XDDFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Where the numbers of a native chart stand: a sheet, and the first cell of the block.
 *
 * @param row counted from 0
 * @param column counted from 0
 */
public record DataPlace(XSSFSheet sheet, int row, int column) {

    /** Columns a block takes. */
    public static final int COLUMNS = 6;

    /**
     * The workbook within a chart of a presentation or text. Its caller dates it, so that the same chart gives the same
     * bytes.
     */
    public static DataPlace within(XDDFChart chart) throws IOException {
        try {
            var workbook = chart.getWorkbook();
            return new DataPlace(
                    workbook.getNumberOfSheets() == 0 ? workbook.createSheet("Data") : workbook.getSheetAt(0), 0, 0);
        } catch (InvalidFormatException e) {
            throw new IOException("the workbook within a chart could not be opened", e);
        }
    }
}
