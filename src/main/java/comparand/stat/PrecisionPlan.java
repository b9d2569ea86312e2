package comparand.stat;

/**
 * How many cases give an interval of a wanted half-width h, for a mean or for a difference.
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
        return halfWidth(ComparedGroups.FIXED_VALUE, n, sd, level);
    }

    /** The smallest n whose half-width at the planning SD is no larger than wanted. */
    public static Derived<Integer> count(double sd, double halfWidth, double level) {
        return count(ComparedGroups.FIXED_VALUE, sd, halfWidth, level);
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

    /** {@code t SE} of a difference, with n results in every group that is to be measured: {@code t(2n-2) s √(2/n)} for two. */
    public static double halfWidth(ComparedGroups groups, int n, double sd, double level) {
        SpreadConversion.requireCount(n, 2);
        return groups.factor(sd, n, level) * groups.se(sd, n);
    }

    /**
     * The smallest n in every group to be measured whose half-width at the planning SD is no larger than wanted; refused where
     * none suffices, as against a known mean that is too uncertain itself.
     */
    public static Derived<Integer> count(ComparedGroups groups, double sd, double halfWidth, double level) {
        return groups.smallest(MOST, n -> halfWidth(groups, n, sd, level) <= halfWidth);
    }

    /** {@code s √(v/χ²(1-confidence, v))}: the SD of a pilot that the true one stays below, for planning. */
    public static double upperSd(double pilotSd, double df, double confidence) {
        Quantiles.requireLevel(confidence);
        return pilotSd * Math.sqrt(df / Quantiles.chiSquared(1 - confidence, df));
    }
}
