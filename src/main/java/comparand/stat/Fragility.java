package comparand.stat;

/**
 * How uncertain a published figure would have to be for a clear difference from it to become unclear: a figure printed
 * without spread hides its own standard error.
 */
public final class Fragility {

    private Fragility() {}

    /**
     * {@code √( (D/z)² - SE² )}, at least 0: the smallest standard error of the figure with which the interval of the
     * difference would include zero. Approximate: normal, not Student's, and 0 where the difference is not clear as it is.
     */
    public static double seOfFigure(MeanDifference difference, double level) {
        double z = Quantiles.tTwoSided(level, Double.POSITIVE_INFINITY);
        double left = Math.pow(difference.value() / z, 2) - difference.se() * difference.se();
        return Math.sqrt(Math.max(0, left));
    }
}
