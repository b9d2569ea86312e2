package comparand.stat;

import java.util.function.IntPredicate;

/**
 * What a plan compares: the standard error of the difference, and its degrees of freedom, with n results in every group that
 * is still to be measured.
 */
public sealed interface ComparedGroups {

    /** One group, against a figure taken as exact. */
    ComparedGroups FIXED_VALUE = new AgainstKnown(0, Double.POSITIVE_INFINITY);

    /** Two groups of one size and one standard deviation. */
    ComparedGroups EACH_OF_TWO = new EachOfTwo();

    /**
     * One group, against a mean that is known already and stays as it is.
     *
     * @param known with its standard error, which no number of further results makes smaller
     */
    static ComparedGroups against(MeanEstimate known) {
        return new AgainstKnown(known.se(), known.df());
    }

    double se(double sd, double n);

    double df(double sd, double n);

    /** What the standard error is multiplied by for a two-sided interval, and what a test has to exceed. */
    double factor(double sd, double n, double level);

    /** The n, not rounded up, at which the standard error is as wanted; infinite where it never falls so low. */
    double countFor(double se, double sd);

    /** The smallest n, from 2 on, for which something holds; refused where none is found up to the most. */
    Derived<Integer> smallest(int most, IntPredicate holds);

    /** {@code s √(2/n)} on {@code 2n - 2} degrees of freedom: the t test of two groups with a common SD. */
    record EachOfTwo() implements ComparedGroups {
        @Override
        public double se(double sd, double n) {
            return sd * Math.sqrt(2 / n);
        }

        @Override
        public double df(double sd, double n) {
            return 2 * n - 2;
        }

        @Override
        public double factor(double sd, double n, double level) {
            return Quantiles.tTwoSided(level, df(sd, n));
        }

        @Override
        public double countFor(double se, double sd) {
            return 2 * Math.pow(sd / se, 2);
        }

        @Override
        public Derived<Integer> smallest(int most, IntPredicate holds) {
            return Smallest.from(2, most, holds);
        }
    }

    /**
     * {@code √(s²/n + SE²)} with the reference of {@link MeanDifference}, by which the difference will be judged once it is
     * measured: Welch's, or the cautious one where degrees of freedom are few. With SE = 0 it is {@code s/√n} on
     * {@code n - 1}.
     *
     * @param knownSe standard error of the mean that is known, not negative
     * @param knownDf its degrees of freedom
     */
    record AgainstKnown(double knownSe, double knownDf) implements ComparedGroups {

        public AgainstKnown {
            if (!(knownSe >= 0) || Double.isInfinite(knownSe) || !(knownDf > 0)) {
                throw new IllegalArgumentException("not a known mean: SE %s, df %s".formatted(knownSe, knownDf));
            }
        }

        @Override
        public double se(double sd, double n) {
            return Math.sqrt(sd * sd / n + knownSe * knownSe);
        }

        @Override
        public double df(double sd, double n) {
            return difference(sd, n).df();
        }

        @Override
        public double factor(double sd, double n, double level) {
            var difference = difference(sd, n);
            return difference.se() == 0 ? 0 : difference.interval(level).halfWidth() / difference.se();
        }

        private MeanDifference difference(double sd, double n) {
            var own = new MeanEstimate(0, sd / Math.sqrt(n), n - 1);
            return MeanDifference.of(own, new MeanEstimate(0, knownSe, knownDf));
        }

        @Override
        public double countFor(double se, double sd) {
            double own = se * se - knownSe * knownSe;
            return own > 0 ? sd * sd / own : Double.POSITIVE_INFINITY;
        }

        /**
         * Welch's degrees of freedom fall again where n outgrows the known group, or the cautious reference takes over, and the
         * interval widens: what holds at some n need not hold at all larger ones.
         */
        @Override
        public Derived<Integer> smallest(int most, IntPredicate holds) {
            return knownSe == 0 ? Smallest.from(2, most, holds) : Smallest.first(2, most, holds);
        }
    }
}
