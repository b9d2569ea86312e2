package comparand.write.figure;

import comparand.document.chart.Area;
import comparand.document.chart.Mark;
import comparand.document.chart.Ribbon;
import comparand.document.chart.Rule;
import comparand.document.chart.Series;
import comparand.document.chart.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Draws what stands on the axes of a panel: areas, ribbons, rules, series, then the labels where there is room. */
final class PanelDrawing {

    /** In place of a row: the strip above the plot is what has to grow. */
    static final int STRIP = -1;

    private static final double CAP = 2.2;
    private static final double INTERVAL = 0.9;
    private static final double SHORT_RULE = 7;

    private final PanelFrame frame;
    private final Places places;
    private final Surface surface;
    private final LabelRoom room;
    private final Marks marks;
    /** Where labels of what goes through the whole plot stand, above it. */
    private final Box strip;

    private final List<Tag> tags = new ArrayList<>();
    private final List<Tag> margins = new ArrayList<>();

    PanelDrawing(PanelFrame frame, Places places, double strip, Measure measure, Surface surface) {
        this.frame = frame;
        this.places = places;
        this.surface = surface;
        this.room = new LabelRoom(measure);
        this.marks = new Marks(surface);
        var plot = places.plot();
        this.strip = new Box(frame.textLeft(), plot.top() - strip, frame.right() - frame.padding(), plot.top());
    }

    /** Whether anything is to be labelled above the plot. */
    static boolean needsStrip(PanelFrame frame) {
        var panel = frame.panel();
        return panel.rules().stream()
                        .anyMatch(r -> r.upright()
                                && r.extent() == Rule.Extent.WHOLE
                                && !r.label().isEmpty())
                || panel.areas().stream().anyMatch(a -> !a.label().isEmpty() && throughout(frame, a));
    }

    private static boolean throughout(PanelFrame frame, Area area) {
        return area.fromUp() <= frame.panel().up().from()
                && area.toUp() >= frame.panel().up().to();
    }

    /**
     * Draws all; the rows that are too low for their labels, or {@link #STRIP}.
     *
     * @param last whether a label that finds no place is to be written where it does least harm
     */
    Set<Integer> draw(boolean last) {
        frame.panel().areas().forEach(this::area);
        frame.panel().ribbons().forEach(this::ribbon);
        frame.panel().rules().forEach(this::rule);
        frame.panel().series().forEach(this::trace);
        frame.panel().series().forEach(s -> s.points().forEach(p -> intervals(s, p)));
        frame.panel().series().forEach(s -> s.points().forEach(p -> mark(s, p)));
        // what is drawn last is seen first, and gets its label first
        var series = frame.panel().series();
        for (int i = series.size() - 1; i >= 0; i--) {
            labels(series.get(i));
        }
        // the label of a margin gives way to those of numbers
        tags.addAll(margins);
        var tooLow = new TreeSet<Integer>();
        for (var tag : tags) {
            if (!room.write(tag, surface, last)) {
                tooLow.add(tag.row());
            }
        }
        return tooLow;
    }

    private void area(Area area) {
        double y1 = places.keptY(area.fromUp());
        double y2 = places.keptY(area.toUp());
        var box = new Box(
                places.keptX(area.fromAcross()), Math.min(y1, y2), places.keptX(area.toAcross()), Math.max(y1, y2));
        var corners = List.of(
                new Spot(box.left(), box.top()), new Spot(box.right(), box.top()),
                new Spot(box.right(), box.bottom()), new Spot(box.left(), box.bottom()));
        if (area.fill() == Area.Fill.HATCHED) {
            Hatching.draw(surface, box, Pen.whole(Type.HATCH, Type.THIN));
            surface.polygon(corners, Paint.outlined(Pen.whole(Type.HATCH, Type.THIN)));
        } else {
            surface.polygon(corners, Paint.filled(Type.tint(Type.grey())));
        }
        room.tone(box);
        if (area.label().isEmpty()) {
            return;
        }
        if (throughout(frame, area)) {
            var edge = new Box(box.right(), strip.bottom(), box.right(), strip.bottom());
            margins.add(above(area.label(), edge, List.of(Tag.Side.ABOVE_LEFT, Tag.Side.ABOVE_RIGHT, Tag.Side.ABOVE)));
        } else {
            double middle = (area.fromUp() + area.toUp()) / 2;
            margins.add(new Tag(area.label(), box, Tag.BESIDE, places.bounds(middle), Type.grey(), places.row(middle)));
        }
    }

    private Tag above(String text, Box anchor, List<Tag.Side> sides) {
        return new Tag(text, anchor, sides, strip, Type.grey(), STRIP);
    }

    private void ribbon(Ribbon ribbon) {
        var corners = new ArrayList<Spot>();
        ribbon.slices().forEach(s -> corners.add(new Spot(places.keptX(s.across()), places.keptY(s.high()))));
        for (int i = ribbon.slices().size() - 1; i >= 0; i--) {
            var s = ribbon.slices().get(i);
            corners.add(new Spot(places.keptX(s.across()), places.keptY(s.low())));
        }
        if (corners.size() > 2) {
            surface.polygon(corners, Paint.filled(Type.tint(ribbon.ink().rgb())));
        }
        for (int i = 1; i < ribbon.slices().size(); i++) {
            var a = ribbon.slices().get(i - 1);
            var b = ribbon.slices().get(i);
            room.tone(Box.between(
                    places.spot(a.across(), Math.max(a.high(), b.high())),
                    places.spot(b.across(), Math.min(a.low(), b.low())),
                    0));
        }
    }

    private void rule(Rule rule) {
        var plot = places.plot();
        boolean whole = rule.extent() == Rule.Extent.WHOLE;
        var from = rule.upright()
                ? new Spot(places.x(rule.at()), plot.bottom())
                : new Spot(plot.left(), places.y(rule.at()));
        var to = rule.upright()
                ? new Spot(from.x(), whole ? plot.top() : plot.bottom() - SHORT_RULE)
                : new Spot(whole ? plot.right() : plot.left() + SHORT_RULE, from.y());
        surface.line(List.of(from, to), Type.pen(rule.trace(), Type.grey(), whole ? 0.8 : 1.4));
        room.takeLine(List.of(from, to));
        if (rule.label().isEmpty()) {
            return;
        }
        var end = Box.around(to, 0, 0);
        if (rule.upright() && whole) {
            tags.add(above(rule.label(), end, List.of(Tag.Side.ABOVE, Tag.Side.ABOVE_RIGHT, Tag.Side.ABOVE_LEFT)));
        } else if (rule.upright()) {
            tags.add(new Tag(
                    rule.label(),
                    end,
                    List.of(Tag.Side.ABOVE, Tag.Side.ABOVE_LEFT, Tag.Side.ABOVE_RIGHT),
                    plot,
                    Type.grey(),
                    0));
        } else {
            tags.add(new Tag(
                    rule.label(),
                    end,
                    List.of(Tag.Side.ABOVE_LEFT, Tag.Side.BELOW_LEFT),
                    plot,
                    Type.grey(),
                    places.row(rule.at())));
        }
    }

    private void trace(Series series) {
        if (series.trace() == Trace.NONE || series.points().size() < 2) {
            return;
        }
        var spots = series.points().stream()
                .map(p -> places.spot(p.across(), p.up()))
                .toList();
        surface.line(spots, Type.pen(series.trace(), series.ink().rgb(), Type.CURVE));
        room.takeLine(spots);
    }

    private void intervals(Series series, Series.Point point) {
        var pen = Pen.whole(series.ink().rgb(), INTERVAL);
        var at = places.spot(point.across(), point.up());
        point.acrossInterval().ifPresent(i -> {
            var low = new Spot(places.keptX(i.low()), at.y());
            var high = new Spot(places.keptX(i.high()), at.y());
            stroke(low, high, pen);
            // an interval that goes on beyond the axis has no end to mark there
            if (places.insideAcross(i.low())) {
                stroke(low.plus(0, -CAP), low.plus(0, CAP), pen);
            }
            if (places.insideAcross(i.high())) {
                stroke(high.plus(0, -CAP), high.plus(0, CAP), pen);
            }
            room.take(new Box(low.x() - INTERVAL, low.y() - CAP - 0.5, high.x() + INTERVAL, low.y() + CAP + 0.5));
        });
        point.upInterval().ifPresent(i -> {
            var low = new Spot(at.x(), places.keptY(i.low()));
            var high = new Spot(at.x(), places.keptY(i.high()));
            stroke(low, high, pen);
            if (places.insideUp(i.low())) {
                stroke(low.plus(-CAP, 0), low.plus(CAP, 0), pen);
            }
            if (places.insideUp(i.high())) {
                stroke(high.plus(-CAP, 0), high.plus(CAP, 0), pen);
            }
            room.take(new Box(low.x() - CAP - 0.5, high.y() - INTERVAL, low.x() + CAP + 0.5, low.y() + INTERVAL));
        });
    }

    private void stroke(Spot from, Spot to, Pen pen) {
        surface.line(List.of(from, to), pen);
    }

    private void mark(Series series, Series.Point point) {
        if (series.mark() != Mark.NONE) {
            var at = places.spot(point.across(), point.up());
            marks.draw(series.mark(), at, series.ink().rgb());
            room.take(Marks.box(series.mark(), at));
        }
    }

    private void labels(Series series) {
        for (var point : series.points()) {
            if (!point.label().isEmpty()) {
                tags.add(tag(series, point, point.label(), Type.ink()));
            }
        }
        if (!series.endLabel().isEmpty()) {
            tags.add(tag(
                    series,
                    series.points().get(series.points().size() - 1),
                    series.endLabel(),
                    series.ink().rgb()));
        }
    }

    /** A label stands beside the mark, or beside its interval where that lies in the way. */
    private Tag tag(Series series, Series.Point point, String text, int rgb) {
        var at = places.spot(point.across(), point.up());
        var box = Marks.box(series.mark(), at);
        var whole = point.acrossInterval()
                .map(i -> new Box(
                        Math.min(box.left(), places.keptX(i.low())),
                        box.top(),
                        Math.max(box.right(), places.keptX(i.high())),
                        box.bottom()))
                .orElse(box);
        return new Tag(text, whole, Tag.BESIDE, places.bounds(point.up()), rgb, places.row(point.up()));
    }
}
