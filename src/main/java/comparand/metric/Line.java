package comparand.metric;

/** A straight line {@code y = slope · x + intercept}. */
public record Line(double slope, double intercept) {

    /** The y of an x. */
    public double at(double x) {
        return slope * x + intercept;
    }

    /** The x of a y; not finite if the line is level. */
    public double inverse(double y) {
        return (y - intercept) / slope;
    }
}
