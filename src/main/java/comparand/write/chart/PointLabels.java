package comparand.write.chart;

import comparand.document.chart.Axis;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.write.chart.Drawn.Dot;
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
    private static final double LATE = 0.7;

    private final Panel panel;
    private final NativeLook look;

    PointLabels(Panel panel, NativeLook look) {
        this.panel = panel;
        this.look = look;
    }

    void add(CTScatterSer ser, Drawn drawn) {
        if (drawn.dots().stream().allMatch(d -> d.label().isEmpty())) {
            return;
        }
        try (XmlCursor cursor = ser.addNewDLbls().newCursor()) {
            cursor.toEndToken();
            for (int i = 0; i < drawn.dots().size(); i++) {
                var dot = drawn.dots().get(i);
                if (!dot.label().isEmpty()) {
                    label(
                            cursor,
                            i,
                            dot.label(),
                            position(drawn, dot),
                            drawn.ink().rgb());
                }
            }
            shows(cursor, false);
        }
    }

    /** Top, left or right. */
    private String position(Drawn drawn, Dot dot) {
        if (drawn.names()) {
            return "l";
        }
        if (drawn.mark() == Mark.NONE || (drawn.mark() == Mark.FILLED_CIRCLE && panel.up() instanceof Axis.Rows)) {
            return "t";
        }
        double along = (dot.across().orElse(0.0) - panel.across().from())
                / (panel.across().to() - panel.across().from());
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
