package comparand.stat;

/**
 * An interval for τ²: where the generalised {@code Q(τ²) = Σ (y - μ)²/(v + τ²)} equals the quantiles of χ² on
 * {@code k - 1} degrees of freedom; 0 where it lies below them throughout. Viechtbauer, Stat Med 2007;26:37-52 (from
 * memory).
 */
public final class QProfile {

    private QProfile() {}

    public static Interval of(Effects effects, double level) {
        Quantiles.requireLevel(level);
        int df = effects.size() - 1;
        return new Interval(
                root(effects, Quantiles.chiSquared((1 + level) / 2, df)),
                root(effects, Quantiles.chiSquared((1 - level) / 2, df)));
    }

    /** Where Q, which falls in τ², reaches a value; 0 if it starts below. */
    static double root(Effects effects, double q) {
        return effects.squares(0, 1) <= q
                ? 0
                : Roots.onHalfLine(tau2 -> effects.squares(tau2, 1) - q, effects.spread() + effects.largestVariance());
    }
}
