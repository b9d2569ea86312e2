package comparand.write.pdf;

import com.lowagie.text.pdf.BaseFont;
import comparand.write.LineBreaks;
import java.awt.Color;
import java.util.List;

/**
 * How text is set.
 *
 * @param size in points
 * @param leading from base line to base line, in points
 */
record TextStyle(BaseFont face, float size, float leading, Color ink) {

    static final Color INK = new Color(0x1B, 0x1B, 0x2F);
    static final Color GREY = new Color(0x4A, 0x55, 0x68);
    static final Color BAND = new Color(0xE6, 0xE6, 0xEC);
    static final Color RULE = new Color(0xC4, 0xC4, 0xCE);
    static final Color ACCENT = new Color(0x0B, 0x6E, 0x6E);

    float width(String text) {
        return face.getWidthPoint(text, size);
    }

    /** A text broken into lines of a width in points. */
    List<String> lines(String text, float width) {
        return LineBreaks.of(text, width, this::width);
    }
}
