package comparand.stat;

/**
 * The standard error behind a printed test of a difference of two means.
 *
 * <p>Cochrane Handbook for Systematic Reviews of Interventions, 6.5.2.3. A "not significant" or "p &gt; 0.05" converts to
 * nothing and has no method here.
 */
public final class DifferenceConversion {

    private DifferenceConversion() {}

    /** {@code SE = |D| / t(1 - p/2, df)} for an exact two-sided p. */
    public static Derived<Double> seFromP(double difference, double p, double df) {
        return p > 0 && p < 1 ? seFromT(difference, Quantiles.t(1 - p / 2, df)) : refuse(p);
    }

    /**
     * The largest standard error that "p &lt; bound" allows: an estimate on the cautious side, not algebra.
     *
     * @param bound the bound printed, such as 0.05
     */
    public static Derived<Double> largestSeFromPBelow(double difference, double bound, double df) {
        return seFromP(difference, bound, df);
    }

    /** {@code SE = |D| / |t|}. */
    public static Derived<Double> seFromT(double difference, double t) {
        return t == 0 || difference == 0
                ? Derived.refused(Refusal.NOT_CONVERTIBLE)
                : Derived.of(Math.abs(difference / t));
    }

    /** {@code SE = |D| / √F} for an F on 1 and any degrees of freedom. */
    public static Derived<Double> seFromF(double difference, double f) {
        if (!(f >= 0)) {
            throw new IllegalArgumentException("an F is not negative, got " + f);
        }
        return seFromT(difference, Math.sqrt(f));
    }

    /** The SD common to both groups: {@code SE / √(1/n₁ + 1/n₂)}. */
    public static double pooledSd(double se, int n1, int n2) {
        if (n1 < 1 || n2 < 1) {
            throw new IllegalArgumentException("groups have cases, got %d and %d".formatted(n1, n2));
        }
        return se / Math.sqrt(1.0 / n1 + 1.0 / n2);
    }

    private static Derived<Double> refuse(double p) {
        if (p == 0 || p == 1) {
            return Derived.refused(Refusal.NOT_CONVERTIBLE);
        }
        throw new IllegalArgumentException("a p value lies between 0 and 1, got " + p);
    }
}
