package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.support.BookRows;
import comparand.support.BookRows.BookCell;
import comparand.support.BookRows.BookRow;
import comparand.support.Built;
import comparand.support.TextWidth;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in the cells of the workbook: numbers as numbers, nothing blank, nothing cut off. */
class WorkbookCellsTest {

    /** A count among a number is two numbers, and no cell can hold both. */
    private static final String COUNT = "[\\[{]?\\d+/\\d+[]}?]*";

    /** The least height in points that a line of nine-point type needs, in the narrowest of spreadsheet programs. */
    private static final double LINE = 10.35;

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no number stands as text in a column of numbers")
    void numbersAreNumbers(Built built) {
        var columns = rows(built).stream()
                .flatMap(r -> r.cells().stream().map(c -> new Entry(r.table() + ", " + c.heading(), c)))
                .collect(Collectors.groupingBy(Entry::column));
        var numeric = columns.entrySet().stream()
                .filter(e ->
                        e.getValue().stream().anyMatch(c -> c.cell().number().isPresent()))
                .toList();

        assertThat(numeric).hasSizeGreaterThan(15);
        assertThat(numeric.stream()
                        .flatMap(e -> e.getValue().stream())
                        .filter(e -> e.cell().number().isEmpty())
                        .filter(e -> e.cell().shown().matches(".*\\d.*")
                                && !e.cell().shown().matches(COUNT))
                        .map(e -> e.column() + ": " + e.cell().shown()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a local mean and its standard deviation show the digits that results.json shows")
    void digitsOfMeans(Built built) {
        var rows = rows(built).stream()
                .filter(r -> r.table().equals("LocalResults") && number(r, "Our SD"))
                .toList();

        assertThat(rows).isNotEmpty();
        assertThat(rows)
                .allSatisfy(r -> assertThat(r.text("Our mean") + " (" + r.text("Our SD") + ")")
                        .isEqualTo(built.comparand(r.text("Id"))
                                .get("summary")
                                .get("shown")
                                .asText()));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a difference and its limits show the digits that results.json shows, with sign and brackets")
    void digitsOfDifferences(Built built) {
        var rows = rows(built).stream()
                .filter(r -> r.table().equals("Compare") && number(r, "Difference"))
                .toList();

        assertThat(rows).isNotEmpty();
        assertThat(rows).allSatisfy(r -> {
            var limits = number(r, "Diff. 95 % low")
                    ? " (" + r.text("Diff. 95 % low") + " to " + r.text("Diff. 95 % high") + ")"
                    : "";
            assertThat(r.text("Difference") + limits)
                    .isEqualTo(built.pair(r.text("Id"), r.text("Other id"))
                            .get("answer")
                            .get("difference")
                            .get("shown")
                            .asText());
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("an adjusted P is printed as in sentences: two digits, three decimals at most, and <0.001 below that")
    void adjustedP(Built built) {
        var shown = rows(built).stream()
                .flatMap(r -> r.cell("Adjusted P").stream())
                .filter(c -> c.number().isPresent())
                .toList();

        assertThat(shown).isNotEmpty();
        assertThat(shown.stream()
                        .filter(c -> c.number().getAsDouble() < 0.001)
                        .map(BookCell::shown)
                        .filter(t -> !t.equals("<0.001")))
                .isEmpty();
        assertThat(shown.stream().filter(c -> c.number().getAsDouble() >= 0.1).map(BookCell::shown))
                .allMatch(t -> t.matches("[01]\\.\\d{2}"));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no cell of a table is blank or shows an error")
    void noBlanks(Built built) {
        eachCell(built, (sheet, cell) -> {
            var where = sheet.getSheetName() + "!" + cell.getAddress();
            assertThat(BookRows.type(cell)).as(where).isIn(CellType.STRING, CellType.NUMERIC);
            assertThat(shown(cell)).as(where).isNotBlank().doesNotContain("#REF", "#VALUE", "#NAME", "#N/A", "#DIV");
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("what would make a value comparable is not the reason why it is not")
    void whatWouldHelp(Built built) {
        var rows = rows(built).stream()
                .filter(r -> r.table().equals("NotComparable"))
                .toList();

        assertThat(rows).isNotEmpty();
        assertThat(rows.stream()
                        .filter(r -> r.text("Why").equals(r.text("What would make it comparable")))
                        .map(r -> r.text("Locator") + ": " + r.text("Why")))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("headings are shaded and the cells under them are not: the heading is seen without colour")
    void headings(Built built) {
        eachCell(built, (sheet, cell) -> {
            boolean heading = sheet.getTables().stream().anyMatch(t -> t.getStartRowIndex() == cell.getRowIndex());
            boolean shaded = cell.getCellStyle().getFillPattern() == FillPatternType.SOLID_FOREGROUND;
            assertThat(shaded).as(cell.getAddress().formatAsString()).isEqualTo(heading);
            assertThat(cell.getCellStyle().getFont().getBold() || !heading).isTrue();
        });
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no number and no date is wider than its column, so that none turns into ####")
    void numbersFit(Built built) {
        var wide = new ArrayList<String>();
        eachCell(built, (sheet, cell) -> {
            if (BookRows.type(cell) == CellType.NUMERIC && TextWidth.of(shown(cell), false) > room(sheet, cell)) {
                wide.add(sheet.getSheetName() + "!" + cell.getAddress() + ": " + shown(cell));
            }
        });
        assertThat(wide).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every row is tall enough for its texts, wrapped at the width of their columns")
    void textsFit(Built built) {
        var cut = new ArrayList<String>();
        eachCell(built, (sheet, cell) -> {
            boolean bold = cell.getCellStyle().getFont().getBold();
            int lines = TextWidth.lines(shown(cell), bold, room(sheet, cell));
            double height = cell.getRow().getHeightInPoints();
            if (lines * LINE > height + 1) {
                cut.add("%s!%s: %d lines in %.0f points: %s"
                        .formatted(sheet.getSheetName(), cell.getAddress(), lines, height, shown(cell)));
            }
        });
        assertThat(cut).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("no word of a heading is broken: a column is as wide as the longest word above it")
    void headingsAreWhole(Built built) {
        var broken = new ArrayList<String>();
        eachCell(built, (sheet, cell) -> {
            if (sheet.getTables().stream().anyMatch(t -> t.getStartRowIndex() == cell.getRowIndex())) {
                for (var word : shown(cell).split(" ", -1)) {
                    if (TextWidth.of(word, true) > room(sheet, cell)) {
                        broken.add(sheet.getSheetName() + ": " + word);
                    }
                }
            }
        });
        assertThat(broken).isEmpty();
    }

    private record Entry(String column, BookCell cell) {}

    private interface CellCheck {
        void of(XSSFSheet sheet, XSSFCell cell);
    }

    /** Every cell of every table, its headings included. */
    private static void eachCell(Built built, CellCheck check) {
        BookRows.read(workbook(built), book -> {
            for (var sheet : BookRows.sheets(book)) {
                for (var table : sheet.getTables()) {
                    for (int r = table.getStartRowIndex(); r <= table.getEndRowIndex(); r++) {
                        for (int c = table.getStartColIndex(); c <= table.getEndColIndex(); c++) {
                            var cell = sheet.getRow(r).getCell(c);
                            assertThat(cell)
                                    .as("%s, row %d, column %d", sheet.getSheetName(), r + 1, c + 1)
                                    .isNotNull();
                            check.of(sheet, cell);
                        }
                    }
                }
            }
            return book;
        });
    }

    /** Points between the edges of a cell, less what programs keep free at both sides, and its indent. */
    private static double room(XSSFSheet sheet, Cell cell) {
        double digits = sheet.getColumnWidth(cell.getColumnIndex()) / 256.0;
        return digits * TextWidth.of("0", false) - 3.75 - cell.getCellStyle().getIndention() * 6.75;
    }

    private static String shown(Cell cell) {
        var formatter = new DataFormatter(java.util.Locale.ROOT);
        formatter.setUseCachedValuesForFormulaCells(true);
        return formatter.formatCellValue(cell);
    }

    private static boolean number(BookRow row, String heading) {
        return row.cell(heading).filter(c -> c.number().isPresent()).isPresent();
    }

    private static List<BookRow> rows(Built built) {
        return BookRows.tables(workbook(built));
    }

    private static Path workbook(Built built) {
        return built.folder().resolve(Libraries.WORKBOOK);
    }
}
