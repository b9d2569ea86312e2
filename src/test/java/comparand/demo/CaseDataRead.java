package comparand.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Reads the case files with plain code of its own: neither the generator's nor the tool's. Each row is a map from heading to
 * text; numbers of the workbook come as Java prints them.
 */
final class CaseDataRead {

    private static final Set<String> MISSING = Set.of("n.d.", "-", "");

    private final Path folder;

    CaseDataRead(Path folder) {
        this.folder = folder;
    }

    List<Map<String, String>> csv(String file) {
        boolean german = file.startsWith("lake");
        var lines = text(file, german ? Charset.forName("windows-1252") : StandardCharsets.UTF_8)
                .lines()
                .map(l -> l.split(german ? ";" : ",", -1))
                .toList();
        return lines.stream()
                .skip(1)
                .map(l -> row(List.of(lines.get(0)), List.of(l)))
                .toList();
    }

    /** The rows below two title lines and the headings. */
    List<Map<String, String>> sheet(String name) {
        try (var in = Files.newInputStream(folder.resolve("st-aldwyn.xlsx"));
                var workbook = new XSSFWorkbook(in)) {
            var lines = new ArrayList<List<String>>();
            int width = workbook.getSheet(name).getRow(2).getLastCellNum();
            workbook.getSheet(name).forEach(r -> lines.add(cells(r, width)));
            return lines.stream().skip(3).map(l -> row(lines.get(2), l)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(Row row, int width) {
        var cells = new ArrayList<String>();
        for (int i = 0; i < width; i++) {
            var cell = row.getCell(i, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            var type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
            cells.add(
                    switch (type) {
                        case NUMERIC -> Double.toString(cell.getNumericCellValue());
                        case ERROR ->
                            FormulaError.forInt(cell.getErrorCellValue()).getString();
                        default -> cell.getStringCellValue();
                    });
        }
        return cells;
    }

    private static Map<String, String> row(List<String> headings, List<String> cells) {
        if (headings.size() != cells.size()) {
            throw new IllegalArgumentException(headings.size() + " headings, but " + cells);
        }
        var row = new LinkedHashMap<String, String>();
        for (int i = 0; i < cells.size(); i++) {
            row.put(headings.get(i), cells.get(i));
        }
        return row;
    }

    private String text(String file, Charset charset) {
        try {
            var bytes = ByteBuffer.wrap(Files.readAllBytes(folder.resolve(file)));
            return charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(bytes)
                    .toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A number with a decimal point or comma, times the unit that its column is written in; NaN where it is missing. */
    static double number(Map<String, String> row, String column, double unit) {
        var text = Objects.requireNonNull(row.get(column), column);
        return MISSING.contains(text) ? Double.NaN : Double.parseDouble(text.replace(',', '.')) * unit;
    }

    static String word(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }
}
