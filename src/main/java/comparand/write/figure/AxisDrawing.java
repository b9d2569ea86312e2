package comparand.write.figure;

import comparand.document.chart.Axis;
import java.util.List;

/** Draws the axes of a panel with their labels. */
final class AxisDrawing {

    private final PanelFrame frame;
    private final Places places;
    private final Measure measure;
    private final Surface surface;

    AxisDrawing(PanelFrame frame, Places places, Measure measure, Surface surface) {
        this.frame = frame;
        this.places = places;
        this.measure = measure;
        this.surface = surface;
    }

    /** What lies below everything else: lines between rows. */
    void ground() {
        if (frame.panel().up() instanceof Axis.Rows rows) {
            for (int row = 1; row < rows.names().size(); row++) {
                double y = places.rowTop(row);
                line(frame.textLeft(), y, places.plot().right(), y, new Pen(Type.HAIR, Type.THIN, List.of(0.8, 2.0)));
            }
        }
        if (frame.panel().across() instanceof Axis.Rows slots) {
            for (int slot = 1; slot < slots.names().size(); slot++) {
                double x = places.x(slot - 0.5);
                line(
                        x,
                        places.plot().top(),
                        x,
                        places.plot().bottom(),
                        new Pen(Type.HAIR, Type.THIN, List.of(0.8, 2.0)));
            }
        }
    }

    void axes() {
        var plot = places.plot();
        line(plot.left(), plot.bottom(), plot.right(), plot.bottom(), Pen.whole(Type.grey(), Type.AXIS));
        line(plot.left(), plot.top(), plot.left(), plot.bottom(), Pen.whole(Type.grey(), Type.AXIS));
        frame.panel().across().fold(this::acrossScale, this::acrossRows);
        frame.panel().up().fold(this::upScale, this::upRows);
    }

    private int acrossScale(Axis.Scale scale) {
        double bottom = places.plot().bottom();
        double base = bottom + Type.TICK + Type.GAP - 1 + Type.ASCENT * Type.LEADING;
        double free = Double.NEGATIVE_INFINITY;
        for (var tick : scale.ticks()) {
            double x = places.x(tick.at());
            line(x, bottom, x, bottom + Type.TICK, Pen.whole(Type.grey(), Type.AXIS));
            double half = measure.width(tick.label(), Type.TEXT, false) / 2;
            // labels that would touch are left out; their ticks stay
            if (x - half > free) {
                text(tick.label(), x, base, Lettering.Anchor.MIDDLE);
                free = x + half + Type.GAP;
            }
        }
        var title = frame.acrossTitle();
        for (int i = 0; i < title.size(); i++) {
            text(title.get(i), places.plot().left(), base + 1 + (i + 1) * Type.LEADING, Lettering.Anchor.START);
        }
        return scale.ticks().size();
    }

    private int acrossRows(Axis.Rows rows) {
        var slots = frame.slots();
        for (int slot = 0; slot < slots.size(); slot++) {
            for (int i = 0; i < slots.get(slot).size(); i++) {
                text(
                        slots.get(slot).get(i),
                        places.x(slot),
                        places.plot().bottom() + Type.GAP + (i + Type.ASCENT) * Type.LEADING,
                        Lettering.Anchor.MIDDLE);
            }
        }
        return rows.names().size();
    }

    private int upScale(Axis.Scale scale) {
        double left = places.plot().left();
        double free = Double.POSITIVE_INFINITY;
        for (var tick : scale.ticks()) {
            double y = places.y(tick.at());
            line(left - Type.TICK, y, left, y, Pen.whole(Type.grey(), Type.AXIS));
            if (y + Type.LEADING / 2 < free) {
                text(tick.label(), left - Type.TICK - Type.GAP + 1, y + 0.26 * Type.LEADING, Lettering.Anchor.END);
                free = y - Type.LEADING / 2;
            }
        }
        return scale.ticks().size();
    }

    private int upRows(Axis.Rows rows) {
        for (int row = 0; row < rows.names().size(); row++) {
            var lines = frame.name(row);
            double top = places.rowTop(row) + (places.rowHeight(row) - lines.size() * Type.LEADING) / 2;
            for (int i = 0; i < lines.size(); i++) {
                text(lines.get(i), frame.textLeft(), top + (i + Type.ASCENT) * Type.LEADING, Lettering.Anchor.START);
            }
        }
        return rows.names().size();
    }

    /** The heading of the panel, and the title of an axis that goes up. */
    void headings(double top) {
        double base = top + frame.padding() + Type.ASCENT * Type.LEADING;
        for (var line : frame.heading()) {
            surface.text(new Lettering(
                    line, new Spot(frame.textLeft(), base), Lettering.Anchor.START, Type.TEXT, true, Type.ink()));
            base += Type.LEADING;
        }
        base += frame.heading().isEmpty() ? 0 : Type.GAP;
        for (var line : frame.upTitle()) {
            text(line, frame.textLeft(), base, Lettering.Anchor.START);
            base += Type.LEADING;
        }
    }

    private void text(String text, double x, double y, Lettering.Anchor anchor) {
        surface.text(new Lettering(text, new Spot(x, y), anchor, Type.TEXT, false, Type.ink()));
    }

    private void line(double fromX, double fromY, double toX, double toY, Pen pen) {
        surface.line(List.of(new Spot(fromX, fromY), new Spot(toX, toY)), pen);
    }
}
