package comparand.output;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.BookRows;
import comparand.support.Built;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The workbook as a file: its sheets, real tables, print set-up, links and properties. */
class WorkbookTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "the sheets stand in the order in which they are read, none is hidden or locked, the first is in front")
    void sheets(Built built) {
        read(built, book -> {
            assertThat(BookRows.sheets(book).stream().map(XSSFSheet::getSheetName))
                    .containsExactlyElementsOf(Sheets.of(built.results()));
            assertThat(book.getActiveSheetIndex()).isZero();
            assertThat(IntStream.range(0, book.getNumberOfSheets())
                            .filter(i -> book.isSheetHidden(i) || book.isSheetVeryHidden(i)))
                    .isEmpty();
            assertThat(BookRows.sheets(book)).allSatisfy(sheet -> {
                assertThat(sheet.getProtect()).isFalse();
                assertThat(sheet.getNumMergedRegions()).isZero();
                assertThat(sheet)
                        .allSatisfy(row -> assertThat(row.getZeroHeight()).isFalse());
                assertThat(IntStream.range(0, 40).filter(sheet::isColumnHidden)).isEmpty();
            });
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every sheet is a real table from its first cell to its last, and the first sheet is three of them")
    void tables(Built built) {
        read(built, book -> {
            for (var sheet : BookRows.sheets(book)) {
                var tables = sheet.getTables();
                if (sheet.getSheetName().equals("Read first")) {
                    assertThat(tables).hasSize(3);
                    continue;
                }
                if (sheet.getSheetName().equals(Sheets.FIGURES)) {
                    assertThat(tables).isEmpty();
                    continue;
                }
                assertThat(tables).as(sheet.getSheetName()).hasSize(1);
                var table = tables.get(0);
                assertThat(table.getStartRowIndex()).isZero();
                assertThat(table.getStartColIndex()).isZero();
                assertThat(table.getEndRowIndex()).isEqualTo(sheet.getLastRowNum());
                assertThat(table.getEndColIndex()).isEqualTo(sheet.getRow(0).getLastCellNum() - 1);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every table has at least one row, a filter over all of it, and headings that are its column names")
    void headings(Built built) {
        read(
                built,
                book -> eachTable(book, (sheet, table) -> {
                    var ct = table.getCTTable();
                    assertThat(table.getRowCount()).as(table.getName()).isGreaterThan(1);
                    assertThat(ct.getAutoFilter().getRef()).isEqualTo(ct.getRef());
                    assertThat(table.getHeaderRowCount()).isEqualTo(1);
                    var names = new ArrayList<String>();
                    for (int c = table.getStartColIndex(); c <= table.getEndColIndex(); c++) {
                        var cell = sheet.getRow(table.getStartRowIndex()).getCell(c);
                        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
                        names.add(cell.getStringCellValue());
                    }
                    assertThat(ct.getTableColumns().getTableColumnList().stream()
                                    .map(c -> c.getName()))
                            .containsExactlyElementsOf(names);
                    assertThat(names).doesNotHaveDuplicates().noneMatch(String::isBlank);
                    assertThat(ct.getTableColumns().getTableColumnList().stream()
                                    .map(c -> c.getId()))
                            .doesNotHaveDuplicates();
                }));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("table names are legal, and no two tables or names are called alike")
    void names(Built built) {
        read(built, book -> {
            var used = new HashSet<String>();
            book.getAllNames().stream()
                    .map(n -> n.getSheetIndex() + n.getNameName())
                    .forEach(used::add);
            eachTable(book, (sheet, table) -> {
                assertThat(table.getName())
                        .matches("[A-Za-z_][A-Za-z0-9_.]{0,254}")
                        .doesNotMatch("(?i)[a-z]{1,3}[0-9]+|r|c|r[0-9]+c[0-9]+");
                assertThat(table.getCTTable().getDisplayName()).isEqualTo(table.getName());
                assertThat(used.add(table.getName().toLowerCase(Locale.ROOT)))
                        .as(table.getName())
                        .isTrue();
            });
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the headings stay in sight when a sheet is scrolled, with at most the columns that name a row")
    void frozen(Built built) {
        read(built, book -> {
            for (var sheet : ofOneTable(book)) {
                var pane = requireNonNull(sheet.getPaneInformation());
                assertThat(pane.isFreezePane()).isTrue();
                assertThat(pane.getHorizontalSplitPosition()).isEqualTo((short) 1);
                assertThat(pane.getVerticalSplitPosition()).isLessThan((short) 4);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "every sheet prints on A4 landscape, one page wide, with its headings on every page, and all of its rows")
    void print(Built built) {
        read(built, book -> {
            for (var sheet : BookRows.sheets(book)) {
                var setup = sheet.getPrintSetup();
                assertThat(setup.getLandscape()).as(sheet.getSheetName()).isTrue();
                assertThat(setup.getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
                assertThat(sheet.getFitToPage()).isTrue();
                assertThat(setup.getFitWidth()).isEqualTo((short) 1);
                assertThat(setup.getFitHeight()).isZero();
                assertThat(sheet.getHeader().getRight()).isEqualTo(sheet.getSheetName());
            }
            for (var sheet : ofOneTable(book)) {
                assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:1");
                var area = CellRangeAddress.valueOf(book.getPrintArea(book.getSheetIndex(sheet)));
                assertThat(area.getFirstRow()).isZero();
                assertThat(area.getFirstColumn()).isZero();
                assertThat(area.getLastRow()).isEqualTo(sheet.getLastRowNum());
                int last = sheet.getRow(0).getLastCellNum() - 1;
                assertThat(area.getLastColumn()).isBetween(Math.min(4, last), last);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the answer and the standing are among the columns of the first sheet that are printed")
    void whatIsPrinted(Built built) {
        read(built, book -> {
            var sheet = book.getSheet("Compare");
            var area = CellRangeAddress.valueOf(book.getPrintArea(book.getSheetIndex(sheet)));
            var printed = IntStream.rangeClosed(0, area.getLastColumn())
                    .mapToObj(c -> sheet.getRow(0).getCell(c).getStringCellValue());
            assertThat(printed)
                    .contains("Metric", "Unit", "Device", "Our mean", "As printed", "On our footing", "Difference")
                    .contains("Answer", "Standing");
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the list of sheets links to each of them, every link leads inside, and nothing leads out of the file")
    void links(Built built) {
        read(built, book -> {
            var targets = new ArrayList<String>();
            for (var sheet : BookRows.sheets(book)) {
                for (var link : sheet.getHyperlinkList()) {
                    assertThat(link.getType()).isEqualTo(HyperlinkType.DOCUMENT);
                    var target = new CellReference(link.getAddress());
                    assertThat(book.getSheet(target.getSheetName()))
                            .as(link.getAddress())
                            .isNotNull();
                    assertThat(sheet.getRow(link.getFirstRow())
                                    .getCell(link.getFirstColumn())
                                    .getStringCellValue())
                            .isEqualTo(target.getSheetName());
                    targets.add(target.getSheetName());
                }
            }
            assertThat(targets)
                    .containsExactlyElementsOf(Sheets.of(built.results()).subList(1, book.getNumberOfSheets()));
            for (var part : book.getPackage().getParts()) {
                assertThat(part.getPartName().getName()).doesNotContain("externalLink");
                if (!part.isRelationshipPart()) {
                    assertThat(part.getRelationships())
                            .as(part.getPartName().getName())
                            .noneMatch(r -> r.getTargetMode() == TargetMode.EXTERNAL);
                }
            }
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName(
            "the properties carry title, subject, author, language and the day of the report, and no macro is inside")
    void properties(Built built) {
        var run = built.results().get("run");
        read(built, book -> {
            var core = book.getProperties().getCoreProperties();
            assertThat(core.getTitle()).isEqualTo(run.get("title").asText());
            assertThat(core.getSubject()).isEqualTo(run.get("question").asText());
            assertThat(core.getCreator()).isEqualTo(run.get("prepared-by").asText());
            assertThat(core.getUnderlyingProperties().getLanguageProperty()).contains("en");
            assertThat(core.getCreated().toInstant().toString())
                    .startsWith(run.get("as-of").asText());
            assertThat(core.getModified()).isEqualTo(core.getCreated());
            assertThat(book.isMacroEnabled()).isFalse();
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the margin of every question stands in the workbook with its reason")
    void margins(Built built) {
        var texts = BookRows.tables(built.folder().resolve(Libraries.WORKBOOK)).stream()
                .flatMap(r -> r.cells().stream())
                .map(c -> c.shown().replace('\u00a0', ' '))
                .toList();
        var questions = Built.all(built.results().get("questions")).stream()
                .filter(q -> q.has("margin"))
                .toList();
        assertThat(questions).isNotEmpty();
        for (var key : List.of("margin-text", "reason")) {
            assertThat(questions.stream()
                            .map(q -> q.get(key).asText())
                            .filter(wanted -> texts.stream().noneMatch(t -> t.contains(wanted))))
                    .as(key)
                    .isEmpty();
        }
    }

    private interface Check {
        void of(XSSFWorkbook book) throws Exception;
    }

    private interface TableCheck {
        void of(XSSFSheet sheet, XSSFTable table);
    }

    /** The sheets that are one table each: all but the first, which tells of them, and the figures. */
    private static List<XSSFSheet> ofOneTable(XSSFWorkbook book) {
        return BookRows.sheets(book).stream()
                .skip(1)
                .filter(s -> !s.getSheetName().equals(Sheets.FIGURES))
                .toList();
    }

    private static void eachTable(XSSFWorkbook book, TableCheck check) {
        for (var sheet : BookRows.sheets(book)) {
            sheet.getTables().forEach(table -> check.of(sheet, table));
        }
    }

    private static void read(Built built, Check check) {
        BookRows.read(built.folder().resolve(Libraries.WORKBOOK), book -> {
            try {
                check.of(book);
                return book;
            } catch (IOException e) {
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
    }
}
