package comparand.write.figure;

import comparand.document.chart.Axis;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Series;
import comparand.write.LineBreaks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/** How the room of a panel is shared out: heading, labels of axes, and the plot; all in points. */
final class PanelFrame {

    private static final double PADDING = 6;
    private static final double MOST_GUTTER = 0.36;
    private static final double ROW = 20;
    private static final double ROW_AIR = 6;
    private static final double POINT_ROW = 13;
    private static final double PLOT_SHAPE = 0.58;
    private static final double LEAST_PLOT = 110;

    private final Panel panel;
    private final Measure measure;
    private final double left;
    private final double width;
    private final double gutter;
    private final double inset;

    PanelFrame(Panel panel, Measure measure, double left, double width) {
        this.panel = panel;
        this.measure = measure;
        this.left = left;
        this.width = width;
        this.gutter = panel.up().fold(this::tickGutter, this::nameGutter);
        this.inset = panel.across().fold(this::lastTick, rows -> 0.0);
    }

    Panel panel() {
        return panel;
    }

    double left() {
        return left;
    }

    double right() {
        return left + width;
    }

    double padding() {
        return panel.framed() ? PADDING : 0;
    }

    double plotLeft() {
        return left + padding() + gutter;
    }

    double plotRight() {
        return right() - padding() - inset;
    }

    double textLeft() {
        return left + padding();
    }

    private double inner() {
        return width - 2 * padding();
    }

    private double tickGutter(Axis.Scale scale) {
        return scale.ticks().stream().mapToDouble(t -> width(t.label())).max().orElse(0) + Type.TICK + Type.GAP;
    }

    private double nameGutter(Axis.Rows rows) {
        double natural = rows.names().stream().mapToDouble(this::width).max().orElse(0);
        double word = rows.names().stream()
                .flatMap(n -> List.of(n.split("[ \n]", -1)).stream())
                .mapToDouble(this::width)
                .max()
                .orElse(0);
        return Math.min(natural, Math.max(word, MOST_GUTTER * inner() - 2 * Type.GAP)) + 2 * Type.GAP;
    }

    /** Half of the last label may stand out beyond the plot. */
    private double lastTick(Axis.Scale scale) {
        return scale.ticks().stream()
                .mapToDouble(t ->
                        width(t.label()) / 2 - plotWidthWithout() * (scale.to() - t.at()) / (scale.to() - scale.from()))
                .max()
                .stream()
                .map(over -> Math.max(over, 2))
                .findFirst()
                .orElse(2);
    }

    private double plotWidthWithout() {
        return inner() - gutter;
    }

    List<String> heading() {
        return panel.heading().isEmpty()
                ? List.of()
                : LineBreaks.of(panel.heading(), inner(), t -> measure.width(t, Type.TEXT, true));
    }

    /** The title of an axis of numbers that goes up stands above it, lying, so that no head has to be turned. */
    List<String> upTitle() {
        return panel.up().fold(s -> lines(s.title(), inner()), r -> List.of());
    }

    List<String> acrossTitle() {
        return panel.across().fold(s -> lines(s.title(), plotRight() - plotLeft()), r -> List.of());
    }

    /** The names of rows of the axis across, each in its slot. */
    List<List<String>> slots() {
        return panel.across()
                .fold(
                        s -> List.of(),
                        rows -> rows.names().stream()
                                .map(n -> lines(
                                        n,
                                        (plotRight() - plotLeft())
                                                        / rows.names().size()
                                                - 2 * Type.GAP))
                                .toList());
    }

    List<String> name(int row) {
        return panel.up().fold(s -> List.of(), rows -> lines(rows.names().get(row), gutter - 2 * Type.GAP));
    }

    private List<String> lines(String text, double room) {
        return text.isEmpty() ? List.of() : LineBreaks.of(text, room, this::width);
    }

    private double width(String text) {
        return measure.width(text, Type.TEXT, false);
    }

    /** From the upper edge to the plot, without the labels that stand on it. */
    double head() {
        double lines = heading().size() + upTitle().size();
        return padding() + lines * Type.LEADING + (heading().isEmpty() ? 0 : Type.GAP) + Type.GAP;
    }

    /** From the plot to the lower edge. */
    double foot() {
        double labels = panel.across()
                .fold(
                        scale -> Type.LEADING * (1 + acrossTitle().size()) + 1,
                        rows -> Type.LEADING
                                * slots().stream().mapToInt(List::size).max().orElse(1));
        return Type.TICK + Type.GAP + labels + padding();
    }

    /** The least heights of rows; empty where the axis up is a scale. */
    List<Double> rows() {
        return panel.up().fold(scale -> List.of(), axis -> {
            var heights = new ArrayList<Double>();
            for (int row = 0; row < axis.names().size(); row++) {
                double names = name(row).size() * Type.LEADING + ROW_AIR;
                heights.add(Math.max(Math.max(ROW, names), levels(row) * POINT_ROW));
            }
            return heights;
        });
    }

    /** At how many heights a row has points that are more than small dots. */
    private int levels(int row) {
        var levels = new TreeSet<Double>(Collections.singleton(0.0));
        for (var series : panel.series()) {
            if (series.mark() == Mark.SMALL_DOT) {
                continue;
            }
            series.points().stream()
                    .map(Series.Point::up)
                    .filter(up -> Math.round(up) == row)
                    .forEach(levels::add);
        }
        return levels.size();
    }

    /** The height of a plot whose axis up is a scale. */
    double plotHeight() {
        return Math.max(LEAST_PLOT, PLOT_SHAPE * (plotRight() - plotLeft()));
    }
}
