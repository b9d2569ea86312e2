package comparand.stat;

import org.apache.commons.math3.special.Gamma;

/**
 * A difference of means in units of the spread within groups, corrected for small samples: for metrics measured on different
 * scales only, and never put into words.
 *
 * <pre>
 * d = (m₁ - m₂)/s_p,  J = Γ(v/2)/(√(v/2) Γ((v-1)/2)),  v = n₁ + n₂ - 2,  g = J d
 * SE(d) = √( (n₁+n₂)/(n₁n₂) + d²/(2(n₁+n₂)) ),  SE(g) = J SE(d)
 * </pre>
 *
 * <p>Hedges, J Educ Stat 1981;6:107-128; Borenstein, Hedges, Higgins and Rothstein, Introduction to Meta-Analysis, 2009, ch. 4.
 *
 * @param pooledSd the SD within both groups
 */
public record HedgesG(double pooledSd, double d, double seOfD, double correction) {

    /** Refused where neither group has a spread. */
    public static Derived<HedgesG> of(Moments first, Moments second) {
        int v = first.n() + second.n() - 2;
        double sd = Math.sqrt(
                ((first.n() - 1) * first.sd() * first.sd() + (second.n() - 1) * second.sd() * second.sd()) / v);
        if (sd == 0) {
            return Derived.refused(Refusal.NO_SPREAD);
        }
        double d = (first.mean() - second.mean()) / sd;
        double n = first.n() + second.n();
        double se = Math.sqrt(n / first.n() / second.n() + d * d / (2 * n));
        return Derived.of(new HedgesG(sd, d, se, exactCorrection(v)));
    }

    public double g() {
        return correction * d;
    }

    public double seOfG() {
        return correction * seOfD;
    }

    /** J on v degrees of freedom, v at least 2. */
    public static double exactCorrection(double v) {
        return Math.exp(Gamma.logGamma(v / 2) - Gamma.logGamma((v - 1) / 2)) / Math.sqrt(v / 2);
    }

    /** {@code 1 - 3/(4v - 1)}: the J that papers print. */
    public static double approximateCorrection(double v) {
        return 1 - 3 / (4 * v - 1);
    }
}
