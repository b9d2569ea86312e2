package comparand.write.chart;

import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Panel;
import comparand.document.chart.Series.Point;
import java.util.List;
import java.util.Locale;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;

/**
 * Texts beside points. The element of a single label is not among the types the library brings, so it is written as plain
 * elements.
 */
final class PointLabels {

    private static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static final String MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";

    /** Beyond this share of the axis a label stands to the left of its point. */
    private static final double LATE = 0.6;

    private final Panel panel;
    private final NativeLook look;

    PointLabels(Panel panel, NativeLook look) {
        this.panel = panel;
        this.look = look;
    }

    void add(CTScatterSer ser, List<Point> points, int rgb) {
        if (points.stream().anyMatch(p -> !p.label().isEmpty())) {
            write(ser, points, rgb, false);
        }
    }

    /** Names of rows, to the left. */
    void names(CTScatterSer ser, List<Point> points) {
        write(ser, points, Ink.INK.rgb(), true);
    }

    private void write(CTScatterSer ser, List<Point> points, int rgb, boolean left) {
        try (XmlCursor cursor = ser.addNewDLbls().newCursor()) {
            cursor.toEndToken();
            for (int i = 0; i < points.size(); i++) {
                if (!points.get(i).label().isEmpty()) {
                    label(cursor, i, points.get(i).label(), left ? "l" : position(points.get(i)), rgb);
                }
            }
            shows(cursor, false);
        }
    }

    /** Top, left or right. */
    private String position(Point point) {
        double along = (point.across() - panel.across().from())
                / (panel.across().to() - panel.across().from());
        if (panel.up() instanceof Axis.Rows && point.acrossInterval().isPresent()) {
            return "t";
        }
        return along > LATE ? "l" : "r";
    }

    private void label(XmlCursor cursor, int index, String text, String position, int rgb) {
        cursor.beginElement("dLbl", CHART);
        value(cursor, "idx", String.valueOf(index));
        cursor.beginElement("tx", CHART);
        cursor.beginElement("rich", CHART);
        cursor.insertElement("bodyPr", MAIN);
        for (var line : text.split("\n", -1)) {
            paragraph(cursor, line, rgb);
        }
        cursor.toNextToken();
        cursor.toNextToken();
        value(cursor, "dLblPos", position);
        shows(cursor, true);
        cursor.toNextToken();
    }

    private void paragraph(XmlCursor cursor, String line, int rgb) {
        cursor.beginElement("p", MAIN);
        cursor.beginElement("r", MAIN);
        cursor.beginElement("rPr", MAIN);
        cursor.insertAttributeWithValue("sz", String.valueOf(Math.round(look.size() * 100)));
        cursor.beginElement("solidFill", MAIN);
        cursor.beginElement("srgbClr", MAIN);
        cursor.insertAttributeWithValue("val", String.format(Locale.ROOT, "%06X", rgb));
        cursor.toNextToken();
        cursor.toNextToken();
        cursor.beginElement("latin", MAIN);
        cursor.insertAttributeWithValue("typeface", look.face());
        cursor.toNextToken();
        cursor.toNextToken();
        cursor.insertElementWithText("t", MAIN, line);
        cursor.toNextToken();
        cursor.toNextToken();
    }

    /** What a program may show beside a point by itself: nothing, or the text that takes the value's place. */
    private static void shows(XmlCursor cursor, boolean text) {
        value(cursor, "showLegendKey", "0");
        value(cursor, "showVal", text ? "1" : "0");
        for (var part : List.of("showCatName", "showSerName", "showPercent", "showBubbleSize")) {
            value(cursor, part, "0");
        }
    }

    private static void value(XmlCursor cursor, String element, String value) {
        cursor.beginElement(element, CHART);
        cursor.insertAttributeWithValue("val", value);
        cursor.toNextToken();
    }
}
