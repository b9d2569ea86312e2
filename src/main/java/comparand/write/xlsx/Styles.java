package comparand.write.xlsx;

import comparand.document.Block.Align;
import comparand.document.Cell;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of a workbook, each made once. */
final class Styles {

    private static final String FACE = "Arial";
    private static final short BODY = 9;
    private static final short TITLE = 16;
    private static final byte[] INK = {0x1B, 0x1B, 0x2F};
    private static final byte[] LINK = {0x0B, 0x6E, 0x6E};
    private static final byte[] BAND = {(byte) 0xE6, (byte) 0xE6, (byte) 0xEC};
    private static final byte[] RULE = {(byte) 0xC4, (byte) 0xC4, (byte) 0xCE};

    private final XSSFWorkbook workbook;
    private final XSSFFont plain;
    private final XSSFFont strong;
    private final XSSFFont link;
    private final XSSFFont title;
    private final Map<String, XSSFCellStyle> made = new HashMap<>();
    private final Map<Print, XSSFCellStyle> figures = new HashMap<>();

    Styles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        // column widths count in digits of this font
        workbook.getFontAt(0).setFontName(FACE);
        workbook.getFontAt(0).setFontHeightInPoints(BODY);
        this.plain = font(BODY, false, INK);
        this.strong = font(BODY, true, INK);
        this.link = font(BODY, false, LINK);
        this.link.setUnderline((byte) 1);
        this.title = font(TITLE, true, INK);
    }

    /** The schema wants four bytes: opacity before red, green and blue. */
    private static XSSFColor opaque(byte[] rgb) {
        return new XSSFColor(new byte[] {(byte) 0xFF, rgb[0], rgb[1], rgb[2]});
    }

    private XSSFFont font(short points, boolean bold, byte[] colour) {
        var font = workbook.createFont();
        font.setFontName(FACE);
        font.setFontHeightInPoints(points);
        font.setBold(bold);
        font.setColor(opaque(colour));
        return font;
    }

    XSSFCellStyle title() {
        return made.computeIfAbsent("title", k -> {
            var style = workbook.createCellStyle();
            style.setFont(title);
            return style;
        });
    }

    XSSFCellStyle heading(Align align) {
        return made.computeIfAbsent("heading " + align, k -> {
            var style = body(align, strong);
            style.setFillForegroundColor(opaque(BAND));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            style.setBorderBottom(BorderStyle.MEDIUM);
            return style;
        });
    }

    XSSFCellStyle words(Align align, Cell.Words.Weight weight) {
        return made.computeIfAbsent(
                "words " + align + weight, k -> body(align, weight == Cell.Words.Weight.STRONG ? strong : plain));
    }

    /** For what a formula gives: a number with so many decimals, or words. */
    XSSFCellStyle worked(Align align, int decimals) {
        return made.computeIfAbsent("worked " + align + decimals, k -> {
            var digits = decimals > 0 ? "0." + "0".repeat(decimals) : "0";
            return formatted(digits + ";\"\u2212\"" + digits, align);
        });
    }

    /** One line that may run over the empty cells to its right. */
    XSSFCellStyle line(Cell.Words.Weight weight) {
        return made.computeIfAbsent("line " + weight, k -> {
            var style = workbook.createCellStyle();
            style.setFont(weight == Cell.Words.Weight.STRONG ? strong : plain);
            return style;
        });
    }

    XSSFCellStyle link() {
        return made.computeIfAbsent("link", k -> body(Align.LEFT, link));
    }

    XSSFCellStyle day() {
        return made.computeIfAbsent("day", k -> formatted("yyyy-mm-dd", Align.LEFT));
    }

    XSSFCellStyle figure(Cell.Figure figure) {
        if (isSaid(figure)) {
            var format = format(figure);
            return made.computeIfAbsent("figure " + format, k -> formatted(format, Align.RIGHT));
        }
        return figures.computeIfAbsent(
                new Print(Math.max(0, figure.printed().scale()), figure.before(), figure.after()),
                k -> formatted(format(figure), Align.RIGHT));
    }

    /** All that the format of a rounded number is made of: numbers of one print have one style. */
    private record Print(int decimals, String before, String after) {}

    private XSSFCellStyle formatted(String format, Align align) {
        var style = body(align, plain);
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        return style;
    }

    /** The cell keeps the unrounded number; the format prints it with its brackets, sign and decimals. */
    static String format(Cell.Figure figure) {
        int decimals = figure.printed().scale();
        var digits = decimals > 0 ? "0." + "0".repeat(decimals) : "0";
        var before = quoted(figure.before());
        var after = quoted(figure.after());
        if (isSaid(figure)) {
            return String.join(";", Collections.nCopies(3, quoted(figure.shown())));
        }
        return before + digits + after + ";" + quoted(figure.before().replace("+", "") + "\u2212") + digits + after;
    }

    /**
     * Whether the print is words rather than the number: programs would give a sign to what rounds to zero, and digits to what
     * is only said to be below a limit.
     */
    private static boolean isSaid(Cell.Figure figure) {
        boolean vanishes = figure.printed().signum() == 0 && figure.value() != 0;
        return vanishes || !isRounded(figure);
    }

    /** Whether the print is the number rounded; else it says something about the number, such as that it is below a limit. */
    private static boolean isRounded(Cell.Figure figure) {
        double unit = Math.pow(10, -figure.printed().scale());
        return Math.abs(figure.printed().doubleValue() - figure.value()) <= 0.5 * unit * (1 + 1e-9);
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "" : "\"" + text.replace("\"", "") + "\"";
    }

    private XSSFCellStyle body(Align align, XSSFFont font) {
        var style = workbook.createCellStyle();
        style.setFont(font);
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setAlignment(align == Align.RIGHT ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        // keeps text off the number that ends in the column before
        style.setIndention((short) (align == Align.RIGHT ? 0 : 1));
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(opaque(RULE));
        return style;
    }
}
