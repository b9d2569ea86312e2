package comparand.write.figure;

import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import java.util.ArrayList;
import java.util.List;

/** The panels of a figure on the sheet: their widths, then their heights, grown until all labels have found a place. */
final class Panels {

    private static final double NARROWEST = 150;
    private static final double BETWEEN = 10;
    /** How often heights grow at most; a label without a place by then is written where it does least harm. */
    private static final int MOST_TRIES = 60;

    private final Measure measure;
    private final List<List<Grown>> bands = new ArrayList<>();

    Panels(Plot chart, double width, Measure measure) {
        this.measure = measure;
        double shares = chart.panels().stream().mapToDouble(Panel::share).sum();
        double room = width - BETWEEN * (chart.panels().size() - 1);
        boolean beside = chart.panels().stream().allMatch(p -> room * p.share() / shares >= NARROWEST);
        if (beside) {
            var band = new ArrayList<Grown>();
            double left = 0;
            for (var panel : chart.panels()) {
                double own = room * panel.share() / shares;
                band.add(new Grown(new PanelFrame(panel, measure, left, own)));
                left += own + BETWEEN;
            }
            bands.add(band);
        } else {
            chart.panels().forEach(p -> bands.add(List.of(new Grown(new PanelFrame(p, measure, 0, width)))));
        }
    }

    /** Draws all panels and returns the height below them. */
    double draw(Surface surface) {
        double top = 0;
        for (var band : bands) {
            top = settled(band, top, surface) + BETWEEN;
        }
        return top - BETWEEN;
    }

    private double settled(List<Grown> band, double top, Surface surface) {
        for (int tries = 0; ; tries++) {
            var strokes = new Recorded();
            boolean room = true;
            double head = band.stream().mapToDouble(Grown::head).max().orElseThrow();
            double plot = band.stream().mapToDouble(Grown::plot).max().orElseThrow();
            double foot = band.stream().mapToDouble(g -> g.frame().foot()).max().orElseThrow();
            for (var panel : band) {
                room &= panel.draw(top, head, plot, foot, tries == MOST_TRIES, measure, strokes);
            }
            if (room || tries == MOST_TRIES) {
                strokes.replay(surface);
                return top + head + plot + foot;
            }
        }
    }
}
