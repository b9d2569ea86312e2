package comparand.stat;

/**
 * Student's t about a mean other than zero: {@code (Z + δ)/U} with {@code v U²} distributed as χ² on v.
 *
 * <p>{@code P(T <= x) = ∫ Φ(x u - δ) f(u) du} over the density f of {@code U = s/σ}. Johnson, Kotz and Balakrishnan, Continuous
 * Univariate Distributions, vol. 2, 1995, ch. 31 (from memory); checked against a reference library.
 */
final class NoncentralT {

    private NoncentralT() {}

    static double cumulative(double x, double df, double delta) {
        return SpreadRatio.expected(u -> Quantiles.normal(x * u - delta), df);
    }

    static double quantile(double p, double df, double delta) {
        double start = Math.max(1, Math.abs(delta));
        double high = start;
        while (cumulative(high, df, delta) < p) {
            high = 2 * high + start;
        }
        double low = -start;
        while (cumulative(low, df, delta) > p) {
            low = 2 * low - start;
        }
        return Roots.between(x -> cumulative(x, df, delta) - p, low, high);
    }
}
