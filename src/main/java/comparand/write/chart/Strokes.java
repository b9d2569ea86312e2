package comparand.write.chart;

import comparand.document.chart.Mark;
import comparand.document.chart.Trace;
import javax.xml.namespace.QName;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.STMarkerStyle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTSolidColorFillProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetLineDashVal;

/** Lines and marks of a native chart. */
final class Strokes {

    private static final int EMU_PER_POINT = 12_700;
    /** How far a hollow mark is thinned out; a program that draws no outlines would not show a white one. */
    private static final double PALE = 0.3;

    private final NativeLook look;

    Strokes(NativeLook look) {
        this.look = look;
    }

    void line(CTShapeProperties properties, Trace trace, int rgb, double width) {
        var line = properties.addNewLn();
        line.setW((int) Math.round(width * EMU_PER_POINT));
        if (trace == Trace.NONE) {
            line.addNewNoFill();
            return;
        }
        colour(line.addNewSolidFill(), rgb);
        line.addNewPrstDash()
                .setVal(
                        switch (trace) {
                            case NONE, SOLID -> STPresetLineDashVal.SOLID;
                            case DASHED -> STPresetLineDashVal.DASH;
                            case DOTTED -> STPresetLineDashVal.SYS_DOT;
                            case DASH_DOT -> STPresetLineDashVal.DASH_DOT;
                        });
    }

    void mark(CTMarker marker, Mark mark, int rgb) {
        marker.addNewSymbol().setVal(symbol(mark));
        if (mark == Mark.NONE) {
            return;
        }
        size(marker, mark == Mark.SMALL_DOT ? Math.max(2, look.mark() / 2) : look.mark());
        var properties = marker.addNewSpPr();
        colour(properties.addNewSolidFill(), hollow(mark) ? pale(rgb) : rgb);
        line(properties, Trace.SOLID, rgb, look.line());
    }

    /** The type of this attribute is not among those the library brings, so it is written as plain text. */
    private static void size(CTMarker marker, int points) {
        try (var cursor = marker.addNewSize().newCursor()) {
            cursor.setAttributeText(new QName("val"), String.valueOf(points));
        }
    }

    private static STMarkerStyle.Enum symbol(Mark mark) {
        return switch (mark) {
            case FILLED_CIRCLE, HOLLOW_CIRCLE, SMALL_DOT -> STMarkerStyle.CIRCLE;
            case FILLED_SQUARE, FILLED_SQUARE_WITH_TAIL -> STMarkerStyle.SQUARE;
            case HOLLOW_DIAMOND, HOLLOW_DIAMOND_ASKED -> STMarkerStyle.DIAMOND;
            case FILLED_TRIANGLE, HOLLOW_TRIANGLE -> STMarkerStyle.TRIANGLE;
            case NONE -> STMarkerStyle.NONE;
        };
    }

    private static int pale(int rgb) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            mixed |= (int) Math.round(255 - (255 - ((rgb >> shift) & 0xFF)) * PALE) << shift;
        }
        return mixed;
    }

    private static boolean hollow(Mark mark) {
        return switch (mark) {
            case HOLLOW_CIRCLE, HOLLOW_DIAMOND, HOLLOW_DIAMOND_ASKED, HOLLOW_TRIANGLE -> true;
            default -> false;
        };
    }

    static void colour(CTSolidColorFillProperties fill, int rgb) {
        fill.addNewSrgbClr().setVal(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
    }
}
