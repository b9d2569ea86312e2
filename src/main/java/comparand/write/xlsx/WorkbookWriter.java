package comparand.write.xlsx;

import comparand.document.Block;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Section;
import comparand.write.DocumentWriter;
import comparand.write.office.FileProperties;
import comparand.write.office.NoClock;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Consumer;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Sets a document as a workbook: frozen headings and filters, print set-up, numbers as numbers. */
public final class WorkbookWriter implements DocumentWriter {

    private static final int WIDEST = 100;
    /** The characters that the button of a filter covers in a heading. */
    private static final int FILTER_BUTTON = 2;

    private static final String TABLE_STYLE = "TableStyleLight1";

    /** Spreadsheet programs allow 255 characters in a running head; the codes of its three parts take six. */
    private static final int MOST_IN_HEAD = 249;

    @Override
    public String extension() {
        return "xlsx";
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        try (var workbook = new XSSFWorkbook()) {
            var styles = new Styles(workbook);
            var formulas = new Formulas(styles);
            var streamed = new StreamedRows(workbook);
            for (var section : document.sections()) {
                sheet(workbook, styles, formulas, streamed, document.edition(), section);
            }
            formulas.set();
            new QuotedTexts(workbook).mark();
            FileProperties.set(workbook, document.edition());
            NoClock.during(() -> streamed.write(out));
        }
    }

    private static void sheet(
            XSSFWorkbook workbook,
            Styles styles,
            Formulas formulas,
            StreamedRows streamed,
            Edition edition,
            Section section) {
        var sheet = workbook.createSheet(section.name());
        if (section.blocks().size() == 1 && section.blocks().get(0) instanceof Table table) {
            if (StreamedRows.isFor(table)) {
                layOut(sheet, formulas, table, 0);
                register(sheet, table, 0, table.rows().size());
                var quoted = new QuotedTexts(workbook);
                streamed.add(sheet, rows -> rows(rows, styles, formulas, table, 0, quoted::mark));
            } else {
                table(sheet, styles, formulas, table, 0);
            }
            sheet.createFreezePane(names(table), 1);
            sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
            workbook.setPrintArea(
                    workbook.getSheetIndex(sheet),
                    0,
                    table.onPaper() - 1,
                    0,
                    table.rows().size() + table.notes().size());
        } else {
            page(sheet, styles, formulas, section);
            if (section.blocks().stream().anyMatch(Block.Graph.class::isInstance)) {
                // the numbers beside the charts are for the screen
                workbook.setPrintArea(
                        workbook.getSheetIndex(sheet), 0, SheetGraph.COLUMNS - 1, 0, sheet.getLastRowNum());
            }
        }
        printing(sheet, edition, section);
    }

    /** How many columns at the left stay in sight: those up to the last that names its row, three at most. */
    private static int names(Table table) {
        int last = 0;
        for (int i = 0; i < Math.min(4, table.columns().size()); i++) {
            if (table.columns().get(i).names()) {
                last = i + 1;
            }
        }
        return last;
    }

    /** A sheet to be read from the top: a title, then its blocks one below the other. */
    private static void page(XSSFSheet sheet, Styles styles, Formulas formulas, Section section) {
        var title = sheet.createRow(0).createCell(0);
        title.setCellValue(section.heading());
        title.setCellStyle(styles.title());
        int row = 2;
        for (var block : section.blocks()) {
            int at = row;
            row = block.fold(new Block.Cases<Integer>() {
                @Override
                public Integer paragraph(Block.Paragraph paragraph) {
                    return text(sheet, styles, paragraph.text(), at, Cell.Words.Weight.PLAIN);
                }

                @Override
                public Integer prose(Block.Prose prose) {
                    return text(sheet, styles, prose.text(), at, Cell.Words.Weight.PLAIN);
                }

                @Override
                public Integer heading(Block.Heading heading) {
                    return text(sheet, styles, heading.text(), at, Cell.Words.Weight.STRONG);
                }

                @Override
                public Integer table(Table table) {
                    return WorkbookWriter.table(sheet, styles, formulas, table, at);
                }

                @Override
                public Integer graph(Block.Graph graph) {
                    return SheetGraph.set(sheet, styles, graph, at);
                }
            });
            row++;
        }
    }

    private static int text(Sheet sheet, Styles styles, String text, int at, Cell.Words.Weight weight) {
        var cell = sheet.createRow(at).createCell(0);
        cell.setCellValue(text);
        cell.setCellStyle(styles.words(Block.Align.LEFT, weight));
        return at + 1;
    }

    /** Returns the row behind the table and its notes. */
    private static int table(XSSFSheet sheet, Styles styles, Formulas formulas, Table table, int top) {
        layOut(sheet, formulas, table, top);
        int end = rows(sheet, styles, formulas, table, top, row -> {});
        register(sheet, table, top, top + table.rows().size());
        return end;
    }

    /** What concerns a table as a whole: its place and the widths of its columns. */
    private static void layOut(XSSFSheet sheet, Formulas formulas, Table table, int top) {
        formulas.stands(table.id(), sheet.getSheetName(), top);
        for (int c = 0; c < table.columns().size(); c++) {
            boolean untouched = sheet.getColumnWidth(c) == 8 * 256;
            sheet.setColumnWidth(
                    c,
                    Math.max(
                            untouched ? 0 : sheet.getColumnWidth(c),
                            width(table.columns().get(c).width())));
        }
    }

    /**
     * Its headings, rows and notes; returns the row behind them.
     *
     * @param finished is given each row as soon as nothing more comes into it
     */
    private static int rows(
            Sheet sheet, Styles styles, Formulas formulas, Table table, int top, Consumer<Row> finished) {
        var heading = sheet.createRow(top);
        int tallest = 1;
        for (int c = 0; c < table.columns().size(); c++) {
            var column = table.columns().get(c);
            tallest = Math.max(tallest, RowHeight.lines(column.heading(), column.width() - FILTER_BUTTON));
            var cell = heading.createCell(c);
            cell.setCellValue(column.heading());
            cell.setCellStyle(styles.heading(column.align()));
        }
        heading.setHeightInPoints(RowHeight.of(tallest));
        int r = top;
        for (var row : table.rows()) {
            r++;
            var line = sheet.createRow(r);
            int lines = 1;
            for (int c = 0; c < row.size(); c++) {
                CellContent.set(
                        line.createCell(c), row.get(c), table.columns().get(c).align(), styles, formulas);
                lines = Math.max(
                        lines,
                        RowHeight.lines(row.get(c), table.columns().get(c).width()));
            }
            line.setHeightInPoints(RowHeight.of(lines));
            finished.accept(line);
        }
        for (var note : table.notes()) {
            r = text(sheet, styles, note.mark() + "  " + note.text(), r + 1, Cell.Words.Weight.PLAIN) - 1;
        }
        return r + 1;
    }

    private static int width(double characters) {
        return (int) Math.round(Math.min(WIDEST, characters + 1.8) * 256);
    }

    private static void register(XSSFSheet sheet, Table table, int top, int bottom) {
        var area = new AreaReference(
                new CellReference(top, 0),
                new CellReference(Math.max(bottom, top + 1), table.columns().size() - 1),
                SpreadsheetVersion.EXCEL2007);
        var real = sheet.createTable(area);
        real.setName(table.id());
        real.setDisplayName(table.id());
        var ct = real.getCTTable();
        for (int c = 0; c < table.columns().size(); c++) {
            ct.getTableColumns()
                    .getTableColumnArray(c)
                    .setName(table.columns().get(c).heading());
        }
        ct.addNewAutoFilter().setRef(area.formatAsString());
        var info = ct.addNewTableStyleInfo();
        info.setName(TABLE_STYLE);
        info.setShowRowStripes(false);
        info.setShowColumnStripes(false);
    }

    private static void printing(XSSFSheet sheet, Edition edition, Section section) {
        var print = sheet.getPrintSetup();
        print.setLandscape(true);
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        sheet.setFitToPage(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        var marks = escaped(String.join(" ", edition.marks()));
        var name = escaped(section.name());
        sheet.getHeader().setLeft(shortened(edition.title(), MOST_IN_HEAD - marks.length() - name.length()));
        sheet.getHeader().setCenter(marks);
        sheet.getHeader().setRight(name);
        sheet.getFooter().setLeft(escaped(edition.imprint(" · ")));
        sheet.getFooter().setRight("&P / &N");
    }

    /** A title that fits the running head; the whole of it stands on the first sheet and among the properties. */
    private static String shortened(String title, int most) {
        var whole = escaped(title);
        return whole.length() <= most
                ? whole
                : escaped(title.substring(0, Math.max(0, Math.min(title.length(), most / 2 - 1)))) + "\u2026";
    }

    /** An ampersand begins a code in headers and footers. */
    private static String escaped(String text) {
        return text.replace("&", "&&");
    }
}
