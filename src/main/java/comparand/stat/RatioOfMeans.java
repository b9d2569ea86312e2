package comparand.stat;

/**
 * How many times larger one mean is than another, independent one.
 *
 * <p>{@code ln R = ln m₁ - ln m₂}, {@code SE² = SE₁²/m₁² + SE₂²/m₂²} with the degrees of freedom of Satterthwaite, and back;
 * Friedrich, Adhikari and Beyene, J Clin Epidemiol 2011;64:556-564 (from memory). Where a mean is not far enough above zero
 * for logarithms, the interval is Fieller's.
 *
 * @param logarithm the difference of the logarithms
 */
public record RatioOfMeans(MeanDifference logarithm) {

    /** The largest relative standard error of a mean for which its logarithm is roughly normal; a convention. */
    private static final double LARGEST = 0.2;

    /** Refused unless both means are above zero and their relative standard errors below 0.2. */
    public static Derived<RatioOfMeans> of(MeanEstimate first, MeanEstimate second) {
        return clear(first) && clear(second)
                ? Derived.of(new RatioOfMeans(MeanDifference.of(log(first), log(second))))
                : Derived.refused(Refusal.MEAN_NEAR_ZERO);
    }

    public double value() {
        return Math.exp(logarithm.value());
    }

    public Interval interval(double level) {
        return logarithm.interval(level).map(Math::exp);
    }

    /**
     * The interval without logarithms, for means near zero; its t has the degrees of freedom of the difference of the two
     * means, an approximation.
     */
    public static Derived<Interval> fieller(MeanEstimate first, MeanEstimate second, double level) {
        double df = MeanDifference.of(first, second).df();
        return Fieller.of(first, second, 0, Quantiles.tTwoSided(level, df));
    }

    private static boolean clear(MeanEstimate estimate) {
        return estimate.mean() > 0 && estimate.se() < LARGEST * estimate.mean();
    }

    private static MeanEstimate log(MeanEstimate estimate) {
        return new MeanEstimate(Math.log(estimate.mean()), estimate.se() / estimate.mean(), estimate.df());
    }
}
