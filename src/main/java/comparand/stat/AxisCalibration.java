package comparand.stat;

import java.util.Arrays;
import java.util.List;

/**
 * The axis of a figure, calibrated by two ticks at picture points {@code p1} and {@code p2} of values {@code y1} and
 * {@code y2}.
 *
 * <pre>
 * S = (y₂ - y₁)/(p₂ - p₁),  y = y₁ + S (p - p₁),  t = (p - p₁)/(p₂ - p₁)
 * u(y) = |S| · u(p) · √(1 + t² + (1 - t)²)
 * </pre>
 *
 * <p>by linear propagation of one uncertainty for the point and both ticks (JCGM 100:2008, 5.1.2). A logarithmic axis is
 * linear in log₁₀ y.
 */
public record AxisCalibration(double p1, double y1, double p2, double y2, boolean logarithmic) {

    public AxisCalibration {
        if (p1 == p2 || y1 == y2) {
            throw new IllegalArgumentException("two ticks of an axis differ in place and value");
        }
        if (logarithmic && !(y1 > 0 && y2 > 0)) {
            throw new IllegalArgumentException("a logarithmic axis has positive values only");
        }
    }

    /**
     * A value read, with the parts of its standard uncertainty, in the unit of the axis.
     *
     * @param placing of the mark and of both ticks
     * @param centre of the mark, where its centre is uncertain
     * @param repeats by the same person
     * @param readers between persons
     */
    public record Reading(double value, double placing, double centre, double repeats, double readers) {

        /** All parts in quadrature. */
        public double uncertainty() {
            return Math.hypot(Math.hypot(placing, centre), Math.hypot(repeats, readers));
        }
    }

    /**
     * Both ends of an error bar read.
     *
     * @param halfLength half the distance of its ends
     * @param uncertainty standard uncertainty of the half-length, from placing both ends and both ticks
     */
    public record Bar(double low, double high, double halfLength, double uncertainty) {}

    /** The readings of one value by one person, who is sure of the centre of the mark. */
    public Reading read(double pointUncertainty, double... points) {
        return read(new Placings(
                pointUncertainty, 0, List.of(Arrays.stream(points).boxed().toList())));
    }

    /** The value of a mark; the centre of the mark, repeats and readers are added in quadrature. */
    public Reading read(Placings placings) {
        double y = at(placings.mean());
        double t = share(placings.mean());
        double perPoint = Math.abs(steepness(y));
        return new Reading(
                y,
                perPoint * placings.uncertainty() * Math.sqrt(1 + t * t + (1 - t) * (1 - t)),
                perPoint * placings.centre(),
                perPoint * placings.repeats(),
                perPoint * placings.readers());
    }

    /**
     * An error bar from its two ends, in either order. Both ends share the ticks, so their errors are not independent: with
     * {@code g = dy/dp} at each end,
     *
     * <pre>
     * u(w) = u(p)/2 · √(gₐ² + g_b² + (gₐ(1 - tₐ) - g_b(1 - t_b))² + (gₐtₐ - g_bt_b)²)
     * </pre>
     */
    public Bar bar(double pointUncertainty, double a, double b) {
        double ga = steepness(at(a));
        double gb = steepness(at(b));
        double byFirst = ga * (1 - share(a)) - gb * (1 - share(b));
        double bySecond = ga * share(a) - gb * share(b);
        double low = Math.min(at(a), at(b));
        double high = Math.max(at(a), at(b));
        return new Bar(
                low,
                high,
                (high - low) / 2,
                pointUncertainty / 2 * Math.hypot(Math.hypot(ga, gb), Math.hypot(byFirst, bySecond)));
    }

    /** The value at a picture point. */
    public double at(double p) {
        double y = scaled(y1) + slope() * (p - p1);
        return logarithmic ? Math.pow(10, y) : y;
    }

    /** How far a third tick lies off the line through the two, as a share of the span between them. */
    public double residualOf(double p3, double y3) {
        return Math.abs(scaled(y3) - (scaled(y1) + slope() * (p3 - p1))) / Math.abs(scaled(y2) - scaled(y1));
    }

    /** The same in the unit of the axis: what is printed at the tick, less what would be read there. */
    public double offAt(double p3, double y3) {
        return y3 - at(p3);
    }

    /** Of the way from the first tick to the second. */
    private double share(double p) {
        return (p - p1) / (p2 - p1);
    }

    private double slope() {
        return (scaled(y2) - scaled(y1)) / (p2 - p1);
    }

    /** By how much the value changes from one picture point to the next, where it is y. */
    private double steepness(double y) {
        return logarithmic ? y * Math.log(10) * slope() : slope();
    }

    private double scaled(double y) {
        return logarithmic ? Math.log10(y) : y;
    }
}
