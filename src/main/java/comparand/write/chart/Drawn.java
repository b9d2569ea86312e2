package comparand.write.chart;

import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Extent;
import comparand.document.chart.Series.Point;
import comparand.document.chart.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One series of a native chart.
 *
 * @param names whether its labels are the names of rows
 */
record Drawn(String name, Mark mark, Trace trace, Ink ink, List<Dot> dots, boolean names) {

    Drawn {
        dots = List.copyOf(dots);
    }

    /**
     * A row of the sheet: a point, or a gap between two lines.
     *
     * @param at across and up
     */
    record Dot(Optional<Place> at, Optional<Extent> upInterval, String label) {

        static final Dot GAP = new Dot(Optional.empty(), Optional.empty(), "");

        static Dot of(double across, double up, String label) {
            return new Dot(Optional.of(new Place(across, up)), Optional.empty(), label);
        }

        Optional<Double> across() {
            return at.map(Place::across);
        }

        Optional<Double> up() {
            return at.map(Place::up);
        }

        /** How far the interval goes above the point. */
        Optional<Double> above() {
            return at.flatMap(p -> upInterval.map(i -> i.high() - p.up));
        }

        /** How far it goes below. */
        Optional<Double> below() {
            return at.flatMap(p -> upInterval.map(i -> p.up - i.low()));
        }
    }

    /** Across and up. */
    record Place(double across, double up) {}

    static Drawn of(Series series) {
        var dots = new ArrayList<Dot>();
        for (int i = 0; i < series.points().size(); i++) {
            var p = series.points().get(i);
            boolean last = i == series.points().size() - 1;
            dots.add(new Dot(
                    Optional.of(new Place(p.across(), p.up())),
                    p.upInterval(),
                    last && !series.endLabel().isEmpty() ? ended(p, series.endLabel()) : p.label()));
        }
        return new Drawn(series.name(), series.mark(), series.trace(), series.ink(), dots, false);
    }

    private static String ended(Point last, String end) {
        return last.label().isEmpty() ? end : last.label() + ", " + end;
    }

    /**
     * Intervals along the axis across, as lines with gaps between them: error bars of that direction with lengths of their own
     * are not drawn by every program.
     */
    static Optional<Drawn> intervals(Series series) {
        var dots = new ArrayList<Dot>();
        for (var p : series.points()) {
            p.acrossInterval().ifPresent(i -> {
                if (!dots.isEmpty()) {
                    dots.add(Dot.GAP);
                }
                dots.add(Dot.of(i.low(), p.up(), ""));
                dots.add(Dot.of(i.high(), p.up(), ""));
            });
        }
        return dots.isEmpty()
                ? Optional.empty()
                : Optional.of(new Drawn(series.name(), Mark.NONE, Trace.SOLID, series.ink(), dots, false));
    }
}
