package comparand.write.chart;

import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Trace;
import comparand.write.chart.Drawn.Dot;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.xddf.usermodel.chart.XDDFChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
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

    /** How long the stem of a value that is not compared is, in rows. */
    private static final double STEM = 0.3;

    private final Panel panel;
    private final NativeLook look;
    private final CTPlotArea area;
    private final CTScatterChart scatter;
    private final Strokes strokes;
    private final PointLabels labels;
    private static final double FRAME = 0.75;

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
        chart.addNewAutoTitleDeleted().setVal(panel.heading().isEmpty());
        if (!panel.heading().isEmpty()) {
            NativeAxes.title(chart.addNewTitle(), panel.heading(), look);
        }
        if (panel.framed()) {
            strokes.line(target.getCTChartSpace().addNewSpPr(), Trace.SOLID, Ink.GREY.rgb(), FRAME);
        }
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

    void series(Drawn drawn, Block.Written written) {
        var ser = begun(drawn, written);
        int rgb = drawn.ink().rgb();
        strokes.line(ser.addNewSpPr(), drawn.trace(), rgb, look.line());
        strokes.mark(ser.addNewMarker(), drawn.mark(), rgb);
        labels.add(ser, drawn);
        bars(ser, drawn, written);
        stem(ser, drawn);
        values(ser, drawn, written);
    }

    private CTScatterSer begun(Drawn drawn, Block.Written written) {
        var ser = scatter.addNewSer();
        ser.addNewIdx().setVal(count);
        ser.addNewOrder().setVal(count++);
        var text = ser.addNewTx().addNewStrRef();
        text.setF(written.name());
        var cache = text.addNewStrCache();
        cache.addNewPtCount().setVal(1);
        var pt = cache.addNewPt();
        pt.setIdx(0);
        pt.setV(drawn.name());
        return ser;
    }

    private static void values(CTScatterSer ser, Drawn drawn, Block.Written written) {
        numbers(ser.addNewXVal().addNewNumRef(), drawn, written.range(Block.ACROSS), Dot::across);
        numbers(ser.addNewYVal().addNewNumRef(), drawn, written.range(Block.UP), Dot::up);
        ser.addNewSmooth().setVal(false);
    }

    private static void numbers(CTNumRef reference, Drawn drawn, String range, Function<Dot, Optional<Double>> number) {
        reference.setF(range);
        Numbers.fill(reference.addNewNumCache(), drawn.dots(), number);
    }

    private void bars(CTScatterSer ser, Drawn drawn, Block.Written written) {
        if (drawn.dots().stream().allMatch(d -> d.upInterval().isEmpty())) {
            return;
        }
        var bars = ser.addNewErrBars();
        bars.addNewErrDir().setVal(STErrDir.Y);
        bars.addNewErrBarType().setVal(STErrBarType.BOTH);
        bars.addNewErrValType().setVal(STErrValType.CUST);
        bars.addNewNoEndCap().setVal(false);
        // programs draw bars from the kept numbers; without them they would not be seen
        numbers(bars.addNewPlus().addNewNumRef(), drawn, written.range(Block.ABOVE), Dot::above);
        numbers(bars.addNewMinus().addNewNumRef(), drawn, written.range(Block.BELOW), Dot::below);
        strokes.line(bars.addNewSpPr(), Trace.SOLID, drawn.ink().rgb(), look.line());
    }

    /** Rows leave room for the stem by which a copy in grey tells what is not compared, or was converted. */
    private void stem(CTScatterSer ser, Drawn drawn) {
        boolean apart = drawn.mark() == Mark.HOLLOW_DIAMOND || drawn.mark() == Mark.HOLLOW_DIAMOND_ASKED;
        if (!(panel.up() instanceof Axis.Rows) || (!apart && drawn.mark() != Mark.FILLED_SQUARE_WITH_TAIL)) {
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
                drawn.ink().rgb(),
                look.line());
    }

    void finish() {
        new NativeAxes(area, scatter, panel, look, strokes).draw();
    }
}
