package comparand.stat;

/**
 * How many cases show a difference D from a fixed value, by a two-sided t test at level α.
 *
 * <p>The power is exact, from the noncentral t with {@code δ = D√n/s}. For planning only: after the data, the interval says
 * it better than a power would.
 */
public record PowerPlan(double difference, double sd, double alpha) {

    private static final int MOST = 1_000_000;

    public PowerPlan {
        if (difference == 0 || !(sd > 0)) {
            throw new IllegalArgumentException("a plan needs a difference and a spread");
        }
        Quantiles.requireLevel(alpha);
    }

    /** {@code ((z(1-α/2) + z(power)) s/D)²}, not rounded up. */
    public double normalCount(double power) {
        return normalCount(Quantiles.z(1 - alpha / 2), Quantiles.z(power));
    }

    /** The same with the quantiles given, as text-books round them. */
    public double normalCount(double zOfAlpha, double zOfPower) {
        return Math.pow((zOfAlpha + zOfPower) * sd / difference, 2);
    }

    /** The power with n cases; n need not be whole. */
    public double power(double n) {
        double critical = Quantiles.t(1 - alpha / 2, n - 1);
        double delta = Math.abs(difference) * Math.sqrt(n) / sd;
        return 1 - NoncentralT.cumulative(critical, n - 1, delta) + NoncentralT.cumulative(-critical, n - 1, delta);
    }

    /** The smallest whole number of cases. */
    public Derived<Integer> count(double power) {
        Quantiles.requireLevel(power);
        return Smallest.from(2, MOST, n -> power(n) >= power);
    }

    /** The number of cases, not whole, at which the power is just reached; at least 2. */
    public Derived<Double> exactCount(double power) {
        return count(power).map(n -> n == 2 ? 2.0 : Roots.between(m -> power(m) - power, n - 1, n));
    }
}
