package comparand.compose.talk;

import comparand.compose.text.Run;
import comparand.document.chart.Area;
import comparand.document.chart.Axis;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A figure for the last row of a room: the same points and intervals, with shorter words. How many stand behind a row is
 * said in the strip, the reasons of what is not compared in the table of all pairs, the margin once and not at every row.
 */
final class SlideFigure {

    private static final int LONGEST_NAME = 14;

    private static final int MOST_TICKS = 4;

    /** Nearer than this share of the axis, the labels of two points meet. */
    private static final double MEETING = 0.12;

    private final Run run;

    SlideFigure(Run run) {
        this.run = run;
    }

    Plot of(Plot chart) {
        return new Plot(
                chart.id(),
                chart.message(),
                chart.alternative(),
                chart.panels().stream().map(this::panel).toList(),
                chart.key(),
                List.of());
    }

    private Panel panel(Panel panel) {
        return new Panel(
                heading(panel),
                panel.share(),
                panel.framed(),
                axis(panel.across(), panel.framed()),
                axis(panel.up(), panel.framed()),
                panel.areas().stream().map(SlideFigure::silent).toList(),
                panel.ribbons(),
                panel.rules(),
                panel.series().stream().map(s -> brief(s, panel)).toList());
    }

    private String heading(Panel panel) {
        return panel.heading().isEmpty()
                ? panel.areas().stream()
                        .map(Area::label)
                        .filter(l -> !l.isBlank())
                        .findFirst()
                        .map(l -> run.words().say("talk.figure.band", "band", l))
                        .orElse("")
                : panel.heading();
    }

    private static Area silent(Area area) {
        return new Area(area.fromAcross(), area.toAcross(), area.fromUp(), area.toUp(), area.fill(), "");
    }

    private static Axis axis(Axis axis, boolean narrow) {
        return axis.fold(
                scale -> narrow ? narrow(scale) : scale,
                rows -> new Axis.Rows(
                        rows.names().stream().map(SlideFigure::name).toList()));
    }

    /** The panel beside it has the whole title: here its unit is enough, and fewer ticks. */
    private static Axis narrow(Axis.Scale scale) {
        int every = (scale.ticks().size() + MOST_TICKS - 1) / MOST_TICKS;
        var ticks = IntStream.range(0, scale.ticks().size())
                .filter(i -> i % Math.max(1, every) == 0)
                .mapToObj(i -> scale.ticks().get(i))
                .toList();
        int unit = scale.title().lastIndexOf(", ");
        return new Axis.Scale(unit < 0 ? "" : scale.title().substring(unit + 2), scale.from(), scale.to(), ticks);
    }

    /** The device and what it was measured at, without how many stand behind it. */
    static String name(String full) {
        var lines = full.split("\n", 2);
        if (lines.length == 1) {
            return full;
        }
        int number = lines[1].lastIndexOf(", ");
        var at = number < 0 ? "" : lines[1].substring(0, number);
        return at.isEmpty() || at.length() > LONGEST_NAME ? lines[0] : lines[0] + "\n" + at.replace(' ', '\u00a0');
    }

    private static Series brief(Series series, Panel panel) {
        return new Series(
                series.name(),
                series.mark(),
                series.trace(),
                series.ink(),
                series.points().stream().map(p -> brief(p, series, panel)).toList(),
                series.endLabel());
    }

    /** A published number is written where it does not meet that of its row; all of them stand in the backup slides. */
    private static Point brief(Point p, Series series, Panel panel) {
        boolean meets = !panel.framed()
                && series.mark() != Mark.FILLED_CIRCLE
                && panel.series().stream()
                        .flatMap(s -> s.points().stream())
                        .filter(other -> !other.equals(p) && Math.round(other.up()) == Math.round(p.up()))
                        .anyMatch(other -> Math.abs(other.across() - p.across())
                                < MEETING
                                        * (panel.across().to() - panel.across().from()));
        return new Point(p.across(), p.up(), p.acrossInterval(), p.upInterval(), meets ? "" : label(p.label()));
    }

    /** The number alone, in its brackets: {@code 73.9 ± 4.6, 1:T2r3} as {@code 73.9}; places stand in the strip. */
    static String label(String full) {
        return full.replaceFirst(", \\d+:.*|: .*", "")
                .replaceFirst("(\\d)(?:[ \\u00a0]\\([^)]*\\)|[ \\u00a0]±[ \\u00a0]?[\\d.,]*\\d)", "$1")
                .replace(' ', '\u00a0');
    }
}
