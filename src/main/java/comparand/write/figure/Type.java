package comparand.write.figure;

import comparand.document.chart.Ink;
import comparand.document.chart.Trace;
import java.util.List;

/** Sizes, line widths and tints of figures, in one place; in points. */
final class Type {

    static final int WHITE = 0xFFFFFF;
    /** Frames and lines that separate. */
    static final int HAIR = 0xB4B4C0;
    /** Lines of a hatching. */
    static final int HATCH = 0xA2A2B2;

    static final double TEXT = 7.5;
    static final double SMALL = 7;
    static final double LEADING = 9.2;
    static final double SMALL_LEADING = 8.6;
    /** Of the base line below the top of its line. */
    static final double ASCENT = 0.76;

    static final double THIN = 0.5;
    static final double AXIS = 0.6;
    static final double CURVE = 1;
    static final double TICK = 3;
    static final double GAP = 3;

    private static final double TINT = 0.16;

    private Type() {}

    static int ink() {
        return Ink.INK.rgb();
    }

    static int grey() {
        return Ink.GREY.rgb();
    }

    /** A colour as it would look thinned on white. */
    static int tint(int rgb) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int part = (rgb >> shift) & 0xFF;
            mixed |= (int) Math.round(255 - (255 - part) * TINT) << shift;
        }
        return mixed;
    }

    /** The pen of a trace. */
    static Pen pen(Trace trace, int rgb, double width) {
        return new Pen(rgb, width, dashes(trace));
    }

    private static List<Double> dashes(Trace trace) {
        return switch (trace) {
            case NONE, SOLID -> List.of();
            case DASHED -> List.of(4.0, 2.2);
            case DOTTED -> List.of(1.1, 1.7);
            case DASH_DOT -> List.of(5.0, 1.8, 1.1, 1.8);
        };
    }
}
