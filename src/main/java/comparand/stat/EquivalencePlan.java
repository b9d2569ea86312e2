package comparand.stat;

/**
 * How many cases show that a difference is no larger than a margin, by two one-sided t tests at level α each.
 *
 * <pre>
 * power = ∫₀^{M/(t se)} [ Φ((M - θ)/se - t u) - Φ((-M - θ)/se + t u) ] f(u) du,  u = s/σ
 * </pre>
 *
 * <p>Exact for one SD in all groups; Phillips, J Pharmacokinet Biopharm 1990;18:137-144 (from memory). Plan with a true
 * difference θ other than 0 (a tenth to a fifth of the margin), and for several SDs.
 *
 * @param margin above 0
 * @param trueDifference inside the margin
 */
public record EquivalencePlan(double margin, double trueDifference, double sd, double alpha) {

    private static final int MOST = 100_000;

    public EquivalencePlan {
        if (!(margin > 0) || !(Math.abs(trueDifference) < margin) || !(sd > 0)) {
            throw new IllegalArgumentException("a plan needs a true difference inside its margin, and a spread");
        }
        Quantiles.requireLevel(2 * alpha);
    }

    /** The power with a standard error {@code se} on {@code df} degrees of freedom. */
    public double power(double se, double df) {
        double t = Quantiles.t(1 - alpha, df);
        return SpreadRatio.expected(
                u -> Quantiles.normal((margin - trueDifference) / se - t * u)
                        - Quantiles.normal((-margin - trueDifference) / se + t * u),
                df,
                margin / (t * se));
    }

    /** Against a fixed value. */
    public double powerOfOneGroup(int n) {
        SpreadConversion.requireCount(n, 2);
        return power(sd / Math.sqrt(n), n - 1);
    }

    /** Against a published group of its own size. */
    public double powerOfTwoGroups(int n, int published) {
        SpreadConversion.requireCount(n, 1);
        SpreadConversion.requireCount(published, 2);
        return power(sd * Math.sqrt(1.0 / n + 1.0 / published), n + published - 2);
    }

    public Derived<Integer> countOfOneGroup(double power) {
        Quantiles.requireLevel(power);
        return Smallest.from(2, MOST, n -> powerOfOneGroup(n) >= power);
    }

    /** In each of two groups of one size. */
    public Derived<Integer> countOfEachGroup(double power) {
        Quantiles.requireLevel(power);
        return Smallest.from(2, MOST, n -> powerOfTwoGroups(n, n) >= power);
    }

    /**
     * Of the local group, the published one being what it is. Refused where no local number suffices: the standard error never
     * falls below that of the published mean.
     */
    public Derived<Integer> countAgainst(int published, double power) {
        Quantiles.requireLevel(power);
        return Smallest.from(2, MOST, n -> powerOfTwoGroups(n, published) >= power);
    }

    /**
     * {@code ((z(1-α) + z(1-β/2)) s/M)²} with no true difference, {@code ((z(1-α) + z(1-β)) s/(M - |θ|))²} with one; not
     * rounded up, and slightly low near 0.
     */
    public double normalCount(double power) {
        double z = trueDifference == 0 ? Quantiles.z((1 + power) / 2) : Quantiles.z(power);
        return Math.pow((Quantiles.z(1 - alpha) + z) * sd / (margin - Math.abs(trueDifference)), 2);
    }
}
