package comparand.stat;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Roots of continuous functions by Brent's method, to a relative 1e-14. */
final class Roots {

    private static final int MOST_EVALUATIONS = 1000;

    private Roots() {}

    /** The root between two points at which the function has different signs. */
    static double between(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(1e-14, Double.MIN_NORMAL, 0).solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    }

    /**
     * The root above 0 of a function that is positive at 0 and negative far out: the upper end is doubled, from a first
     * guess above 0, until the sign changes.
     *
     * @throws IllegalArgumentException if the sign has not changed after 1000 doublings
     */
    static double onHalfLine(DoubleUnaryOperator function, double firstGuess) {
        double high = firstGuess;
        for (int i = 0; function.applyAsDouble(high) > 0; i++) {
            if (i == MOST_EVALUATIONS) {
                throw new IllegalArgumentException("the function does not change its sign above 0");
            }
            high *= 2;
        }
        return between(function, 0, high);
    }
}
