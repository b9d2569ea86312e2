package comparand.stat;

/**
 * The mean of sources as if all measured the same: {@code w = 1/v}, {@code μ = Σwy/Σw}, {@code SE = 1/√Σw}, with the
 * {@code Q = Σw(y-μ)²} of Cochran, Biometrics 1954;10:101-129 (from memory). A line of a sensitivity analysis only.
 */
public record CommonEffect(double mean, double se, double q, int df) {

    public static CommonEffect of(Effects effects) {
        return new CommonEffect(
                effects.mean(0), 1 / Math.sqrt(effects.weights(0, 1)), effects.squares(0, 1), effects.size() - 1);
    }

    /** As an estimate whose standard error is known. */
    public MeanEstimate estimate() {
        return new MeanEstimate(mean, se, Double.POSITIVE_INFINITY);
    }

    /** {@code max(0, (Q - (k-1))/Q)}: the share of the spread that is not sampling; Higgins and Thompson, Stat Med 2002;21:1539-1558. */
    public double i2() {
        return q <= df ? 0 : (q - df) / q;
    }

    /** {@code Q/(k-1)}. */
    public double h2() {
        return q / df;
    }

    /** Probability of a Q at least as large if all measured the same. Never chooses a model. */
    public double pOfQ() {
        return Quantiles.chiSquaredTail(q, df);
    }
}
