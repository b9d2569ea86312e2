package comparand.stat;

/**
 * How many cases give an interval of a wanted half-width h.
 *
 * <p>NIST/SEMATECH e-Handbook 7.2.2.2. The half-width is met at the planning SD, so with a probability of about a half, unless
 * an assurance is asked for.
 */
public final class PrecisionPlan {

    private static final int MOST = 1_000_000;

    private PrecisionPlan() {}

    /** {@code (z s/h)²}, not rounded up. */
    public static double normalCount(double sd, double halfWidth, double level) {
        return Math.pow(Quantiles.tTwoSided(level, Double.POSITIVE_INFINITY) * sd / halfWidth, 2);
    }

    /** {@code t(n-1) s/√n}. */
    public static double halfWidth(int n, double sd, double level) {
        SpreadConversion.requireCount(n, 2);
        return Quantiles.tTwoSided(level, n - 1) * sd / Math.sqrt(n);
    }

    /** The smallest n whose half-width at the planning SD is no larger than wanted. */
    public static Derived<Integer> count(double sd, double halfWidth, double level) {
        return Smallest.from(2, MOST, n -> halfWidth(n, sd, level) <= halfWidth);
    }

    /**
     * The smallest n whose half-width is no larger than wanted with a probability: the SD is taken as
     * {@code s √(χ²(assurance, n-1)/(n-1))}, which it then stays below.
     */
    public static Derived<Integer> count(double sd, double halfWidth, double level, double assurance) {
        Quantiles.requireLevel(assurance);
        return Smallest.from(
                2,
                MOST,
                n -> halfWidth(n, sd * Math.sqrt(Quantiles.chiSquared(assurance, n - 1) / (n - 1)), level)
                        <= halfWidth);
    }

    /** {@code s √(v/χ²(1-confidence, v))}: the SD of a pilot that the true one stays below, for planning. */
    public static double upperSd(double pilotSd, double df, double confidence) {
        Quantiles.requireLevel(confidence);
        return pilotSd * Math.sqrt(df / Quantiles.chiSquared(1 - confidence, df));
    }
}
