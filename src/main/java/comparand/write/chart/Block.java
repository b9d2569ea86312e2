package comparand.write.chart;

import comparand.write.chart.Drawn.Dot;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes the numbers of a chart into a sheet, one row a point, and says where each series stands. */
final class Block {

    static final int ACROSS = 2;
    static final int UP = 3;
    static final int BELOW = 4;
    static final int ABOVE = 5;

    private static final List<String> HEADINGS = List.of("", "", "x", "y", "y − …", "y + …");

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

    Written write(Drawn drawn) {
        int first = next;
        for (var dot : drawn.dots()) {
            var row = row(next++);
            row.createCell(column).setCellValue(drawn.name());
            row.createCell(column + 1).setCellValue(dot.label());
            numbers(row, dot);
        }
        return new Written(first, next - 1);
    }

    /** The cells of a gap stay empty, so that no line goes through it. */
    private void numbers(XSSFRow row, Dot dot) {
        dot.across().ifPresent(x -> row.createCell(column + ACROSS).setCellValue(x));
        dot.up().ifPresent(y -> row.createCell(column + UP).setCellValue(y));
        dot.below().ifPresent(y -> row.createCell(column + BELOW).setCellValue(y));
        dot.above().ifPresent(y -> row.createCell(column + ABOVE).setCellValue(y));
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
