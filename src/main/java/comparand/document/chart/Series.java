package comparand.document.chart;

import java.util.List;
import java.util.Optional;

/**
 * Points that belong together.
 *
 * @param name for the key of a native chart and for who reads the data
 * @param trace how the points are joined, in their order
 * @param endLabel written beside the last point, in place of a key; may be empty
 */
public record Series(String name, Mark mark, Trace trace, Ink ink, List<Point> points, String endLabel) {

    public Series {
        points = List.copyOf(points);
        if (name.isBlank() || points.isEmpty()) {
            throw new IllegalArgumentException("a series has a name and points");
        }
    }

    /**
     * A point.
     *
     * @param acrossInterval an interval along the axis across, absent where there is none
     * @param upInterval the same along the axis up
     * @param label written beside it; may be empty
     */
    public record Point(
            double across, double up, Optional<Extent> acrossInterval, Optional<Extent> upInterval, String label) {

        public Point {
            if (!Double.isFinite(across) || !Double.isFinite(up)) {
                throw new IllegalArgumentException("a point lies somewhere");
            }
        }
    }

    /** From the lower to the upper end of an interval. */
    public record Extent(double low, double high) {
        public Extent {
            if (!(low <= high)) {
                throw new IllegalArgumentException("an interval goes up: %s to %s".formatted(low, high));
            }
        }
    }
}
