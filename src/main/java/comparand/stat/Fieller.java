package comparand.stat;

/**
 * The interval of a ratio of two estimated means, which need not be independent.
 *
 * <p>The roots of {@code (x̄² - t²v_x)R² - 2(x̄ȳ - t²c)R + (ȳ² - t²v_y) = 0}; where {@code x̄² <= t²v_x} the denominator may
 * be zero and no limits are determined. Fieller, J R Stat Soc B 1954;16:175-185 (from memory).
 */
public final class Fieller {

    private Fieller() {}

    /**
     * The interval of {@code numerator/denominator}.
     *
     * @param covariance of the two means; 0 where they are independent
     * @param t the quantile of the level wanted, on the degrees of freedom of the standard errors
     */
    public static Derived<Interval> of(MeanEstimate numerator, MeanEstimate denominator, double covariance, double t) {
        double a = Math.pow(denominator.mean(), 2) - Math.pow(t * denominator.se(), 2);
        double b = numerator.mean() * denominator.mean() - t * t * covariance;
        double c = Math.pow(numerator.mean(), 2) - Math.pow(t * numerator.se(), 2);
        if (!(a > 0)) {
            return Derived.refused(Refusal.UNBOUNDED);
        }
        // not negative with a > 0, but for rounding
        double root = Math.sqrt(Math.max(0, b * b - a * c));
        return Derived.of(new Interval((b - root) / a, (b + root) / a));
    }
}
