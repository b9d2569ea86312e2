package comparand.stat;

/**
 * The standard error behind a printed confidence interval of one mean.
 *
 * <p>{@code SE = (upper - lower) / (2q)}, q the quantile of Student's t, or of the normal distribution from n = 100 on
 * (Cochrane Handbook for Systematic Reviews of Interventions, 6.5.2.2). Limits that are not centred on the mean are tried
 * on the logarithmic scale, where those of a geometric mean or of a ratio are centred.
 */
public final class IntervalConversion {

    /** How far off the middle a mean may lie, as a share of the width. */
    private static final double CENTRED_WITHIN = 0.02;

    /** From this relative uncertainty of the standard error on, limits are rounded too coarsely; a convention. */
    private static final double COARSE = 0.3;

    private IntervalConversion() {}

    /** The scale on which the limits are centred. */
    public enum Scale {
        PLAIN,
        LOGARITHMIC
    }

    /**
     * A mean with its standard error, on the scale named.
     *
     * @param relativeRounding the standard uncertainty of the SE from the rounding of the limits, as a share of the SE
     */
    public record Converted(Scale scale, double mean, double se, int n, double relativeRounding) {

        /** {@code SD = SE · √n}. */
        public Moments moments() {
            return new Moments(mean, SpreadConversion.sdFromSe(se, n), n);
        }
    }

    /**
     * Converts limits whose last printed digit is known to within {@code ± rounding}.
     *
     * @param n cases, at least 2
     * @throws IllegalArgumentException if n, the level or the rounding is none
     */
    public static Derived<Converted> of(double mean, Interval limits, int n, double level, double rounding) {
        return at(mean, limits, n, rounding, SpreadConversion.intervalQuantile(n, level));
    }

    /** The same for limits that the source says were taken from the normal distribution. */
    public static Derived<Converted> ofNormal(double mean, Interval limits, int n, double level, double rounding) {
        return at(mean, limits, n, rounding, Quantiles.tTwoSided(level, Double.POSITIVE_INFINITY));
    }

    private static Derived<Converted> at(double mean, Interval limits, int n, double rounding, double q) {
        if (!(rounding >= 0)) {
            throw new IllegalArgumentException("a rounding is not negative, got " + rounding);
        }
        if (limits.low() == limits.high()) {
            return Derived.refused(Refusal.NO_SPREAD);
        }
        // both limits are rectangular with half-width a: u(width) = √2 a/√3
        double relative = Math.sqrt(2.0 / 3) * rounding / (limits.high() - limits.low());
        if (relative > COARSE) {
            return Derived.refused(Refusal.ROUNDED_TOO_COARSELY);
        }
        if (centred(mean, limits, rounding)) {
            return Derived.of(new Converted(Scale.PLAIN, mean, limits.halfWidth() / q, n, relative));
        }
        if (mean > 0 && limits.low() > 0) {
            var logs = limits.map(Math::log);
            if (centred(Math.log(mean), logs, rounding / limits.low())) {
                double half = logs.halfWidth();
                double u = rounding / Math.sqrt(3) * Math.hypot(1 / limits.low(), 1 / limits.high());
                return Derived.of(new Converted(Scale.LOGARITHMIC, Math.log(mean), half / q, n, u / (2 * half)));
            }
        }
        return Derived.refused(Refusal.LIMITS_NOT_CENTRED);
    }

    private static boolean centred(double mean, Interval limits, double rounding) {
        double off = Math.abs(mean - (limits.low() + limits.high()) / 2);
        // the mean is rounded as its limits are; the middle of two rounded limits adds as much again
        return off <= Math.max(2 * rounding, CENTRED_WITHIN * (limits.high() - limits.low()));
    }
}
