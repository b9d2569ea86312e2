package comparand.write.figure;

import java.util.ArrayList;
import java.util.List;

/** A panel with the heights it has reached. */
final class Grown {

    private static final double ROW_STEP = 3;
    private static final double PLOT_STEP = 1.04;

    private final PanelFrame frame;
    private final List<Double> rows;
    private double plot;
    private double strip;

    Grown(PanelFrame frame) {
        this.frame = frame;
        this.rows = new ArrayList<>(frame.rows());
        this.plot = frame.plotHeight();
        this.strip = PanelDrawing.needsStrip(frame) ? Type.LEADING + Type.GAP : 0;
    }

    PanelFrame frame() {
        return frame;
    }

    double head() {
        return frame.head() + strip;
    }

    double plot() {
        return rows.isEmpty()
                ? plot
                : rows.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * Draws the panel; what has no room for its labels grows for the next time.
     *
     * @param head shared by all panels side by side, as are {@code height}, of the plot, and {@code foot}
     * @param last whether there is no next time
     * @return whether all labels had room
     */
    boolean draw(double top, double head, double height, double foot, boolean last, Measure measure, Surface surface) {
        var plotBox = new Box(frame.plotLeft(), top + head, frame.plotRight(), top + head + height);
        double stretch = height / plot();
        var places = new Places(
                frame.panel().across(),
                frame.panel().up(),
                plotBox,
                rows.stream().map(r -> r * stretch).toList());
        if (frame.panel().framed()) {
            double bottom = top + head + height + foot - 0.5;
            surface.polygon(
                    List.of(
                            new Spot(frame.left() + 0.5, top + 0.5),
                            new Spot(frame.right() - 0.5, top + 0.5),
                            new Spot(frame.right() - 0.5, bottom),
                            new Spot(frame.left() + 0.5, bottom)),
                    Paint.outlined(Pen.whole(Type.HAIR, 0.75)));
        }
        var axes = new AxisDrawing(frame, places, measure, surface);
        axes.ground();
        var tooLow = new PanelDrawing(frame, places, strip, measure, surface).draw(last);
        axes.axes();
        axes.headings(top);
        for (int row : tooLow) {
            if (row == PanelDrawing.STRIP) {
                strip += Type.LEADING;
            } else if (rows.isEmpty()) {
                plot *= PLOT_STEP;
            } else {
                rows.set(row, rows.get(row) * stretch + ROW_STEP);
            }
        }
        return tooLow.isEmpty();
    }
}
