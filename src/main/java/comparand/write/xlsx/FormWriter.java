package comparand.write.xlsx;

import comparand.document.form.FormBook;
import comparand.document.form.FormList;
import comparand.document.form.FormPage;
import comparand.document.form.FormTable;
import comparand.write.office.FileProperties;
import comparand.write.office.NoClock;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Sets a form as a workbook: lists to choose from, messages at the cells, headings that cannot be overwritten; no macros. */
public final class FormWriter {

    private static final String WORDS = "Words";
    private static final int LIST_COLUMNS = 3;
    /** What spreadsheet programs allow in the title of a message. */
    private static final int LONGEST_TITLE = 32;

    private static final int PAGE_WIDTH = 46;

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final FormStyles styles = new FormStyles(workbook);
    private final Map<String, String> lists = new HashMap<>();

    private FormWriter() {}

    public static void write(FormBook form, OutputStream out) throws IOException {
        var writer = new FormWriter();
        try (var workbook = writer.workbook) {
            writer.book(form);
            new QuotedTexts(workbook).mark();
            FileProperties.set(workbook, form.edition());
            NoClock.during(() -> workbook.write(out));
        }
    }

    private void book(FormBook form) {
        // sheets in the order in which they are used: how to, rows, what the words mean, what is missing
        page(form.pages().get(0));
        form.tables().forEach(t -> workbook.createSheet(t.name()));
        words(form.lists());
        form.pages().stream().skip(1).forEach(this::page);
        form.tables().forEach(this::table);
        workbook.setForceFormulaRecalculation(true);
    }

    private void words(List<FormList> all) {
        var sheet = workbook.createSheet(WORDS);
        String[] headings = {"where", "word", "what it means"};
        var top = sheet.createRow(0);
        for (int c = 0; c < LIST_COLUMNS; c++) {
            var cell = top.createCell(c);
            cell.setCellValue(headings[c]);
            cell.setCellStyle(styles.heading());
        }
        int row = 1;
        for (var list : all) {
            int first = row;
            for (var word : list.words()) {
                var line = sheet.createRow(row++);
                String[] texts = {list.name(), word.word(), word.meaning()};
                for (int c = 0; c < LIST_COLUMNS; c++) {
                    var cell = line.createCell(c);
                    cell.setCellValue(texts[c]);
                    cell.setCellStyle(styles.text());
                }
            }
            lists.put(list.name(), "%s!$B$%d:$B$%d".formatted(WORDS, first + 1, row));
        }
        sheet.setColumnWidth(0, 30 * 256);
        sheet.setColumnWidth(1, 30 * 256);
        sheet.setColumnWidth(2, 90 * 256);
        sheet.createFreezePane(0, 1);
        onePageWide(sheet);
    }

    private void page(FormPage page) {
        var sheet = workbook.createSheet(page.name());
        onePageWide(sheet);
        sheet.setDisplayGridlines(false);
        sheet.setColumnWidth(0, PAGE_WIDTH * 256);
        sheet.setColumnWidth(1, 22 * 256);
        sheet.setColumnWidth(2, PAGE_WIDTH * 256);
        int at = 0;
        for (var line : page.lines()) {
            var row = sheet.createRow(at++);
            int here = at;
            line.fold(
                    title -> {
                        var cell = row.createCell(0);
                        cell.setCellValue(title.text());
                        cell.setCellStyle(styles.title());
                        return row;
                    },
                    text -> {
                        var cell = row.createCell(0);
                        cell.setCellValue(text.text());
                        cell.setCellStyle(styles.wrapped());
                        sheet.addMergedRegion(new CellRangeAddress(here - 1, here - 1, 0, 2));
                        row.setHeightInPoints(RowHeight.of(RowHeight.lines(text.text(), 2 * PAGE_WIDTH + 10)));
                        return row;
                    },
                    question -> {
                        label(row, question.name());
                        var answer = row.createCell(1);
                        answer.setCellValue(question.answer());
                        answer.setCellStyle(styles.entry());
                        var help = row.createCell(2);
                        help.setCellValue(question.help());
                        help.setCellStyle(styles.text());
                        return row;
                    },
                    count -> {
                        label(row, count.name());
                        row.createCell(1).setCellFormula(count.formula());
                        var should = row.createCell(2);
                        should.setCellValue("should be: " + count.should());
                        should.setCellStyle(styles.text());
                        return row;
                    });
        }
    }

    private void label(XSSFRow row, String text) {
        var cell = row.createCell(0);
        cell.setCellValue(text);
        cell.setCellStyle(styles.text());
    }

    private static void onePageWide(XSSFSheet sheet) {
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getPrintSetup().setLandscape(true);
    }

    private void table(FormTable table) {
        var sheet = workbook.getSheet(table.name());
        // one page wide even here: as a picture of the whole, not to be filled in on paper
        onePageWide(sheet);
        sheet.getPrintSetup().setPaperSize(PrintSetup.A3_PAPERSIZE);
        var lead = sheet.createRow(0).createCell(0);
        lead.setCellValue(table.lead());
        lead.setCellStyle(styles.line());
        var groups = sheet.createRow(FormTable.HEADING_ROW - 2);
        var headings = sheet.createRow(FormTable.HEADING_ROW - 1);
        int last = FormTable.FIRST_ROW - 2 + table.rows().size() + table.emptyRows();
        int tallest = 1;
        String group = "";
        for (int c = 0; c < table.columns().size(); c++) {
            var column = table.columns().get(c);
            sheet.setColumnWidth(c, column.width() * 256);
            sheet.setDefaultColumnStyle(c, styles.entry());
            var over = groups.createCell(c);
            over.setCellStyle(styles.group());
            if (!column.group().equals(group)) {
                over.setCellValue(column.group());
                group = column.group();
            }
            var heading = headings.createCell(c);
            heading.setCellValue(column.heading());
            heading.setCellStyle(styles.heading());
            tallest = Math.max(tallest, RowHeight.lines(column.heading(), column.width() - 1));
            if (table.emptyRows() > 0) {
                guide(sheet, column, c, last);
            }
        }
        headings.setHeightInPoints(RowHeight.of(tallest));
        for (int r = 0; r < table.rows().size() + table.emptyRows(); r++) {
            var line = sheet.createRow(FormTable.FIRST_ROW - 1 + r);
            int lines = 1;
            for (int c = 0; c < table.columns().size(); c++) {
                var cell = line.createCell(c);
                cell.setCellStyle(table.emptyRows() > 0 ? styles.entry() : styles.text());
                if (r < table.rows().size() && !table.rows().get(r).get(c).isEmpty()) {
                    var text = table.rows().get(r).get(c);
                    cell.setCellValue(text);
                    lines = Math.max(
                            lines, RowHeight.lines(text, table.columns().get(c).width() - 1));
                }
            }
            if (lines > 1) {
                line.setHeightInPoints(RowHeight.of(lines));
            }
        }
        sheet.createFreezePane(table.fixed(), FormTable.HEADING_ROW);
        if (table.emptyRows() > 0) {
            // headings keep their words; everything else stays free, and there is no password
            sheet.protectSheet("");
            sheet.lockFormatColumns(false);
            sheet.lockFormatRows(false);
            sheet.lockFormatCells(false);
            sheet.lockInsertRows(false);
            sheet.lockDeleteRows(false);
            sheet.lockSort(false);
            sheet.lockAutoFilter(false);
        }
    }

    /** The list, the message and the colour of a column's cells. */
    private void guide(XSSFSheet sheet, FormTable.Column column, int c, int last) {
        var cells = new CellRangeAddressList(FormTable.FIRST_ROW - 1, last, c, c);
        var helper = new XSSFDataValidationHelper(sheet);
        DataValidation validation = column.list()
                .map(lists::get)
                .map(l -> helper.createValidation(helper.createFormulaListConstraint(l), cells))
                // a message without a rule: any text is allowed
                .orElseGet(() -> helper.createValidation(helper.createCustomConstraint("TRUE"), cells));
        if (!column.help().isEmpty()) {
            var title = column.heading();
            validation.createPromptBox(
                    title.length() > LONGEST_TITLE ? title.substring(0, LONGEST_TITLE) : title, column.help());
            validation.setShowPromptBox(true);
        }
        boolean closed = column.list().isPresent() && !column.open();
        validation.setShowErrorBox(closed);
        if (closed) {
            validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
            validation.createErrorBox(
                    "Not on the list", "Choose a word of the list; what each means stands on the sheet " + WORDS + ".");
        }
        validation.setEmptyCellAllowed(true);
        // in this library true means that the arrow is shown
        validation.setSuppressDropDownArrow(true);
        sheet.addValidationData(validation);
        column.wanted().ifPresent(formula -> {
            var formatting = sheet.getSheetConditionalFormatting();
            var rule = formatting.createConditionalFormattingRule(
                    formula.replace("{row}", String.valueOf(FormTable.FIRST_ROW)));
            var fill = rule.createPatternFormatting();
            fill.setFillBackgroundColor(styles.wanted());
            formatting.addConditionalFormatting(
                    new CellRangeAddress[] {
                        CellRangeAddress.valueOf(CellReference.convertNumToColString(c)
                                + FormTable.FIRST_ROW
                                + ":"
                                + CellReference.convertNumToColString(c)
                                + (last + 1))
                    },
                    rule);
        });
    }
}
