package comparand.stat;

/**
 * A cautious reference for a difference of two means: its quantiles are {@code (t₁SE₁² + t₂SE₂²)/(SE₁² + SE₂²)}, each t on the
 * degrees of freedom of its own side.
 *
 * <p>Cochran and Cox, Experimental Designs, 2nd ed. 1957, section 4.14 (from memory). Where one side rests on a few degrees
 * of freedom (3 to 6 centres or cases) and the other on many, the degrees of freedom of Welch and Satterthwaite are too
 * many too often, and its errors exceed their level; this interval is never narrower and keeps it.
 *
 * @param share of the first side in the variance of the difference, 0 to 1
 */
public record CochranCox(double share, double firstDf, double secondDf) {

    /** Beyond this quantile of the normal, tails are below 1e-300. */
    private static final double FARTHEST = 37;

    public CochranCox {
        if (!(share >= 0 && share <= 1) || !(firstDf > 0) || !(secondDf > 0)) {
            throw new IllegalArgumentException(
                    "not a reference: share %s, degrees of freedom %s and %s".formatted(share, firstDf, secondDf));
        }
    }

    static CochranCox of(MeanEstimate first, MeanEstimate second) {
        double a = first.se() * first.se();
        return new CochranCox(a / (a + second.se() * second.se()), first.df(), second.df());
    }

    /** The interval of the difference, whatever the degrees of freedom. */
    public static Interval interval(MeanEstimate first, MeanEstimate second, double level) {
        var welch = MeanDifference.welch(first, second);
        return welch.se() == 0
                ? welch.interval(level)
                : Interval.around(welch.value(), of(first, second).factor(level) * welch.se());
    }

    /** What a standard error is multiplied by for a two-sided interval. */
    double factor(double level) {
        Quantiles.requireLevel(level);
        return -lower((1 - level) / 2);
    }

    /** {@code P(T > t)}. */
    double tail(double t) {
        if (t == 0) {
            return 0.5;
        }
        double size = Math.abs(t);
        // searched along the normal quantile of the tail, so that far tails keep their digits
        double x = Roots.between(z -> -lower(Quantiles.normal(-z)) - size, 0, FARTHEST);
        double tail = Quantiles.normal(-x);
        return t > 0 ? tail : 1 - tail;
    }

    private double lower(double p) {
        return share * Quantiles.t(p, firstDf) + (1 - share) * Quantiles.t(p, secondDf);
    }
}
