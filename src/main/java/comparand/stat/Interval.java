package comparand.stat;

import java.util.function.DoubleUnaryOperator;

/** Two limits, the lower first. */
public record Interval(double low, double high) {

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval runs upwards, got %s to %s".formatted(low, high));
        }
    }

    public static Interval around(double centre, double halfWidth) {
        return new Interval(centre - halfWidth, centre + halfWidth);
    }

    public boolean contains(double x) {
        return low <= x && x <= high;
    }

    /** Whether every point lies strictly between the two bounds. */
    public boolean insideOf(double below, double above) {
        return below < low && high < above;
    }

    public double halfWidth() {
        return (high - low) / 2;
    }

    public Interval map(DoubleUnaryOperator increasing) {
        return new Interval(increasing.applyAsDouble(low), increasing.applyAsDouble(high));
    }
}
