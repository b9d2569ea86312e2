package comparand.write.pptx;

import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.talk.layout.Box;
import comparand.document.talk.layout.Stage;
import comparand.write.chart.DataPlace;
import comparand.write.chart.NativeChart;
import comparand.write.chart.NativeLook;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xslf.usermodel.XSLFChart;
import org.apache.poi.xslf.usermodel.XSLFSlide;

/** Draws a figure as native charts side by side, one a panel, each with its numbers in a workbook of its own. */
final class DrawingSetter {

    /** Between panels, so that the eye does not slide across. */
    private static final double GAP = 16;

    private final XSLFSlide slide;
    private final Box place;
    private final Stage stage;
    private final TextSetter text;

    DrawingSetter(XSLFSlide slide, Box place, Stage stage, TextSetter text) {
        this.slide = slide;
        this.place = place;
        this.stage = stage;
        this.text = text;
    }

    /** How many panels were drawn. */
    int set(Plot chart) {
        double shares = chart.panels().stream().mapToDouble(Panel::share).sum();
        double width = place.width() - GAP * (chart.panels().size() - 1);
        double x = place.x();
        int number = 0;
        for (var panel : chart.panels()) {
            double own = width * panel.share() / shares;
            panel(chart, panel, number, new Box(x, place.y(), own, place.height()));
            x += own + GAP;
            number++;
        }
        return number;
    }

    private void panel(Plot chart, Panel panel, int number, Box box) {
        try {
            XSLFChart target = slide.getSlideShow().createChart();
            slide.addChart(
                    target,
                    new Rectangle2D.Double(
                            Units.toEMU(box.x()),
                            Units.toEMU(box.y()),
                            Units.toEMU(box.width()),
                            Units.toEMU(box.height())));
            NativeChart.fill(target, panel, NativeLook.slide(stage.face()), DataPlace.within(target));
            // the workbook within has a stamp of its own
            var core = target.getWorkbook().getProperties().getCoreProperties();
            core.setCreated(text.stamp());
            core.setModified(text.stamp());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException e) {
            throw new IllegalStateException("the workbook of a new chart is broken", e);
        }
        var shapes = slide.getShapes();
        TextSetter.named(
                shapes.get(shapes.size() - 1),
                chart.id() + (number == 0 ? "" : "-" + (number + 1)),
                chart.alternative());
    }
}
