package comparand.read.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.model.DataCell;
import comparand.model.RowSource;
import comparand.support.Books;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sheet stores comes out as it is stored; the office library, which wrote it, is the judge. */
class WorkbookRowsTest {

    @TempDir
    Path folder;

    private final List<Diagnostic> notes = new ArrayList<>();

    private RowSource open(String sheet, int headingRow, Books.Filling filling) throws IOException {
        var file = Books.write(folder.resolve("register.xlsx"), filling);
        return WorkbookRows.open(
                file, "studies/s/register.xlsx", Optional.of(sheet), Span.startOf("study.yaml"), headingRow, notes);
    }

    private static List<RowSource.Row> rows(RowSource source) {
        var rows = new ArrayList<RowSource.Row>();
        source.forEach(rows::add);
        return rows;
    }

    private static CellStyle format(XSSFWorkbook book, String format) {
        var style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        return style;
    }

    @Test
    void everyKindOfCellKeepsItsType() throws IOException {
        var source = open("Cases", 1, book -> {
            var sheet = book.createSheet("Cases");
            Books.set(
                    sheet.createRow(0),
                    0,
                    "text",
                    "number",
                    "day",
                    "moment",
                    "time",
                    "truth",
                    "error",
                    "blank",
                    "lasted");
            var row = sheet.createRow(1);
            Books.set(row, 0, "  C-07 ", 7.35);
            var day = row.createCell(2);
            day.setCellValue(LocalDate.of(2026, 3, 1));
            day.setCellStyle(format(book, "dd.mm.yyyy"));
            var moment = row.createCell(3);
            moment.setCellValue(LocalDateTime.of(2026, 3, 1, 14, 5));
            moment.setCellStyle(format(book, "yyyy-mm-dd hh:mm"));
            var time = row.createCell(4);
            time.setCellValue(14.5 / 24);
            time.setCellStyle(format(book, "hh:mm"));
            row.createCell(5).setCellValue(true);
            row.createCell(6).setCellErrorValue((byte) 0x2A);
            var lasted = row.createCell(8);
            lasted.setCellValue(30.25 / 24);
            lasted.setCellStyle(format(book, "[h]:mm"));
        });

        assertThat(rows(source)).singleElement().satisfies(row -> {
            assertThat(row.line()).isEqualTo(2);
            assertThat(row.cells())
                    .containsExactly(
                            new DataCell.Text("C-07"),
                            new DataCell.Figure(new BigDecimal("7.35")),
                            new DataCell.When(Optional.of(LocalDate.of(2026, 3, 1)), Optional.empty()),
                            new DataCell.When(Optional.of(LocalDate.of(2026, 3, 1)), Optional.of(LocalTime.of(14, 5))),
                            new DataCell.When(Optional.empty(), Optional.of(LocalTime.of(14, 30))),
                            new DataCell.Text("TRUE"),
                            new DataCell.Fault("#N/A"),
                            DataCell.blank(),
                            new DataCell.Text("30:15:00"));
        });
        assertThat(notes).isEmpty();
    }

    @Test
    void daysMayCountFrom1904() throws IOException {
        var source = open("Cases", 1, book -> {
            book.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "day");
            var cell = sheet.createRow(1).createCell(0);
            cell.setCellValue(1.0);
            cell.setCellStyle(format(book, "yyyy-mm-dd"));
        });

        // ECMA-376 part 1, 18.17.4.1: in the 1904 system, 1 January 1904 is day 0
        assertThat(rows(source).get(0).cells().get(0).text()).isEqualTo("1904-01-02");
    }

    @Test
    void aStoredResultIsUsedAndNoted() throws IOException {
        var source = open("Cases", 1, book -> {
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "a", "twice");
            var row = sheet.createRow(1);
            Books.set(row, 0, 20.5);
            row.createCell(1).setCellFormula("A2*2");
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        });

        assertThat(rows(source).get(0).cells().get(1)).isEqualTo(new DataCell.Figure(new BigDecimal("41")));
        assertThat(notes).singleElement().satisfies(note -> {
            assertThat(note.code()).isEqualTo("formulas-stored");
            assertThat(note.stops()).isFalse();
            assertThat(note.span()).hasToString("studies/s/register.xlsx, Cases!B2");
        });
    }

    @Test
    void headingsMayStandLowerAndFurtherRight() throws IOException {
        var source = open("My cases", 4, book -> {
            var sheet = book.createSheet("My cases");
            Books.set(sheet.createRow(0), 0, "Register of 2026, printed by the department");
            Books.set(sheet.createRow(3), 1, "case", "flow");
            Books.set(sheet.createRow(4), 1, "C-01", 1.5);
            sheet.createRow(5);
            Books.set(sheet.createRow(6), 1, "C-02", 1.25);
        });

        assertThat(source.header()).containsExactly("case", "flow");
        assertThat(rows(source)).extracting(RowSource.Row::line).containsExactly(5, 7);
        assertThat(source.heading(1)).hasToString("studies/s/register.xlsx, 'My cases'!C4");
        assertThat(source.place(7, 1)).hasToString("studies/s/register.xlsx, 'My cases'!C7");
        assertThat(source.file()).isEqualTo("studies/s/register.xlsx, My cases");
    }

    @Test
    void whatIsHiddenIsReadAndNoted() throws IOException {
        var source = open("Cases", 1, book -> {
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "case", "flow", "old");
            Books.set(sheet.createRow(1), 0, "C-01", 1.5, 1);
            Books.set(sheet.createRow(2), 0, "C-02", 1.25, 2);
            sheet.getRow(2).setZeroHeight(true);
            sheet.setColumnHidden(2, true);
            Books.set(book.createSheet("Corrected").createRow(0), 0, "case");
            book.setSheetHidden(1, true);
        });

        assertThat(rows(source)).hasSize(2);
        assertThat(notes).extracting(Diagnostic::code).containsExactly("sheet-hidden", "rows-hidden", "columns-hidden");
        assertThat(notes.get(0).message()).isEqualTo("the workbook has a hidden sheet `Corrected`");
        assertThat(notes).extracting(n -> n.span().within()).containsExactly("Corrected!A1", "Cases!A3", "Cases!C1");
    }

    @Test
    void numbersStoredAsTextAreNoted() throws IOException {
        open("Cases", 1, book -> {
            var sheet = book.createSheet("Cases");
            Books.set(sheet.createRow(0), 0, "case", "flow");
            Books.set(sheet.createRow(1), 0, "C-01", 1.5);
            Books.set(sheet.createRow(2), 0, "C-02", "1,25");
        });

        assertThat(notes).singleElement().satisfies(note -> {
            assertThat(note.code()).isEqualTo("numbers-as-text");
            assertThat(note.span()).hasToString("studies/s/register.xlsx, Cases!B3");
        });
    }
}
