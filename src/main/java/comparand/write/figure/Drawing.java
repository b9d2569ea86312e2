package comparand.write.figure;

import comparand.document.chart.Chart;
import java.util.List;

/**
 * A chart laid out for a width: where every line and letter stands. It can be painted on any surface, as often as wanted.
 *
 * <p>Panels stand side by side where there is room, one below the other on a narrow figure. Rows and plots grow until every
 * label has a place of its own. The boxes of a diagram grow with their text.
 */
public final class Drawing {

    private final double width;
    private final double height;
    private final Recorded strokes;

    private Drawing(double width, double height, Recorded strokes) {
        this.width = width;
        this.height = height;
        this.strokes = strokes;
    }

    /**
     * Lays a chart out.
     *
     * @param width in points
     */
    public static Drawing of(Chart chart, double width, Measure measure) {
        var strokes = new Recorded();
        double height = chart.fold(
                plot -> {
                    double below = new Panels(plot, width, measure).draw(strokes);
                    return new Legend(plot.key(), plot.notes(), measure, width, strokes).draw(below + 2 * Type.GAP);
                },
                diagram -> {
                    double below = new Cards(diagram, width, measure, strokes).draw();
                    return new Legend(List.of(), diagram.notes(), measure, width, strokes).draw(below + 2 * Type.GAP);
                });
        return new Drawing(width, height + 1, strokes);
    }

    /** In points. */
    public double width() {
        return width;
    }

    /** In points. */
    public double height() {
        return height;
    }

    public void paint(Surface surface) {
        strokes.replay(surface);
    }
}
