package comparand.write.figure;

import comparand.document.chart.Plot.KeyEntry;
import comparand.document.chart.Trace;
import comparand.write.LineBreaks;
import java.util.ArrayList;
import java.util.List;

/** The key of a figure below its panels, and the notes below that. */
final class Legend {

    private static final double SAMPLE = 18;
    private static final double BETWEEN = 12;
    private static final double ENTRY_LEADING = 12;
    /** A stem below a mark needs room. */
    private static final double STEM_LEADING = 15;

    private final List<KeyEntry> key;
    private final List<String> notes;
    private final Measure measure;
    private final double width;
    private final Surface surface;

    Legend(List<KeyEntry> key, List<String> notes, Measure measure, double width, Surface surface) {
        this.key = key;
        this.notes = notes;
        this.measure = measure;
        this.width = width;
        this.surface = surface;
    }

    /** Draws both from a height on, and returns the height below them. */
    double draw(double top) {
        return notes(key(top));
    }

    private double key(double top) {
        double y = top;
        double x = 0;
        double lowest = 0;
        for (var entry : key) {
            var lines = LineBreaks.of(entry.means(), width - SAMPLE, t -> measure.width(t, Type.TEXT, false));
            double room = SAMPLE
                    + lines.stream()
                            .mapToDouble(l -> measure.width(l, Type.TEXT, false))
                            .max()
                            .orElse(0);
            if (x > 0 && x + room > width) {
                y += lowest;
                x = 0;
                lowest = 0;
            }
            entry(entry, lines, x, y);
            x += room + BETWEEN;
            lowest = Math.max(lowest, height(entry, lines));
        }
        return key.isEmpty() ? top : y + lowest + Type.GAP;
    }

    private static double height(KeyEntry entry, List<String> lines) {
        double mark = Marks.box(entry.mark(), new Spot(0, 0)).bottom() > 5 ? STEM_LEADING : ENTRY_LEADING;
        return Math.max(mark, lines.size() * Type.LEADING + 2);
    }

    private void entry(KeyEntry entry, List<String> lines, double x, double y) {
        var at = new Spot(x + 6, y + Type.LEADING / 2);
        if (entry.trace() != Trace.NONE) {
            surface.line(
                    List.of(at.plus(-6, 0), at.plus(9, 0)),
                    Type.pen(entry.trace(), entry.ink().rgb(), Type.CURVE));
            new Marks(surface).draw(entry.mark(), at.plus(1.5, 0), entry.ink().rgb());
        } else {
            new Marks(surface).draw(entry.mark(), at, entry.ink().rgb());
        }
        for (int i = 0; i < lines.size(); i++) {
            surface.text(new Lettering(
                    lines.get(i),
                    new Spot(x + SAMPLE, y + (i + Type.ASCENT) * Type.LEADING),
                    Lettering.Anchor.START,
                    Type.TEXT,
                    false,
                    Type.ink()));
        }
    }

    private double notes(double top) {
        var lines = new ArrayList<String>();
        for (var note : notes) {
            lines.addAll(LineBreaks.of(note, width, t -> measure.width(t, Type.SMALL, false)));
        }
        double y = top;
        for (var line : lines) {
            surface.text(new Lettering(
                    line,
                    new Spot(0, y + Type.ASCENT * Type.SMALL_LEADING),
                    Lettering.Anchor.START,
                    Type.SMALL,
                    false,
                    Type.grey()));
            y += Type.SMALL_LEADING;
        }
        return y;
    }
}
