package comparand.stat;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Gamma;

/**
 * The distribution of {@code U = s/σ}, an SD seen by the true one, where {@code v U²} is distributed as χ² on v degrees of
 * freedom: {@code f(u) = 2 u v · χ²density(v u²; v)}.
 */
final class SpreadRatio {

    private static final int PANELS = 24;

    private SpreadRatio() {}

    /** The density by U for some degrees of freedom. */
    static DoubleUnaryOperator density(double df) {
        // the same at every u, and the dearest part of it
        double scale = df / 2 * Math.log(2);
        double logGamma = Gamma.logGamma(df / 2);
        return u -> {
            double x = df * u * u;
            double log = Math.log(2 * u * df) + (df / 2 - 1) * Math.log(x) - x / 2 - scale - logGamma;
            return Math.exp(log);
        };
    }

    /** The expectation of a function of U that is bounded by 1; what lies beyond the stretch weighs less than 1e-15. */
    static double expected(DoubleUnaryOperator function, double df) {
        return expected(function, df, Double.POSITIVE_INFINITY);
    }

    /** The same, counting only U up to a place. */
    static double expected(DoubleUnaryOperator function, double df, double upTo) {
        // the SD of U is close to 1/√(2v), and its tails are lighter than normal below and as light above
        double reach = 12 / Math.sqrt(2 * df);
        double from = Math.max(0, 1 - reach);
        double to = Math.min(1 + reach, upTo);
        var density = density(df);
        return to <= from
                ? 0
                : Quadrature.integrate(u -> function.applyAsDouble(u) * density.applyAsDouble(u), from, to, PANELS);
    }
}
