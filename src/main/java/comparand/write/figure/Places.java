package comparand.write.figure;

import comparand.document.chart.Axis;
import java.util.List;

/** Where coordinates of a panel stand on the surface. Rows may differ in height, the numbers of a scale may not. */
final class Places {

    private final Axis across;
    private final Axis up;
    private final Box plot;
    private final List<Double> heights;

    /**
     * @param heights of the rows of the axis up, from the top; empty where it is a scale
     */
    Places(Axis across, Axis up, Box plot, List<Double> heights) {
        this.across = across;
        this.up = up;
        this.plot = plot;
        this.heights = List.copyOf(heights);
    }

    Box plot() {
        return plot;
    }

    double x(double at) {
        return plot.left() + plot.width() * (at - across.from()) / (across.to() - across.from());
    }

    double y(double at) {
        return up.fold(
                scale -> plot.bottom() - plot.height() * (at - scale.from()) / (scale.to() - scale.from()),
                rows -> inRows(at));
    }

    private double inRows(double at) {
        double kept = Math.min(Math.max(at, up.from()), up.to());
        int row = Math.min(heights.size() - 1, (int) Math.floor(kept + 0.5));
        return rowTop(row) + (kept + 0.5 - row) * heights.get(row);
    }

    double rowTop(int row) {
        double top = plot.top();
        for (int i = 0; i < row; i++) {
            top += heights.get(i);
        }
        return top;
    }

    double rowHeight(int row) {
        return heights.get(row);
    }

    Spot spot(double acrossAt, double upAt) {
        return new Spot(x(acrossAt), y(upAt));
    }

    /** The row a coordinate of the axis up lies in. */
    int row(double at) {
        return Math.min(Math.max(0, (int) Math.floor(at + 0.5)), Math.max(0, heights.size() - 1));
    }

    /** The room in which the label of a point there has to stay: its row, or the whole plot. */
    Box bounds(double at) {
        if (heights.isEmpty()) {
            return plot;
        }
        int row = row(at);
        return new Box(plot.left(), rowTop(row) + 0.8, plot.right(), rowTop(row) + rowHeight(row) - 0.8);
    }

    double keptX(double at) {
        return Math.min(Math.max(x(at), plot.left()), plot.right());
    }

    double keptY(double at) {
        return Math.min(Math.max(y(at), plot.top()), plot.bottom());
    }

    boolean insideAcross(double at) {
        return at >= across.from() && at <= across.to();
    }

    boolean insideUp(double at) {
        return at >= Math.min(up.from(), up.to()) && at <= Math.max(up.from(), up.to());
    }
}
