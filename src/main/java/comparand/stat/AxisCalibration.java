package comparand.stat;

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

    /** A value read, with its standard uncertainty. */
    public record Reading(double value, double uncertainty) {}

    /**
     * The mean of the readings of one value.
     *
     * @param pointUncertainty standard uncertainty of one placing, in picture points; the scatter of repeated readings is
     *     added in quadrature
     */
    public Reading read(double pointUncertainty, double... points) {
        double p = 0;
        for (double point : points) {
            p += point / points.length;
        }
        double t = (p - p1) / (p2 - p1);
        double slope = (scaled(y2) - scaled(y1)) / (p2 - p1);
        double scatter = points.length < 2 ? 0 : Moments.of(points).sd();
        double u = Math.abs(slope) * Math.hypot(pointUncertainty * Math.sqrt(1 + t * t + (1 - t) * (1 - t)), scatter);
        double y = scaled(y1) + slope * (p - p1);
        return logarithmic ? new Reading(Math.pow(10, y), Math.pow(10, y) * Math.log(10) * u) : new Reading(y, u);
    }

    /** How far a third tick lies off the line through the two, as a share of the span between them. */
    public double residualOf(double p3, double y3) {
        double slope = (scaled(y2) - scaled(y1)) / (p2 - p1);
        return Math.abs(scaled(y3) - (scaled(y1) + slope * (p3 - p1))) / Math.abs(scaled(y2) - scaled(y1));
    }

    private double scaled(double y) {
        return logarithmic ? Math.log10(y) : y;
    }
}
