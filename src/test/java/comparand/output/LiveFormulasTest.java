package comparand.output;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.document.Block.Align;
import comparand.document.Block.Column;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.document.Document;
import comparand.document.Edition;
import comparand.document.Look;
import comparand.document.Section;
import comparand.support.BookRows;
import comparand.support.Built;
import comparand.write.xlsx.WorkbookWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Formulas of the workbook, worked out by the evaluator of Apache POI and not by this program. */
class LiveFormulasTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @Test
    @DisplayName("every formula of the demo gives what the file holds as its result, number or words")
    void sameResults() {
        BookRows.read(Built.demo().folder().resolve(Libraries.WORKBOOK), book -> {
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            var formulas = formulas(book);
            assertThat(formulas).hasSizeGreaterThan(100);
            for (var cell : formulas) {
                var value = requireNonNull(evaluator.evaluate(cell));
                var where = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " " + cell.getCellFormula();
                assertThat(value.getCellType()).as(where).isEqualTo(cell.getCachedFormulaResultType());
                if (value.getCellType() == CellType.NUMERIC) {
                    assertThat(value.getNumberValue()).as(where).isCloseTo(cell.getNumericCellValue(), within(1e-9));
                } else {
                    assertThat(value.getStringValue()).as(where).isEqualTo(cell.getStringCellValue());
                }
            }
            return book;
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("only costs and weights are formulas: results are values")
    void whereFormulasAre(Built built) {
        BookRows.read(built.folder().resolve(Libraries.WORKBOOK), book -> {
            assertThat(formulas(book).stream().map(c -> c.getSheet().getSheetName()))
                    .isSubsetOf("Costs", "Cost of a case", "Weights", "Weights varied");
            return book;
        });
    }

    @Test
    @DisplayName("a price written in where none was supplied completes the cost of a case: 120 + 30.5 + 86 = 236.5")
    void aMissingPriceWrittenIn() {
        BookRows.read(Built.demo().folder().resolve(Libraries.WORKBOOK), book -> {
            var costs = book.getSheet("Costs");
            var prices = List.of(120.0, 30.5).iterator();
            for (var row : costs) {
                if (row.getCell(2).getCellType() == CellType.STRING && row.getRowNum() > 0) {
                    row.getCell(2).setCellValue(prices.next());
                }
            }
            assertThat(prices.hasNext()).isFalse();
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            var skarrow = book.getSheet("Cost of a case").getRow(3);
            assertThat(skarrow.getCell(0).getStringCellValue()).isEqualTo("Skarrow Kid");
            assertThat(requireNonNull(evaluator.evaluate(skarrow.getCell(2))).getNumberValue())
                    .isZero();
            assertThat(requireNonNull(evaluator.evaluate(skarrow.getCell(3))).getNumberValue())
                    .isCloseTo(236.5, within(1e-9));
            assertThat(requireNonNull(evaluator.evaluate(skarrow.getCell(4))).getNumberValue())
                    .isCloseTo(236.5 - 396, within(1e-9));
            return book;
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1+1", "-1+1", "@SUM(1)", "=HYPERLINK(\"x\")", "\t=1"})
    @DisplayName("a text that looks like a formula stays a text, also for a program that edits it")
    void noInjection(String text) throws IOException {
        var column = new Column("What", 20, Align.LEFT, true);
        var table = new Table("T", "", List.of(column), List.of(List.of(Cell.verbatim(text))), List.of());
        var edition = new Edition(
                "t", "s", LocalDate.of(2026, 1, 2), "us", "tool", "12345678", "draft", List.of(), List.of(), "en");
        var out = new ByteArrayOutputStream();
        new WorkbookWriter()
                .write(
                        new Document(
                                "d",
                                Document.Form.WORKBOOK,
                                edition,
                                Look.PLAIN,
                                List.of(new Section("S", "S", List.of(table)))),
                        out);

        try (var book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            var cell = book.getSheet("S").getRow(1).getCell(0);
            assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
            assertThat(cell.getStringCellValue()).isEqualTo(text);
            assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
        }
    }

    private static List<XSSFCell> formulas(XSSFWorkbook book) {
        var formulas = new ArrayList<XSSFCell>();
        for (var sheet : BookRows.sheets(book)) {
            sheet.forEach(row -> row.forEach(cell -> {
                if (cell.getCellType() == CellType.FORMULA) {
                    formulas.add((XSSFCell) cell);
                }
            }));
        }
        return formulas;
    }
}
