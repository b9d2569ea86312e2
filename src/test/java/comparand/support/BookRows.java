package comparand.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The tables of a workbook read back, row by row under their headings, and what stands beside them. */
public final class BookRows {

    private static final DataFormatter SHOWN = shown();

    private BookRows() {}

    /** A formula is shown by the result that the file holds of it. */
    private static DataFormatter shown() {
        var shown = new DataFormatter(Locale.ROOT);
        shown.setUseCachedValuesForFormulaCells(true);
        return shown;
    }

    /** What a cell holds, or what the file says its formula gives. */
    public static CellType type(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    /**
     * A cell under its heading.
     *
     * @param heading with plain spaces
     * @param shown as a spreadsheet program shows it, with plain spaces; a date as year, month and day
     * @param number what the cell holds, if that is a number and no date
     */
    public record BookCell(String heading, String shown, OptionalDouble number) {}

    /** A row of a table. */
    public record BookRow(String sheet, String table, int line, List<BookCell> cells) {

        public Optional<BookCell> cell(String heading) {
            return cells.stream().filter(c -> c.heading().equals(heading)).findFirst();
        }

        public String text(String heading) {
            return cell(heading).map(BookCell::shown).orElse("");
        }
    }

    /** Every row of every table. */
    public static List<BookRow> tables(Path workbook) {
        return read(workbook, book -> {
            var rows = new ArrayList<BookRow>();
            for (var sheet : sheets(book)) {
                sheet.getTables().stream()
                        .sorted((a, b) -> Integer.compare(a.getStartRowIndex(), b.getStartRowIndex()))
                        .forEach(table -> {
                            var heading = sheet.getRow(table.getStartRowIndex());
                            for (int r = table.getStartRowIndex() + 1; r <= table.getEndRowIndex(); r++) {
                                var cells = new ArrayList<BookCell>();
                                for (int c = table.getStartColIndex(); c <= table.getEndColIndex(); c++) {
                                    cells.add(cell(
                                            heading.getCell(c), sheet.getRow(r).getCell(c)));
                                }
                                rows.add(new BookRow(sheet.getSheetName(), table.getName(), r + 1, cells));
                            }
                        });
            }
            return rows;
        });
    }

    /** Texts outside of tables, headings of tables, the running heads and feet, and the texts of figures. */
    public static List<String> beside(Path workbook) {
        return Stream.concat(frame(workbook).stream(), figures(workbook).stream())
                .toList();
    }

    /** The same without the texts of figures. */
    public static List<String> frame(Path workbook) {
        return read(workbook, book -> {
            var texts = new ArrayList<String>();
            for (var sheet : sheets(book)) {
                texts.add(sheet.getSheetName());
                texts.add(sheet.getHeader().getLeft());
                texts.add(sheet.getHeader().getCenter());
                texts.add(sheet.getFooter().getLeft());
                if (!hasCharts(sheet)) {
                    texts.addAll(outsideOfTables(sheet));
                }
            }
            return texts;
        });
    }

    private static List<String> outsideOfTables(XSSFSheet sheet) {
        var texts = new ArrayList<String>();
        for (var row : sheet) {
            for (var cell : row) {
                boolean inRows = sheet.getTables().stream()
                        .anyMatch(t ->
                                cell.getRowIndex() > t.getStartRowIndex() && cell.getRowIndex() <= t.getEndRowIndex());
                if (!inRows) {
                    texts.add(SHOWN.formatCellValue(cell));
                }
            }
        }
        return texts;
    }

    /** Titles, captions, labels and notes on sheets that have charts; their numbers are those of the charts. */
    public static List<String> figures(Path workbook) {
        return read(workbook, book -> {
            var texts = new ArrayList<String>();
            for (var sheet : sheets(book)) {
                if (hasCharts(sheet)) {
                    for (var row : sheet) {
                        for (var cell : row) {
                            if (cell.getCellType() == CellType.STRING) {
                                texts.add(cell.getStringCellValue());
                            }
                        }
                    }
                }
            }
            return texts;
        });
    }

    private static boolean hasCharts(XSSFSheet sheet) {
        return sheet.getDrawingPatriarch() != null
                && !sheet.getDrawingPatriarch().getCharts().isEmpty();
    }

    /** Opens a workbook for a test. */
    public static <R> R read(Path workbook, Use<R> use) {
        try (var book = new XSSFWorkbook(OPCPackage.open(workbook.toFile(), PackageAccess.READ))) {
            return use.of(book);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What is done with an open workbook. */
    public interface Use<R> {
        R of(XSSFWorkbook book) throws IOException;
    }

    public static List<XSSFSheet> sheets(XSSFWorkbook book) {
        var sheets = new ArrayList<XSSFSheet>();
        book.sheetIterator().forEachRemaining(s -> sheets.add((XSSFSheet) s));
        return sheets;
    }

    private static BookCell cell(Cell heading, Cell cell) {
        boolean date = type(cell) == CellType.NUMERIC && DateUtil.isCellDateFormatted(cell);
        return new BookCell(
                NumberTokens.plain(heading.getStringCellValue()),
                date
                        ? cell.getLocalDateTimeCellValue().toLocalDate().toString()
                        : NumberTokens.plain(SHOWN.formatCellValue(cell)),
                type(cell) == CellType.NUMERIC && !date
                        ? OptionalDouble.of(cell.getNumericCellValue())
                        : OptionalDouble.empty());
    }
}
