package comparand.stat;

/**
 * A cautious interval of a difference of two means: {@code D ± (t₁SE₁² + t₂SE₂²)/(SE₁² + SE₂²) · SE}, each t on the degrees of
 * freedom of its own side.
 *
 * <p>Cochran and Cox, Experimental Designs, 2nd ed. 1957, section 4.14 (from memory). Where one side rests on two or three
 * degrees of freedom (3 or 4 centres, 3 or 4 cases) and the other on many, the degrees of freedom of Welch and Satterthwaite
 * are too many too often, and its errors exceed their level; this interval is never narrower and keeps it.
 */
public final class CochranCox {

    private CochranCox() {}

    public static Interval interval(MeanEstimate first, MeanEstimate second, double level) {
        var difference = MeanDifference.of(first, second);
        if (difference.se() == 0) {
            return difference.interval(level);
        }
        double a = Math.pow(first.se() / difference.se(), 2);
        double t = a * Quantiles.tTwoSided(level, first.df()) + (1 - a) * Quantiles.tTwoSided(level, second.df());
        return Interval.around(difference.value(), t * difference.se());
    }
}
