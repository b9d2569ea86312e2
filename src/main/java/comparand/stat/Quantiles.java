package comparand.stat;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Quantiles and tail probabilities, all lower-tail unless named otherwise. */
final class Quantiles {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private Quantiles() {}

    static double z(double p) {
        return NORMAL.inverseCumulativeProbability(p);
    }

    /** The distribution function of the standard normal. */
    static double normal(double x) {
        return NORMAL.cumulativeProbability(x);
    }

    /** The density of the standard normal. */
    static double normalDensity(double x) {
        return NORMAL.density(x);
    }

    /** Student's t; fractional and infinite degrees of freedom are allowed. */
    static double t(double p, double df) {
        return Double.isInfinite(df) ? z(p) : TDistribution.of(df).inverseCumulativeProbability(p);
    }

    /** The factor of a two-sided interval at a level: {@code t((1+level)/2, df)}. */
    static double tTwoSided(double level, double df) {
        requireLevel(level);
        return t((1 + level) / 2, df);
    }

    /** {@code P(T > t)}. */
    static double tTail(double t, double df) {
        return Double.isInfinite(df)
                ? NORMAL.survivalProbability(t)
                : TDistribution.of(df).survivalProbability(t);
    }

    static double beta(double p, double a, double b) {
        return BetaDistribution.of(a, b).inverseCumulativeProbability(p);
    }

    static double chiSquared(double p, double df) {
        return ChiSquaredDistribution.of(df).inverseCumulativeProbability(p);
    }

    /** {@code P(X > x)}. */
    static double chiSquaredTail(double x, double df) {
        return ChiSquaredDistribution.of(df).survivalProbability(x);
    }

    static double f(double p, double df1, double df2) {
        return FDistribution.of(df1, df2).inverseCumulativeProbability(p);
    }

    /** {@code P(F > f)}. */
    static double fTail(double f, double df1, double df2) {
        return FDistribution.of(df1, df2).survivalProbability(f);
    }

    static void requireLevel(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a level lies between 0 and 1, got " + level);
        }
    }
}
