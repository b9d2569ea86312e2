package comparand.stat;

import static java.util.Objects.requireNonNull;

/**
 * How many results show a difference D, by a two-sided t test at level α: from a fixed value, between two groups, or from a
 * mean that is known already.
 *
 * <p>The power is exact, from the noncentral t with {@code δ = D/SE}; against a known mean with an uncertainty of its own it
 * is exact but for the approximation in Welch's degrees of freedom. For planning only: after the data, the interval says
 * it better than a power would.
 *
 * @param sd of single results, within every group that is to be measured
 */
public record PowerPlan(double difference, double sd, double alpha, ComparedGroups groups) {

    private static final int MOST = 1_000_000;

    public PowerPlan {
        if (difference == 0 || !(sd > 0)) {
            throw new IllegalArgumentException("a plan needs a difference and a spread");
        }
        Quantiles.requireLevel(alpha);
        requireNonNull(groups, "groups");
    }

    /** Against a fixed value. */
    public PowerPlan(double difference, double sd, double alpha) {
        this(difference, sd, alpha, ComparedGroups.FIXED_VALUE);
    }

    /** {@code ((z(1-α/2) + z(power)) s/D)²} against a fixed value, twice that in each of two groups; not rounded up. */
    public double normalCount(double power) {
        return normalCount(Quantiles.z(1 - alpha / 2), Quantiles.z(power));
    }

    /** The same with the quantiles given, as text-books round them. */
    public double normalCount(double zOfAlpha, double zOfPower) {
        return groups.countFor(Math.abs(difference) / (zOfAlpha + zOfPower), sd);
    }

    /** The power with n results in every group to be measured; n need not be whole. */
    public double power(double n) {
        double df = groups.df(sd, n);
        double critical = groups.factor(sd, n, 1 - alpha);
        double delta = Math.abs(difference) / groups.se(sd, n);
        return 1 - NoncentralT.cumulative(critical, df, delta) + NoncentralT.cumulative(-critical, df, delta);
    }

    /** The smallest whole number in every group to be measured; refused where none suffices. */
    public Derived<Integer> count(double power) {
        Quantiles.requireLevel(power);
        // with a power of a half and more, what is out of reach with known SDs is out of reach
        return power >= 0.5 && Double.isInfinite(normalCount(power))
                ? Derived.refused(Refusal.NOT_REACHABLE)
                : groups.smallest(MOST, n -> power(n) >= power);
    }

    /** The number, not whole, at which the power is just reached; at least 2. */
    public Derived<Double> exactCount(double power) {
        return count(power).map(n -> n == 2 ? 2.0 : Roots.between(m -> power(m) - power, n - 1, n));
    }
}
