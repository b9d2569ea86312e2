package comparand.stat;

/**
 * Mean and SD of positive values and of their logarithms, if the values are lognormal.
 *
 * <pre>
 * s_L² = ln(1 + s²/m²),  m_L = ln m - s_L²/2       m = exp(m_L + s_L²/2),  s² = m² (exp(s_L²) - 1)
 * </pre>
 *
 * <p>The moments of the lognormal distribution; Higgins, White and Anzures-Cabrera, Stat Med 2008;27:6072-6092 (from
 * memory).
 */
public final class Lognormal {

    private Lognormal() {}

    /** The moments of the logarithms; refused unless the mean is above zero. */
    public static Derived<Moments> logarithms(Moments plain) {
        if (!(plain.mean() > 0)) {
            return Derived.refused(Refusal.NOT_POSITIVE);
        }
        double variance = Math.log1p(Math.pow(plain.sd() / plain.mean(), 2));
        return Derived.of(new Moments(Math.log(plain.mean()) - variance / 2, Math.sqrt(variance), plain.n()));
    }

    /** The moments of the values whose logarithms these are of. */
    public static Moments plain(Moments logarithms) {
        double variance = logarithms.sd() * logarithms.sd();
        double mean = Math.exp(logarithms.mean() + variance / 2);
        return new Moments(mean, mean * Math.sqrt(Math.expm1(variance)), logarithms.n());
    }

    /** Whether mean and SD of a positive quantity alone speak of skew: {@code m < 2s}; Altman and Bland, BMJ 1996;313:1200. */
    public static boolean looksSkewed(Moments positive) {
        return positive.mean() < 2 * positive.sd();
    }
}
