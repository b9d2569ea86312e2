package comparand.write.chart;

import comparand.document.chart.Area;
import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Ribbon;
import comparand.document.chart.Rule;
import comparand.document.chart.Series;
import comparand.document.chart.Trace;
import comparand.write.chart.Drawn.Dot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.poi.xddf.usermodel.chart.XDDFChart;

/**
 * Fills a chart of an office file with a panel, as a scatter chart that can be edited: marks by shape, intervals as error
 * bars or lines, margins as dashed outlines, names and labels as text.
 */
public final class NativeChart {

    private static final double SHORT_RULE = 0.06;

    private final Panel panel;
    private final Block block;
    private final ScatterPlot plot;
    private final List<Drawn> all = new ArrayList<>();

    private NativeChart(Panel panel, Block block, ScatterPlot plot) {
        this.panel = panel;
        this.block = block;
        this.plot = plot;
    }

    /**
     * Draws one panel; a figure of two panels takes two charts side by side.
     *
     * @param target an empty chart of a slide, sheet or text: {@code XSLFChart}, {@code XSSFChart} or {@code XWPFChart}
     * @param place where its numbers go: {@link DataPlace#within} for slides and texts, a sheet of the workbook else
     * @return the first row below its numbers
     */
    public static int fill(XDDFChart target, Panel panel, NativeLook look, DataPlace place) {
        var block = new Block(place);
        new NativeChart(panel, block, new ScatterPlot(target, panel, look)).draw();
        return block.next();
    }

    private void draw() {
        panel.areas().forEach(this::area);
        panel.ribbons().forEach(this::ribbon);
        panel.rules().forEach(this::rule);
        panel.series().forEach(this::series);
        panel.up().fold(scale -> scale.ticks().size(), this::names);
        // some programs lose a series that is shorter than a later one, unless the longest comes first
        all.stream().max(Comparator.comparingInt(d -> d.dots().size())).ifPresent(longest -> {
            all.remove(longest);
            all.add(0, longest);
        });
        all.forEach(d -> plot.series(d, block.write(d)));
        plot.finish();
    }

    private void area(Area area) {
        double left = Math.max(area.fromAcross(), panel.across().from());
        double right = Math.min(area.toAcross(), panel.across().to());
        double low = Math.max(area.fromUp(), panel.up().from());
        double high = Math.min(area.toUp(), panel.up().to());
        line(
                area.label(),
                Ink.GREY,
                Trace.DASHED,
                List.of(
                        at(right, low, area.label()),
                        at(right, high, ""),
                        at(left, high, ""),
                        at(left, low, ""),
                        at(right, low, "")));
    }

    private void ribbon(Ribbon ribbon) {
        line(
                ribbon.name(),
                ribbon.ink(),
                Trace.DOTTED,
                ribbon.slices().stream().map(s -> at(s.across(), s.high(), "")).toList());
        line(
                ribbon.name(),
                ribbon.ink(),
                Trace.DOTTED,
                ribbon.slices().stream().map(s -> at(s.across(), s.low(), "")).toList());
    }

    private void rule(Rule rule) {
        var along = rule.upright() ? panel.up() : panel.across();
        double length = (along.to() - along.from()) * (rule.extent() == Rule.Extent.WHOLE ? 1 : SHORT_RULE);
        // rows are counted from the top: there the foot of the plot is the end of the axis
        boolean fromEnd = rule.upright() && panel.up() instanceof Axis.Rows;
        double foot = fromEnd ? along.to() : along.from();
        double end = fromEnd ? foot - length : foot + length;
        line(
                rule.label(),
                Ink.GREY,
                rule.trace(),
                rule.upright()
                        ? List.of(at(rule.at(), foot, ""), at(rule.at(), end, rule.label()))
                        : List.of(at(foot, rule.at(), ""), at(end, rule.at(), rule.label())));
    }

    private void line(String name, Ink ink, Trace trace, List<Dot> dots) {
        if (dots.size() > 1) {
            all.add(new Drawn(name, Mark.NONE, trace, ink, dots, false));
        }
    }

    private static Dot at(double across, double up, String label) {
        return Dot.of(across, up, label);
    }

    private void series(Series series) {
        Drawn.intervals(series).ifPresent(all::add);
        all.add(Drawn.of(series));
    }

    /** An axis of numbers has no names; they are labels of points that are not seen, at its left end. */
    private int names(Axis.Rows rows) {
        var dots = new ArrayList<Dot>();
        for (int i = 0; i < rows.names().size(); i++) {
            dots.add(at(panel.across().from(), i, rows.names().get(i)));
        }
        all.add(new Drawn("", Mark.NONE, Trace.NONE, Ink.INK, dots, true));
        return dots.size();
    }
}
