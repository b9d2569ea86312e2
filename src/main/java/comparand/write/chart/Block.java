package comparand.write.chart;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes the numbers of a chart into a sheet, one row a point, and says where each series stands. */
final class Block {

    private static final List<String> HEADINGS = List.of("", "", "x", "y", "x − …", "x + …", "y − …", "y + …");

    private final XSSFSheet sheet;
    private final int column;
    private int next;

    Block(DataPlace place) {
        this.sheet = place.sheet();
        this.column = place.column();
        this.next = place.row();
        var heading = row(next++);
        for (int i = 0; i < HEADINGS.size(); i++) {
            heading.createCell(column + i).setCellValue(HEADINGS.get(i));
        }
    }

    /** The row below the block. */
    int next() {
        return next;
    }

    /** What a point writes into its row; intervals as distances from it. */
    record Line(String label, double across, double up, Optional<double[]> acrossAway, Optional<double[]> upAway) {}

    /** A series in the sheet. */
    Written write(String name, List<Line> lines) {
        int first = next;
        for (var line : lines) {
            var row = row(next++);
            row.createCell(column).setCellValue(name);
            row.createCell(column + 1).setCellValue(line.label);
            row.createCell(column + 2).setCellValue(line.across);
            row.createCell(column + 3).setCellValue(line.up);
            line.acrossAway.ifPresent(away -> distances(row, column + 4, away));
            line.upAway.ifPresent(away -> distances(row, column + 6, away));
        }
        return new Written(first, next - 1);
    }

    private static void distances(XSSFRow row, int at, double[] away) {
        row.createCell(at).setCellValue(away[0]);
        row.createCell(at + 1).setCellValue(away[1]);
    }

    private XSSFRow row(int at) {
        var row = sheet.getRow(at);
        return row == null ? sheet.createRow(at) : row;
    }

    /** Where the rows of a series stand. */
    final class Written {
        private final int first;
        private final int last;

        private Written(int first, int last) {
            this.first = first;
            this.last = last;
        }

        String name() {
            return new CellReference(sheet.getSheetName(), first, column, true, true).formatAsString();
        }

        /** A column of the block, over the rows of the series. */
        String range(int which) {
            return new CellRangeAddress(first, last, column + which, column + which)
                    .formatAsString(sheet.getSheetName(), true);
        }
    }
}
