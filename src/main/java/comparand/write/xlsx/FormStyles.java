package comparand.write.xlsx;

import comparand.document.Block.Align;
import comparand.document.Cell;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of a form, each made once. */
final class FormStyles {

    /** Pale enough for dark text in every light, and a shade of its own in grey. */
    private static final byte[] WANTED = {(byte) 0xFF, (byte) 0xFF, (byte) 0xEC, (byte) 0xB3};

    private final Styles styles;
    private final XSSFCellStyle entry;
    private final XSSFCellStyle group;
    private final XSSFCellStyle wrapped;

    FormStyles(XSSFWorkbook workbook) {
        styles = new Styles(workbook);
        entry = workbook.createCellStyle();
        entry.cloneStyleFrom(text());
        // as text, so that no entry is turned into a date or another number
        entry.setDataFormat(workbook.createDataFormat().getFormat("@"));
        entry.setLocked(false);
        entry.setWrapText(true);
        entry.setBorderBottom(BorderStyle.HAIR);
        entry.setBorderRight(BorderStyle.HAIR);
        group = workbook.createCellStyle();
        group.cloneStyleFrom(styles.words(Align.LEFT, Cell.Words.Weight.STRONG));
        group.setWrapText(false);
        group.setAlignment(HorizontalAlignment.LEFT);
        wrapped = workbook.createCellStyle();
        wrapped.cloneStyleFrom(text());
        wrapped.setWrapText(true);
    }

    XSSFCellStyle title() {
        return styles.title();
    }

    XSSFCellStyle heading() {
        return styles.heading(Align.LEFT);
    }

    /** One line that may run over its neighbours. */
    XSSFCellStyle line() {
        return styles.line(Cell.Words.Weight.PLAIN);
    }

    XSSFCellStyle text() {
        return styles.words(Align.LEFT, Cell.Words.Weight.PLAIN);
    }

    /** A cell to be filled. */
    XSSFCellStyle entry() {
        return entry;
    }

    /** What the columns below are about; it may run over its neighbours. */
    XSSFCellStyle group() {
        return group;
    }

    XSSFCellStyle wrapped() {
        return wrapped;
    }

    /** The ground of a cell that still has to be filled. */
    XSSFColor wanted() {
        return new XSSFColor(WANTED);
    }
}
