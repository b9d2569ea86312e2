package comparand.write.chart;

import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Extent;
import comparand.document.chart.Series.Point;
import comparand.document.chart.Trace;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.xddf.usermodel.chart.XDDFChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumDataSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STScatterStyle;

/** The scatter chart itself, element by element; every number is both referred to and kept beside the reference. */
final class ScatterPlot {

    private static final int ACROSS = 2;
    private static final int UP = 3;
    /** How long the stem of a value that is not compared is, in rows. */
    private static final double STEM = 0.3;

    private final Panel panel;
    private final NativeLook look;
    private final CTPlotArea area;
    private final CTScatterChart scatter;
    private final Strokes strokes;
    private final PointLabels labels;
    private int count;

    ScatterPlot(XDDFChart target, Panel panel, NativeLook look) {
        this.panel = panel;
        this.look = look;
        this.strokes = new Strokes(look);
        this.labels = new PointLabels(panel, look);
        var chart = target.getCTChart();
        if (chart.isSetAutoTitleDeleted()) {
            chart.unsetAutoTitleDeleted();
        }
        chart.addNewAutoTitleDeleted().setVal(true);
        this.area = chart.getPlotArea() == null ? chart.addNewPlotArea() : chart.getPlotArea();
        this.scatter = area.addNewScatterChart();
        scatter.addNewScatterStyle().setVal(STScatterStyle.LINE_MARKER);
        scatter.addNewVaryColors().setVal(false);
        if (!chart.isSetPlotVisOnly()) {
            chart.addNewPlotVisOnly();
        }
        // numbers in hidden rows are drawn all the same
        chart.getPlotVisOnly().setVal(false);
        if (!chart.isSetDispBlanksAs()) {
            chart.addNewDispBlanksAs();
        }
        chart.getDispBlanksAs().setVal(STDispBlanksAs.GAP);
    }

    void series(Series series, List<Point> points, Block.Written written) {
        var ser = begun(series.name(), points, written);
        int rgb = series.ink().rgb();
        strokes.line(ser.addNewSpPr(), series.trace(), rgb, look.line());
        strokes.mark(ser.addNewMarker(), series.mark(), rgb);
        labels.add(ser, points, series.ink().rgb());
        bars(ser, points, written, rgb, STErrDir.X, Point::acrossInterval, Point::across, 4);
        bars(ser, points, written, rgb, STErrDir.Y, Point::upInterval, Point::up, 6);
        stem(ser, series);
        values(ser, points, written);
    }

    /** The names of rows, to the left of the points. */
    void names(List<Point> points, Block.Written written) {
        var ser = begun("", points, written);
        strokes.line(ser.addNewSpPr(), Trace.NONE, Ink.INK.rgb(), look.line());
        strokes.mark(ser.addNewMarker(), Mark.NONE, Ink.INK.rgb());
        labels.names(ser, points);
        values(ser, points, written);
    }

    private CTScatterSer begun(String name, List<Point> points, Block.Written written) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a series of a chart has points");
        }
        var ser = scatter.addNewSer();
        ser.addNewIdx().setVal(count);
        ser.addNewOrder().setVal(count++);
        var text = ser.addNewTx().addNewStrRef();
        text.setF(written.name());
        var cache = text.addNewStrCache();
        cache.addNewPtCount().setVal(1);
        var pt = cache.addNewPt();
        pt.setIdx(0);
        pt.setV(name);
        return ser;
    }

    private static void values(CTScatterSer ser, List<Point> points, Block.Written written) {
        var x = ser.addNewXVal().addNewNumRef();
        x.setF(written.range(ACROSS));
        Numbers.fill(x.addNewNumCache(), points, p -> Optional.of(p.across()));
        var y = ser.addNewYVal().addNewNumRef();
        y.setF(written.range(UP));
        Numbers.fill(y.addNewNumCache(), points, p -> Optional.of(p.up()));
        ser.addNewSmooth().setVal(false);
    }

    private void bars(
            CTScatterSer ser,
            List<Point> points,
            Block.Written written,
            int rgb,
            STErrDir.Enum direction,
            Function<Point, Optional<Extent>> interval,
            Function<Point, Double> at,
            int column) {
        if (points.stream().allMatch(p -> interval.apply(p).isEmpty())) {
            return;
        }
        var bars = ser.addNewErrBars();
        bars.addNewErrDir().setVal(direction);
        bars.addNewErrBarType().setVal(STErrBarType.BOTH);
        bars.addNewErrValType().setVal(STErrValType.CUST);
        bars.addNewNoEndCap().setVal(false);
        // programs draw bars from the kept numbers; without them they would not be seen
        distances(
                bars.addNewPlus(),
                points,
                written.range(column + 1),
                p -> interval.apply(p).map(i -> i.high() - at.apply(p)));
        distances(
                bars.addNewMinus(),
                points,
                written.range(column),
                p -> interval.apply(p).map(i -> at.apply(p) - i.low()));
        strokes.line(bars.addNewSpPr(), Trace.SOLID, rgb, look.line());
    }

    private static void distances(
            CTNumDataSource source, List<Point> points, String range, Function<Point, Optional<Double>> distance) {
        var reference = source.addNewNumRef();
        reference.setF(range);
        Numbers.fill(reference.addNewNumCache(), points, distance);
    }

    /** Rows leave room for the stem by which a copy in grey tells what is not compared, or was converted. */
    private void stem(CTScatterSer ser, Series series) {
        boolean apart = series.mark() == Mark.HOLLOW_DIAMOND || series.mark() == Mark.HOLLOW_DIAMOND_ASKED;
        if (!(panel.up() instanceof Axis.Rows) || (!apart && series.mark() != Mark.FILLED_SQUARE_WITH_TAIL)) {
            return;
        }
        CTErrBars bars = ser.addNewErrBars();
        bars.addNewErrDir().setVal(STErrDir.Y);
        bars.addNewErrBarType().setVal(STErrBarType.PLUS);
        bars.addNewErrValType().setVal(STErrValType.FIXED_VAL);
        bars.addNewNoEndCap().setVal(true);
        bars.addNewVal().setVal(STEM);
        strokes.line(
                bars.addNewSpPr(),
                apart ? Trace.DOTTED : Trace.SOLID,
                series.ink().rgb(),
                look.line());
    }

    void finish() {
        new NativeAxes(area, scatter, panel, look, strokes).draw();
    }
}
