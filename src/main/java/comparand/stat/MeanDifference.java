package comparand.stat;

import java.util.Optional;

/**
 * The difference of two independent estimated means, without assuming equal spreads.
 *
 * <pre>
 * D = m₁ - m₂,  SE² = SE₁² + SE₂²,  df = SE⁴ / (SE₁⁴/df₁ + SE₂⁴/df₂)
 * </pre>
 *
 * <p>Welch, Biometrika 1947;34:28-35; Satterthwaite, Biometrics Bulletin 1946;2:110-114. Where one side rests on few degrees of
 * freedom and the other on many, the cautious reference of {@link CochranCox} takes the place of Student's t.
 *
 * @param value the first mean minus the second
 * @param df after Welch and Satterthwaite
 * @param cautious the reference used in place of Student's t on {@code df}; empty where that holds its level
 */
public record MeanDifference(double value, double se, double df, Optional<CochranCox> cautious) {

    /**
     * With no more degrees of freedom on one side than this and many more on the other, Welch's errors exceed their level,
     * and the more so the farther out the tail that Holm's adjustment looks at.
     */
    private static final double FEW_DF = 7;

    private static final double UNLIKE_DF = 2.5;

    /** On Student's t. */
    public MeanDifference(double value, double se, double df) {
        this(value, se, df, Optional.empty());
    }

    /** With the reference that keeps its level for these degrees of freedom (see the calibration report). */
    public static MeanDifference of(MeanEstimate first, MeanEstimate second) {
        var welch = welch(first, second);
        double fewer = Math.min(first.df(), second.df());
        double more = Math.max(first.df(), second.df());
        return first.se() > 0 && second.se() > 0 && fewer <= FEW_DF && more > UNLIKE_DF * fewer
                ? new MeanDifference(welch.value, welch.se, welch.df, Optional.of(CochranCox.of(first, second)))
                : welch;
    }

    /** On Student's t, whatever the degrees of freedom. */
    public static MeanDifference welch(MeanEstimate first, MeanEstimate second) {
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
        double t = cautious.map(c -> c.factor(level)).orElseGet(() -> Quantiles.tTwoSided(level, df));
        return Interval.around(value, se == 0 ? 0 : t * se);
    }

    public double t() {
        return value / se;
    }

    /** Two-sided probability of a difference at least as large, were the true difference zero. */
    public double p() {
        return se == 0 ? (value == 0 ? 1 : 0) : 2 * tail(Math.abs(t()));
    }

    /** {@code P(T > t)} on the reference used. */
    double tail(double t) {
        return cautious.map(c -> c.tail(t)).orElseGet(() -> Quantiles.tTail(t, df));
    }
}
