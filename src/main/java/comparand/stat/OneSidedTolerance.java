package comparand.stat;

/**
 * The factor k of a one-sided tolerance limit {@code mean + k s} or {@code mean - k s}: with a confidence γ, at least a share
 * p of a normal population lies on the inner side. What a "minimum" or "guaranteed" value is compared with.
 */
public final class OneSidedTolerance {

    private OneSidedTolerance() {}

    /** {@code k = t'(γ; n-1, z(p)√n)/√n} with the noncentral t; NIST/SEMATECH e-Handbook 7.2.6.3. */
    public static double factor(int n, double share, double confidence) {
        SpreadConversion.requireCount(n, 2);
        Quantiles.requireLevel(share);
        Quantiles.requireLevel(confidence);
        double root = Math.sqrt(n);
        return NoncentralT.quantile(confidence, n - 1, Quantiles.z(share) * root) / root;
    }

    /**
     * {@code k = (z_p + √(z_p² - ab))/a}, {@code a = 1 - z_γ²/(2(n-1))}, {@code b = z_p² - z_γ²/n}: the approximation of
     * Natrella in the e-Handbook 7.2.6.3, kept because tables use it.
     */
    public static double approximateFactor(int n, double share, double confidence) {
        double zp = Quantiles.z(share);
        double zg = Quantiles.z(confidence);
        double a = 1 - zg * zg / (2 * (n - 1.0));
        double b = zp * zp - zg * zg / n;
        if (!(a > 0)) {
            throw new IllegalArgumentException("the approximation needs more values than " + n);
        }
        return (zp + Math.sqrt(zp * zp - a * b)) / a;
    }

    /** {@code mean - k s}: what at least the share p exceeds. */
    public static double lowerLimit(Moments sample, double share, double confidence) {
        return sample.mean() - factor(sample.n(), share, confidence) * sample.sd();
    }

    /** {@code mean + k s}: what at least the share p stays below. */
    public static double upperLimit(Moments sample, double share, double confidence) {
        return sample.mean() + factor(sample.n(), share, confidence) * sample.sd();
    }
}
