package comparand.stat;

import java.util.function.DoubleUnaryOperator;

/**
 * The place at or above 0 where a likelihood is highest: every place where its slope falls through zero is found on a
 * geometric grid and refined by Brent's method, and the likelihoods there and at 0 are compared, for a likelihood of few
 * values can have two peaks.
 */
final class LikelihoodPeak {

    private static final int GRID = 60;
    private static final double FINEST = 1e-8;

    private LikelihoodPeak() {}

    /** The highest place from 0; {@code far} is a first guess of a place beyond the last peak. */
    static double from0(DoubleUnaryOperator slope, DoubleUnaryOperator logLikelihood, double far) {
        double end = far;
        while (slope.applyAsDouble(end) > 0 && end < Double.MAX_VALUE / 2) {
            end *= 2;
        }
        double best = 0;
        double highest = logLikelihood.applyAsDouble(0);
        double low = 0;
        for (int i = 0; i <= GRID; i++) {
            double high = end * Math.pow(FINEST, 1 - (double) i / GRID);
            if (slope.applyAsDouble(low) > 0 && slope.applyAsDouble(high) <= 0) {
                double peak = Roots.between(slope, low, high);
                if (logLikelihood.applyAsDouble(peak) > highest) {
                    highest = logLikelihood.applyAsDouble(peak);
                    best = peak;
                }
            }
            low = high;
        }
        return best;
    }
}
