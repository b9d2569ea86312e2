package comparand.write.docx;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import java.math.BigInteger;
import java.util.List;
import org.apache.poi.xwpf.usermodel.ParagraphAlignment;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTBorder;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTbl;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGrid;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STBorder;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTblLayoutType;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STTblWidth;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STVerticalJc;

/** Sets a table: three rules across and none down, headings that repeat, rows that are not torn, notes below. */
final class TextTable {

    /** Eighths of a point. */
    private static final long THICK = 8;

    private static final long THIN = 4;
    /** Shorter tables than this stay on one page. */
    private static final int SHORT = 12;

    private final XWPFDocument file;
    private final RunningText running;

    TextTable(XWPFDocument file, RunningText running) {
        this.file = file;
        this.running = running;
    }

    /** As wide as the text, in twentieths of a point. */
    void set(Table table, int width) {
        var columns = table.columns();
        var set = file.createTable(table.rows().size() + 1, columns.size());
        var widths = widths(columns, width);
        properties(set.getCTTbl(), widths, width);
        headings(set.getRow(0), columns, widths);
        for (int r = 0; r < table.rows().size(); r++) {
            boolean last = r == table.rows().size() - 1;
            boolean stays = last ? !table.notes().isEmpty() : table.rows().size() <= SHORT;
            row(set.getRow(r + 1), table.rows().get(r), columns, widths, stays);
        }
        notes(table);
    }

    /** Tables with nothing between them would become one. */
    private void notes(Table table) {
        if (table.notes().isEmpty()) {
            running.paragraph("TableNote");
        }
        for (var note : table.notes()) {
            var paragraph = running.paragraph("TableNote");
            if (!note.mark().isEmpty()) {
                raised(paragraph, note.mark());
                RunningText.run(paragraph, "\u00a0");
            }
            RunningText.run(paragraph, note.text());
        }
    }

    private static int[] widths(List<Column> columns, int width) {
        double sum = columns.stream().mapToDouble(Column::width).sum();
        var widths = new int[columns.size()];
        int given = 0;
        for (int c = 0; c < widths.length; c++) {
            widths[c] = c == widths.length - 1
                    ? width - given
                    : (int) Math.round(columns.get(c).width() / sum * width);
            given += widths[c];
        }
        return widths;
    }

    private static void properties(CTTbl table, int[] widths, int width) {
        table.setTblGrid(CTTblGrid.Factory.newInstance());
        var grid = table.getTblGrid();
        for (int w : widths) {
            grid.addNewGridCol().setW(BigInteger.valueOf(w));
        }
        table.setTblPr(CTTblPr.Factory.newInstance());
        var properties = table.getTblPr();
        var all = properties.addNewTblW();
        all.setType(STTblWidth.DXA);
        all.setW(BigInteger.valueOf(width));
        var borders = properties.addNewTblBorders();
        rule(borders.addNewTop(), THICK);
        rule(borders.addNewBottom(), THICK);
        properties.addNewTblLayout().setType(STTblLayoutType.FIXED);
        var look = properties.addNewTblLook();
        look.setFirstRow(true);
        look.setNoHBand(true);
        look.setNoVBand(true);
    }

    private static void rule(CTBorder border, long thickness) {
        border.setVal(STBorder.SINGLE);
        border.setSz(BigInteger.valueOf(thickness));
        border.setSpace(BigInteger.ZERO);
        border.setColor("000000");
    }

    private static void headings(XWPFTableRow row, List<Column> columns, int[] widths) {
        row.setRepeatHeader(true);
        row.setCantSplitRow(true);
        for (int c = 0; c < columns.size(); c++) {
            var cell = row.getCell(c);
            width(cell, widths[c]);
            var properties = cell.getCTTc().getTcPr();
            rule(properties.addNewTcBorders().addNewBottom(), THIN);
            properties.addNewVAlign().setVal(STVerticalJc.BOTTOM);
            var paragraph = cell.getParagraphs().get(0);
            paragraph.setStyle("TableHeading");
            align(paragraph, columns.get(c).align());
            RunningText.run(paragraph, columns.get(c).heading());
        }
    }

    private static void width(XWPFTableCell cell, int width) {
        var properties = cell.getCTTc().isSetTcPr()
                ? cell.getCTTc().getTcPr()
                : cell.getCTTc().addNewTcPr();
        var of = properties.isSetTcW() ? properties.getTcW() : properties.addNewTcW();
        of.setType(STTblWidth.DXA);
        of.setW(BigInteger.valueOf(width));
    }

    private static void row(XWPFTableRow row, List<Cell> cells, List<Column> columns, int[] widths, boolean stays) {
        row.setCantSplitRow(true);
        for (int c = 0; c < cells.size(); c++) {
            width(row.getCell(c), widths[c]);
            var paragraph = row.getCell(c).getParagraphs().get(0);
            paragraph.setStyle("TableText");
            if (stays) {
                paragraph.setKeepNext(true);
            }
            align(paragraph, columns.get(c).align());
            cell(paragraph, cells.get(c));
        }
    }

    private static void align(XWPFParagraph paragraph, Align align) {
        if (align == Align.RIGHT) {
            paragraph.setAlignment(ParagraphAlignment.RIGHT);
        }
    }

    private static void cell(XWPFParagraph paragraph, Cell cell) {
        Runnable set = cell.fold(new Cell.Cases<Runnable>() {
            @Override
            public Runnable words(Cell.Words words) {
                return () -> TextTable.words(paragraph, words);
            }

            @Override
            public Runnable figure(Cell.Figure figure) {
                return () -> RunningText.run(paragraph, figure.shown());
            }

            @Override
            public Runnable formula(Cell.Formula formula) {
                return () -> RunningText.run(paragraph, formula.shown());
            }

            @Override
            public Runnable day(Cell.Day day) {
                return () -> RunningText.run(paragraph, day.shown());
            }

            @Override
            public Runnable link(Cell.Link link) {
                return () -> TextTable.link(paragraph, link);
            }
        });
        set.run();
        if (!cell.marks().isEmpty()) {
            raised(paragraph, "\u2009" + cell.marks());
        }
    }

    private static void words(XWPFParagraph paragraph, Cell.Words words) {
        var run = paragraph.createRun();
        run.setText(words.text());
        if (words.weight() == Cell.Words.Weight.STRONG) {
            run.setBold(true);
        }
        frame(run, words.frame());
    }

    private static void frame(XWPFRun run, Cell.Words.Frame frame) {
        if (frame != Cell.Words.Frame.NONE) {
            var properties = run.getCTR().isSetRPr()
                    ? run.getCTR().getRPr()
                    : run.getCTR().addNewRPr();
            var border = properties.addNewBdr();
            rule(border, THIN);
            border.setVal(
                    switch (frame) {
                        case NONE, SOLID -> STBorder.SINGLE;
                        case DOUBLE -> STBorder.DOUBLE;
                        case DASHED -> STBorder.DASHED;
                        case DOTTED -> STBorder.DOTTED;
                    });
        }
    }

    private static void link(XWPFParagraph paragraph, Cell.Link link) {
        var hyperlink = paragraph.getCTP().addNewHyperlink();
        hyperlink.setAnchor(Bookmarks.of("section", link.target()));
        var run = hyperlink.addNewR();
        run.addNewRPr().addNewRStyle().setVal("Hyperlink");
        run.addNewT().setStringValue(link.text());
    }

    private static void raised(XWPFParagraph paragraph, String text) {
        var run = paragraph.createRun();
        run.setText(text);
        run.setSubscript(VerticalAlign.SUPERSCRIPT);
    }
}
