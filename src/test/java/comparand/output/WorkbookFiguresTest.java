package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.BookRows;
import comparand.support.Built;
import comparand.support.DemoCharts;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;

/** The figures of the workbook are charts over cells of their sheet. */
class WorkbookFiguresTest {

    @Test
    @DisplayName("there is a chart for each panel, it says what it shows, and draws from cells that hold its numbers")
    void chartsOverCells() {
        BookRows.read(Built.demo().folder().resolve(Libraries.WORKBOOK), book -> {
            var sheet = book.getSheet(Sheets.FIGURES);
            var charts = sheet.getDrawingPatriarch().getCharts();
            assertThat(charts)
                    .hasSize(DemoCharts.all().stream()
                            .mapToInt(c -> c.panels().size())
                            .sum());
            assertThat(sheet.getDrawingPatriarch().getCTDrawing().getTwoCellAnchorList().stream()
                            .map(a -> a.getGraphicFrame()
                                    .getNvGraphicFramePr()
                                    .getCNvPr()
                                    .getDescr()))
                    .isNotEmpty()
                    .allMatch(
                            DemoCharts.all().stream().map(c -> c.alternative()).toList()::contains);
            for (var chart : charts) {
                for (var series :
                        chart.getCTChart().getPlotArea().getScatterChartArray(0).getSerList()) {
                    kept(sheet, series.getXVal().getNumRef());
                    kept(sheet, series.getYVal().getNumRef());
                }
            }
            return charts;
        });
    }

    /** The numbers kept beside a reference are those of its cells, gaps left out. */
    private static void kept(XSSFSheet sheet, CTNumRef reference) {
        assertThat(reference.getF()).startsWith(Sheets.FIGURES + "!");
        var area = CellRangeAddress.valueOf(
                reference.getF().substring(reference.getF().indexOf('!') + 1));
        var cells = new ArrayList<Double>();
        for (int row = area.getFirstRow(); row <= area.getLastRow(); row++) {
            var cell = sheet.getRow(row).getCell(area.getFirstColumn());
            if (cell != null && cell.getCellType() == CellType.NUMERIC) {
                cells.add(cell.getNumericCellValue());
            }
        }
        List<Double> kept = reference.getNumCache().getPtList().stream()
                .map(p -> Double.valueOf(p.getV()))
                .toList();
        assertThat(kept).isNotEmpty().isEqualTo(cells);
    }
}
