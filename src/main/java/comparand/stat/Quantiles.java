package comparand.stat;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Quantiles and tail probabilities, all lower-tail unless named otherwise. */
final class Quantiles {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private Quantiles() {}

    static double z(double p) {
        return NORMAL.inverseCumulativeProbability(p);
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

    /** {@code P(|T| >= |t|)}. */
    static double tTailTwoSided(double t, double df) {
        double a = Math.abs(t);
        return 2
                * (Double.isInfinite(df)
                        ? NORMAL.survivalProbability(a)
                        : TDistribution.of(df).survivalProbability(a));
    }

    static double beta(double p, double a, double b) {
        return BetaDistribution.of(a, b).inverseCumulativeProbability(p);
    }

    static void requireLevel(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("a level lies between 0 and 1, got " + level);
        }
    }
}
