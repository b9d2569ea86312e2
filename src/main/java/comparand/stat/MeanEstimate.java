package comparand.stat;

/**
 * An estimated mean with its standard error and degrees of freedom: all that a comparison needs to know of one side.
 *
 * @param se standard error, not negative
 * @param df degrees of freedom of the standard error; infinite where it is known without sampling
 */
public record MeanEstimate(double mean, double se, double df) {

    public MeanEstimate {
        if (!Double.isFinite(mean) || !(se >= 0) || Double.isInfinite(se) || !(df > 0)) {
            throw new IllegalArgumentException("not an estimate: mean %s, SE %s, df %s".formatted(mean, se, df));
        }
    }

    /** {@code mean ± t · SE}. */
    public Interval interval(double level) {
        return Interval.around(mean, se == 0 ? 0 : Quantiles.tTwoSided(level, df) * se);
    }

    /**
     * The same estimate after allowing for a printed figure or a reading that is only known to within {@code ± a}:
     * {@code u² = SE² + a²/3} with the rectangular distribution of JCGM 100:2008 (GUM) 4.3.7, and the degrees of
     * freedom of Welch and Satterthwaite (the added term has none of its own).
     */
    public MeanEstimate widenedBy(double a) {
        double u2 = se * se + a * a / 3;
        return se == 0
                ? new MeanEstimate(mean, Math.sqrt(u2), Double.POSITIVE_INFINITY)
                : new MeanEstimate(mean, Math.sqrt(u2), df * Math.pow(u2 / (se * se), 2));
    }
}
