package comparand.write.pptx;

import comparand.document.Block.Align;
import comparand.document.Block.Table;
import comparand.document.talk.layout.Measure;
import comparand.document.talk.layout.Placed;
import comparand.document.talk.layout.Stage;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import org.apache.poi.sl.usermodel.TableCell.BorderEdge;
import org.apache.poi.sl.usermodel.TextParagraph.TextAlign;
import org.apache.poi.sl.usermodel.VerticalAlignment;
import org.apache.poi.xslf.usermodel.XSLFSlide;
import org.apache.poi.xslf.usermodel.XSLFTableCell;

/** Draws a native table: its first row flagged as headings, lines between rows only. */
final class GridSetter {

    private static final double STRONG_LINE = 1.5;
    private static final double THIN_LINE = 0.5;

    private final XSLFSlide slide;
    private final Placed placed;
    private final Stage stage;
    private final TextSetter text;

    GridSetter(XSLFSlide slide, Placed placed, Stage stage, TextSetter text) {
        this.slide = slide;
        this.placed = placed;
        this.stage = stage;
        this.text = text;
    }

    void set(Table table) {
        var measure = new Measure(stage.lines(), stage.body().width());
        var widths = measure.columns(table);
        var heights = measure.rows(table, placed.size());
        var grid = slide.createTable(table.rows().size() + 1, table.columns().size());
        grid.setAnchor(new Rectangle2D.Double(
                placed.box().x(), placed.box().y(), placed.box().width(), placed.needed()));
        var look = grid.getCTTable().getTblPr();
        look.setFirstRow(true);
        look.setBandRow(false);
        boolean named = table.columns().get(0).names();
        look.setFirstCol(named);
        TextSetter.named(grid, table.id(), table.caption());
        for (int c = 0; c < widths.size(); c++) {
            grid.setColumnWidth(c, widths.get(c));
            var column = table.columns().get(c);
            var align = column.align() == Align.RIGHT ? TextAlign.RIGHT : TextAlign.LEFT;
            cell(grid.getCell(0, c), column.heading(), true, align, STRONG_LINE);
            for (int r = 0; r < table.rows().size(); r++) {
                var cell = table.rows().get(r).get(c);
                cell(grid.getCell(r + 1, c), Measure.text(cell), Measure.strong(cell), align, THIN_LINE);
            }
        }
        for (int r = 0; r < heights.size(); r++) {
            grid.setRowHeight(r, heights.get(r));
        }
        grid.updateCellAnchor();
    }

    private void cell(XSLFTableCell cell, String words, boolean strong, TextAlign align, double line) {
        // gives the cell a body for its text
        cell.setText("");
        cell.clearText();
        cell.setLeftInset(Measure.CELL_SIDE);
        cell.setRightInset(Measure.CELL_SIDE);
        cell.setTopInset(Measure.CELL_TOP);
        cell.setBottomInset(Measure.CELL_TOP);
        cell.setVerticalAlignment(VerticalAlignment.TOP);
        text.line(cell, words, placed.size(), strong, align);
        cell.setBorderWidth(BorderEdge.bottom, line);
        cell.setBorderColor(BorderEdge.bottom, new Color(stage.ink()));
    }
}
