package comparand.stat;

/**
 * From the spreads that papers print to a standard deviation.
 *
 * <p>The exact conversions are algebra on printed numbers; the estimated ones assume a roughly symmetric, bell-shaped
 * distribution and say so.
 */
public final class SpreadConversion {

    /** From this number on, published intervals of a mean are taken as normal ones (Cochrane Handbook 6.5.2.2). */
    private static final int NORMAL_FROM = 100;

    private SpreadConversion() {}

    /** {@code SD = SE · √n}; Cochrane Handbook for Systematic Reviews of Interventions, section 6.5.2.2. */
    public static double sdFromSe(double se, int n) {
        requireCount(n, 2);
        return se * Math.sqrt(n);
    }

    /**
     * {@code SD = √n · (upper - lower) / (2 q)}, where q is the quantile of Student's t on {@code n - 1} degrees of
     * freedom, and of the normal distribution from n = 100 on; Cochrane Handbook, section 6.5.2.2. For the interval of one
     * mean only, not of a model or of a clustered design.
     */
    public static double sdFromInterval(Interval ci, int n, double level) {
        requireCount(n, 2);
        return Math.sqrt(n) * (ci.high() - ci.low()) / (2 * intervalQuantile(n, level));
    }

    static double intervalQuantile(int n, double level) {
        requireCount(n, 2);
        return Quantiles.tTwoSided(level, n >= NORMAL_FROM ? Double.POSITIVE_INFINITY : n - 1);
    }

    /**
     * How far the standard error taken from rounded limits may be off: {@code (a/√3)·√2 / (2t)}, where {@code a} is half
     * a unit of the last printed digit.
     */
    public static double uncertaintyOfSeFromRoundedLimits(double a, int n, double level) {
        requireCount(n, 2);
        return a / Math.sqrt(3) * Math.sqrt(2) / (2 * intervalQuantile(n, level));
    }

    /**
     * Estimated SD from quartiles: {@code (q₃ - q₁) / (2 z((0.75n - 0.125)/(n + 0.25)))}; Wan et al., BMC Med Res
     * Methodol 2014;14:135, scenario C3.
     */
    public static double sdFromQuartiles(double q1, double q3, int n) {
        requireCount(n, 2);
        return (q3 - q1) / (2 * Quantiles.z((0.75 * n - 0.125) / (n + 0.25)));
    }

    /**
     * Estimated mean from quartiles: {@code w(q₁ + q₃)/2 + (1 - w)m} with {@code w = 0.7 + 0.39/n}; Luo et al., Stat
     * Methods Med Res 2018;27:1785-1805.
     */
    public static double meanFromQuartiles(double q1, double median, double q3, int n) {
        requireCount(n, 2);
        double w = 0.7 + 0.39 / n;
        return w * (q1 + q3) / 2 + (1 - w) * median;
    }

    /**
     * Whether quartiles look skewed: {@code |q₁ + q₃ - 2m| / (q₃ - q₁) > 2.65/√n - 6/n²}; Shi et al., Res Synth Methods
     * 2020, the skewness test for summary data.
     */
    public static boolean quartilesLookSkewed(double q1, double median, double q3, int n) {
        return Math.abs(q1 + q3 - 2 * median) > (q3 - q1) * (2.65 / Math.sqrt(n) - 6.0 / ((double) n * n));
    }

    /**
     * Estimated SD from the range: {@code (b - a) / ξ(n)} with {@code ξ(n) = 2 E[largest of n standard normals]}, the
     * exact divisor of Wan et al. 2014, Table 1.
     */
    public static double sdFromRange(double min, double max, int n) {
        return (max - min) / expectedRange(n);
    }

    /**
     * Estimated mean from a median and a range: {@code w(a + b)/2 + (1 - w)m} with {@code w = 4/(4 + n^0.75)}; Luo et al.
     * 2018.
     */
    public static double meanFromRange(double min, double median, double max, int n) {
        requireCount(n, 2);
        double w = 4 / (4 + Math.pow(n, 0.75));
        return w * (min + max) / 2 + (1 - w) * median;
    }

    /**
     * Estimated SD from the range without the integral: {@code (b - a) / (2 z((n - 0.375)/(n + 0.25)))}; Wan et al. 2014,
     * scenario C1. Papers use it; {@link #sdFromRange} is exact.
     */
    public static double sdFromRangeApproximately(double min, double max, int n) {
        requireCount(n, 2);
        return (max - min) / (2 * Quantiles.z((n - 0.375) / (n + 0.25)));
    }

    /** {@code (q₃ - q₁)/(2 z(0.75))}: the SD from quartiles of an unknown number of values; the limit of Wan's for many. */
    public static double sdFromQuartiles(double q1, double q3) {
        return (q3 - q1) / (2 * Quantiles.z(0.75));
    }

    /**
     * Whether extremes look skewed: {@code |a + b - 2m| / (b - a) > 1.01/ln(n + 9) + 2.43/(n + 1)}; Shi et al., the
     * skewness test for summary data.
     */
    public static boolean extremesLookSkewed(double min, double median, double max, int n) {
        return Math.abs(min + max - 2 * median) > (max - min) * (1.01 / Math.log(n + 9.0) + 2.43 / (n + 1.0));
    }

    /**
     * {@code ξ(n) = 2n ∫ z Φ(z)^(n-1) φ(z) dz}: the expected range of n standard normal values, by Gauss-Legendre on panels
     * of half a standard deviation.
     */
    static double expectedRange(int n) {
        requireCount(n, 2);
        return Quadrature.integrate(
                z -> 2.0 * n * z * Math.pow(Quantiles.normal(z), n - 1) * Quantiles.normalDensity(z), -9, 9, 36);
    }

    static void requireCount(int n, int least) {
        if (n < least) {
            throw new IllegalArgumentException("needs at least %d values, got %d".formatted(least, n));
        }
    }
}
