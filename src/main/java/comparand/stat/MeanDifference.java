package comparand.stat;

/**
 * The difference of two independent estimated means, without assuming equal spreads.
 *
 * <pre>
 * D = m₁ - m₂,  SE² = SE₁² + SE₂²,  df = SE⁴ / (SE₁⁴/df₁ + SE₂⁴/df₂)
 * </pre>
 *
 * <p>Welch, Biometrika 1947;34:28-35; Satterthwaite, Biometrics Bulletin 1946;2:110-114.
 *
 * @param value the first mean minus the second
 */
public record MeanDifference(double value, double se, double df) {

    public static MeanDifference of(MeanEstimate first, MeanEstimate second) {
        double a = first.se() * first.se();
        double b = second.se() * second.se();
        double v = a + b;
        double df = v == 0 ? Math.min(first.df(), second.df()) : v * v / (a * a / first.df() + b * b / second.df());
        return new MeanDifference(first.mean() - second.mean(), Math.sqrt(v), df);
    }

    /** An estimated mean against a figure taken as exact. */
    public static MeanDifference from(MeanEstimate estimate, double figure) {
        return new MeanDifference(estimate.mean() - figure, estimate.se(), estimate.df());
    }

    public Interval interval(double level) {
        return Interval.around(value, se == 0 ? 0 : Quantiles.tTwoSided(level, df) * se);
    }

    public double t() {
        return value / se;
    }

    /** Two-sided probability of a difference at least as large, were the true difference zero. */
    public double p() {
        return se == 0 ? (value == 0 ? 1 : 0) : Quantiles.tTailTwoSided(t(), df);
    }
}
