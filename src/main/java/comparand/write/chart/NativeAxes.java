package comparand.write.chart;

import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Panel;
import comparand.document.chart.Trace;
import java.util.List;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STAxPos;
import org.openxmlformats.schemas.drawingml.x2006.chart.STCrosses;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutMode;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutTarget;
import org.openxmlformats.schemas.drawingml.x2006.chart.STOrientation;
import org.openxmlformats.schemas.drawingml.x2006.chart.STTickLblPos;
import org.openxmlformats.schemas.drawingml.x2006.chart.STTickMark;

/** The two axes of a native chart, with the ticks that were chosen for it. */
final class NativeAxes {

    private static final long ACROSS = 1;
    private static final long UP = 2;
    /** The share of the width that names of rows take. */
    private static final double NAMES = 0.32;

    private static final double TOP = 0.05;
    private static final double TITLE = 0.14;
    private static final double FOOT = 0.2;
    private static final double RIGHT = 0.05;

    private final CTPlotArea area;
    private final CTScatterChart scatter;
    private final Panel panel;
    private final NativeLook look;
    private final Strokes strokes;

    NativeAxes(CTPlotArea area, CTScatterChart scatter, Panel panel, NativeLook look, Strokes strokes) {
        this.area = area;
        this.scatter = scatter;
        this.panel = panel;
        this.look = look;
        this.strokes = strokes;
    }

    void draw() {
        scatter.addNewAxId().setVal(ACROSS);
        scatter.addNewAxId().setVal(UP);
        boolean rows = panel.up() instanceof Axis.Rows;
        axis(panel.across(), ACROSS, UP, STAxPos.B, false, rows ? STCrosses.MAX : STCrosses.MIN);
        axis(panel.up(), UP, ACROSS, STAxPos.L, rows, STCrosses.MIN);
        if (rows) {
            room();
        }
    }

    /** Names of rows stand outside of the plot; programs leave them no room by themselves. */
    private void room() {
        var layout = area.isSetLayout() ? area.getLayout() : area.addNewLayout();
        var place = layout.isSetManualLayout() ? layout.getManualLayout() : layout.addNewManualLayout();
        place.addNewLayoutTarget().setVal(STLayoutTarget.INNER);
        place.addNewXMode().setVal(STLayoutMode.EDGE);
        place.addNewYMode().setVal(STLayoutMode.EDGE);
        place.addNewX().setVal(NAMES);
        double top = panel.heading().isEmpty() ? TOP : TITLE;
        place.addNewY().setVal(top);
        place.addNewW().setVal(1 - NAMES - RIGHT);
        place.addNewH().setVal(1 - top - FOOT);
    }

    private void axis(Axis axis, long id, long other, STAxPos.Enum side, boolean rows, STCrosses.Enum crosses) {
        var ax = area.addNewValAx();
        ax.addNewAxId().setVal(id);
        var scaling = ax.addNewScaling();
        scaling.addNewOrientation().setVal(rows ? STOrientation.MAX_MIN : STOrientation.MIN_MAX);
        scaling.addNewMax().setVal(axis.to());
        scaling.addNewMin().setVal(axis.from());
        ax.addNewDelete().setVal(false);
        ax.addNewAxPos().setVal(side);
        axis.fold(scale -> title(ax, scale.title()), names -> 0);
        var format = ax.addNewNumFmt();
        format.setFormatCode(axis.fold(NativeAxes::format, r -> "General"));
        format.setSourceLinked(false);
        ax.addNewMajorTickMark().setVal(rows ? STTickMark.NONE : STTickMark.OUT);
        ax.addNewMinorTickMark().setVal(STTickMark.NONE);
        ax.addNewTickLblPos().setVal(rows ? STTickLblPos.NONE : STTickLblPos.NEXT_TO);
        strokes.line(ax.addNewSpPr(), Trace.SOLID, Ink.GREY.rgb(), 1);
        var text = ax.addNewTxPr();
        text.addNewBodyPr();
        var run = text.addNewP().addNewPPr().addNewDefRPr();
        run.setSz((int) Math.round(look.size() * 100));
        Strokes.colour(run.addNewSolidFill(), Ink.INK.rgb());
        run.addNewLatin().setTypeface(look.face());
        ax.addNewCrossAx().setVal(other);
        ax.addNewCrosses().setVal(crosses);
        ax.addNewMajorUnit().setVal(axis.fold(scale -> step(scale.ticks()), r -> 1.0));
    }

    private int title(CTValAx ax, String text) {
        if (!text.isEmpty()) {
            title(ax.addNewTitle(), text, look);
        }
        return text.length();
    }

    /** Sets the title of a chart or an axis. */
    static void title(CTTitle title, String text, NativeLook look) {
        var rich = title.addNewTx().addNewRich();
        rich.addNewBodyPr();
        var run = rich.addNewP().addNewR();
        var properties = run.addNewRPr();
        properties.setSz((int) Math.round(look.size() * 100));
        properties.setB(false);
        Strokes.colour(properties.addNewSolidFill(), Ink.INK.rgb());
        properties.addNewLatin().setTypeface(look.face());
        run.setT(text);
        title.addNewOverlay().setVal(false);
    }

    private static double step(List<Axis.Tick> ticks) {
        return ticks.size() < 2 ? 1 : ticks.get(1).at() - ticks.get(0).at();
    }

    /** As many decimals as the ticks are printed with; the program sets its own decimal sign. */
    private static String format(Axis.Scale scale) {
        int decimals = scale.ticks().stream()
                .map(Axis.Tick::label)
                .mapToInt(l ->
                        l.matches(".*[.,]\\d+") ? l.length() - Math.max(l.lastIndexOf('.'), l.lastIndexOf(',')) - 1 : 0)
                .max()
                .orElse(0);
        return decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    }
}
