package comparand.write.xlsx;

import comparand.document.Block;
import comparand.document.Cell.Words.Weight;
import comparand.document.chart.Diagram;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.write.chart.DataPlace;
import comparand.write.chart.NativeChart;
import comparand.write.chart.NativeLook;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Sets a figure on a sheet: caption, one native chart a panel, notes; the numbers they draw stand to their right. */
final class SheetGraph {

    private static final NativeLook LOOK = NativeLook.sheet("Arial");

    /** Columns and rows that the charts of a figure take together. */
    static final int COLUMNS = 12;

    private static final int ROWS = 20;
    /** Each row of the axis up takes room. */
    private static final double ROWS_A_NAME = 2.4;

    private final XSSFSheet sheet;
    private final Styles styles;

    private SheetGraph(XSSFSheet sheet, Styles styles) {
        this.sheet = sheet;
        this.styles = styles;
    }

    /** Returns the row behind the figure and its numbers. */
    static int set(XSSFSheet sheet, Styles styles, Block.Graph graph, int top) {
        return new SheetGraph(sheet, styles).figure(graph, top);
    }

    private int figure(Block.Graph graph, int top) {
        text(top, graph.caption(), Weight.STRONG);
        return graph.chart().fold(plot -> plot(plot, top), diagram -> diagram(diagram, top));
    }

    /** Boxes are words already: one row each, what leaves at a box to its right. */
    private int diagram(Diagram diagram, int top) {
        int line = top + 1;
        for (var step : diagram.steps()) {
            if (!step.phase().isBlank()) {
                text(line++, step.phase(), Weight.STRONG);
            }
            text(line, String.join("; ", step.card().lines()), Weight.PLAIN);
            var leaves = step.leaves().map(c -> "→ " + String.join("; ", c.lines()));
            if (leaves.isPresent()) {
                text(line, COLUMNS / 2, leaves.get(), Weight.PLAIN);
            }
            line++;
        }
        for (var note : diagram.notes()) {
            text(line++, note, Weight.PLAIN);
        }
        return line + 1;
    }

    private int plot(Plot chart, int top) {
        int height = chart.panels().stream()
                .mapToInt(p -> p.up().fold(
                                s -> ROWS,
                                r -> 6 + (int) Math.ceil(ROWS_A_NAME * r.names().size())))
                .max()
                .orElse(ROWS);
        double shares = chart.panels().stream().mapToDouble(Panel::share).sum();
        int column = 0;
        int below = top + 1 + height;
        int data = COLUMNS + 1;
        for (var panel : chart.panels()) {
            boolean last = panel.equals(chart.panels().get(chart.panels().size() - 1));
            int to = last ? COLUMNS : column + (int) Math.round(COLUMNS * panel.share() / shares);
            var drawn = chart(column, top + 1, to, top + 1 + height);
            described(drawn, chart.id(), chart.alternative());
            below = Math.max(below, NativeChart.fill(drawn, panel, LOOK, new DataPlace(sheet, top, data)));
            data += DataPlace.COLUMNS + 1;
            column = to;
        }
        int line = top + 1 + height;
        for (var note : chart.notes()) {
            text(line++, note, Weight.PLAIN);
        }
        return Math.max(line, below) + 1;
    }

    private XSSFChart chart(int left, int top, int right, int bottom) {
        var drawing = sheet.createDrawingPatriarch();
        return drawing.createChart(drawing.createAnchor(0, 0, 0, 0, left, top, right, bottom));
    }

    private static void described(XSSFChart chart, String name, String alternative) {
        var properties = chart.getGraphicFrame()
                .getCTGraphicalObjectFrame()
                .getNvGraphicFramePr()
                .getCNvPr();
        properties.setName(name);
        properties.setDescr(alternative);
    }

    /** Charts are filled after the caption, so that a row may be there already. */
    private void text(int at, String text, Weight weight) {
        text(at, 0, text, weight);
    }

    private void text(int at, int column, String text, Weight weight) {
        var row = sheet.getRow(at);
        var cell = (row == null ? sheet.createRow(at) : row).createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(styles.line(weight));
    }
}
