package comparand.demo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook as a hospital keeps one: numbers are number cells with a format, formulas carry the value they last had, the
 * rest is text. The same cells give the same bytes.
 */
final class CaseDataWorkbook {

    /** No clock: every workbook was made at this moment. */
    private static final Instant MADE = Instant.parse("2026-10-31T12:00:00Z");

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Map<String, CellStyle> styles = new HashMap<>();

    void hidden(String name, List<String> titles, List<String> headings, List<List<String>> rows) {
        sheet(name, titles, headings, rows);
        workbook.setSheetHidden(workbook.getSheetIndex(name), true);
    }

    /** A sheet; a cell {@code =J#-K#} is a formula over the cells of its own row. */
    void sheet(String name, List<String> titles, List<String> headings, List<List<String>> rows) {
        var sheet = workbook.createSheet(name);
        titles.forEach(t -> row(sheet, List.of(t), headings));
        row(sheet, headings, headings);
        rows.forEach(r -> row(sheet, r, headings));
        sheet.createFreezePane(1, titles.size() + 1);
    }

    private void row(XSSFSheet sheet, List<String> cells, List<String> headings) {
        var row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                fill(row.createCell(i), cells.get(i), headings.get(i));
            }
        }
    }

    private void fill(Cell cell, String text, String heading) {
        if (text.startsWith("=")) {
            cell.setCellFormula(text.substring(1).replace("#", Integer.toString(cell.getRowIndex() + 1)));
            cell.setCellStyle(style(heading.equals("Gas/blood") ? "0.00" : "0.0"));
        } else {
            enter(cell, text);
            number(text).ifPresent(n -> cell.setCellStyle(style(format(text, heading))));
        }
    }

    /** A text as somebody types it into a cell: what looks like a number becomes one. */
    static void enter(Cell cell, String text) {
        number(text).ifPresentOrElse(cell::setCellValue, () -> cell.setCellValue(text));
    }

    private static Optional<Double> number(String text) {
        return NUMBER.matcher(text).matches() ? Optional.of(Double.valueOf(text)) : Optional.empty();
    }

    /** Saturations and oxygen fractions lie in the cells as shares and are shown as per cent. */
    private static String format(String text, String heading) {
        if (heading.equals("FiO2")) {
            return "0%";
        }
        if (heading.equals("SaO2") || heading.equals("SvO2")) {
            return "0.0%";
        }
        int point = text.indexOf('.');
        return point < 0 ? "0" : "0." + "0".repeat(text.length() - point - 1);
    }

    private CellStyle style(String format) {
        return styles.computeIfAbsent(format, f -> {
            var style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat(f));
            return style;
        });
    }

    byte[] bytes() {
        return bytes(workbook);
    }

    /** The bytes of a workbook whose formulas are computed first. */
    static byte[] bytes(XSSFWorkbook workbook) {
        XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
        var properties = workbook.getProperties().getCoreProperties();
        properties.setCreator("invented");
        properties.setTitle("Invented data");
        properties.setCreated(Optional.of(Date.from(MADE)));
        properties.setModified(Optional.of(Date.from(MADE)));
        try (var out = new ByteArrayOutputStream()) {
            workbook.write(out);
            return stored(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same parts without a clock and uncompressed, as compressed bytes differ from machine to machine. */
    private static byte[] stored(byte[] zip) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var from = new ZipInputStream(new ByteArrayInputStream(zip));
                var to = new ZipOutputStream(out)) {
            for (var part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
                var content = from.readAllBytes();
                var sum = new CRC32();
                sum.update(content);
                var entry = new ZipEntry(part.getName());
                entry.setTimeLocal(LocalDateTime.of(2026, 10, 31, 12, 0));
                entry.setMethod(ZipEntry.STORED);
                entry.setSize(content.length);
                entry.setCrc(sum.getValue());
                to.putNextEntry(entry);
                to.write(content);
                to.closeEntry();
            }
        }
        return out.toByteArray();
    }
}
