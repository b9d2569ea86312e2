package comparand.stat;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The distribution of a formula from drawn values of its inputs; JCGM 101:2008, clauses 5 to 7.
 *
 * @param mean of the drawn results
 * @param uncertainty their SD
 * @param interval between the points with equal tails beyond them
 * @param seed with which they can be drawn again
 */
public record MonteCarloPropagation(double mean, double uncertainty, Interval interval, int draws, long seed) {

    /** Draws of a report; JCGM 101:2008, 7.2.3. */
    public static final int DRAWS = 1_000_000;

    /**
     * Draws and evaluates.
     *
     * @throws org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException if no inputs can have these correlations
     */
    public static MonteCarloPropagation of(
            Inputs inputs, ToDoubleFunction<double[]> formula, int draws, long seed, double level) {
        Quantiles.requireLevel(level);
        SpreadConversion.requireCount(draws, 2);
        var random = SeededRandom.of(seed);
        var units = new DoubleSupplier[inputs.size()];
        for (int i = 0; i < units.length; i++) {
            units[i] = unit(inputs.get(i), random);
        }
        RealMatrix mix = inputs.correlated()
                ? new CholeskyDecomposition(new Array2DRowRealMatrix(inputs.correlations())).getL()
                : new Array2DRowRealMatrix(inputs.correlations());
        double[] results = new double[draws];
        double[] drawn = new double[units.length];
        double[] values = new double[units.length];
        for (int k = 0; k < draws; k++) {
            Arrays.setAll(drawn, i -> units[i].getAsDouble());
            for (int i = 0; i < values.length; i++) {
                double sum = 0;
                for (int j = 0; j <= i; j++) {
                    sum += mix.getEntry(i, j) * drawn[j];
                }
                values[i] = inputs.get(i).value() + inputs.get(i).uncertainty() * sum;
            }
            results[k] = formula.applyAsDouble(values);
        }
        var moments = Moments.of(results);
        var sorted = new Percentile();
        sorted.setData(results);
        return new MonteCarloPropagation(
                moments.mean(),
                moments.sd(),
                new Interval(sorted.evaluate(50 * (1 - level)), sorted.evaluate(50 * (1 + level))),
                draws,
                seed);
    }

    /** Draws of an input as distances from its value in units of its uncertainty. */
    private static DoubleSupplier unit(Input input, UniformRandomProvider random) {
        return switch (input.shape()) {
            case NORMAL -> NormalDistribution.of(0, 1).createSampler(random)::sample;
            case SCALED_T -> TDistribution.of(input.df()).createSampler(random)::sample;
            case RECTANGULAR -> () -> Math.sqrt(3) * (2 * random.nextDouble() - 1);
        };
    }
}
