package comparand.stat;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RectangularCholeskyDecomposition;
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

    private static final double SMALLEST_PIVOT = 1e-12;

    /**
     * Draws and evaluates.
     *
     * @throws org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException if no inputs can have these correlations
     */
    public static MonteCarloPropagation of(
            Inputs inputs, ToDoubleFunction<double[]> formula, int draws, long seed, double level) {
        Quantiles.requireLevel(level);
        SpreadConversion.requireCount(draws, 2);
        var draw = draw(inputs, SeededRandom.of(seed));
        double[] results = new double[draws];
        double[] units = new double[inputs.size()];
        double[] values = new double[inputs.size()];
        for (int k = 0; k < draws; k++) {
            draw.accept(units);
            Arrays.setAll(values, i -> inputs.get(i).value() + inputs.get(i).uncertainty() * units[i]);
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

    /** Draws of all inputs as distances from their values in units of their uncertainties. */
    private static Consumer<double[]> draw(Inputs inputs, UniformRandomProvider random) {
        var each = new DoubleSupplier[inputs.size()];
        Arrays.setAll(each, i -> unit(inputs.get(i), random));
        if (!inputs.correlated()) {
            return units -> Arrays.setAll(units, i -> each[i].getAsDouble());
        }
        // a root that may have fewer columns than inputs: two inputs may be wholly correlated
        var root = new RectangularCholeskyDecomposition(new Array2DRowRealMatrix(inputs.correlations()), SMALLEST_PIVOT)
                .getRootMatrix();
        var normal = NormalDistribution.of(0, 1).createSampler(random);
        double[] drawn = new double[root.getColumnDimension()];
        return units -> {
            Arrays.setAll(drawn, c -> normal.sample());
            double[] mixed = root.operate(drawn);
            // only normal inputs are correlated; the others keep their own shape
            Arrays.setAll(units, i -> inputs.get(i).shape() == Input.Shape.NORMAL ? mixed[i] : each[i].getAsDouble());
        };
    }

    /** Draws of one input, the same way. */
    private static DoubleSupplier unit(Input input, UniformRandomProvider random) {
        return switch (input.shape()) {
            case NORMAL -> NormalDistribution.of(0, 1).createSampler(random)::sample;
            case SCALED_T -> TDistribution.of(input.df()).createSampler(random)::sample;
            case RECTANGULAR -> () -> Math.sqrt(3) * (2 * random.nextDouble() - 1);
        };
    }
}
