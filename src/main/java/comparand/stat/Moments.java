package comparand.stat;

import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.Variance;

/**
 * Mean, standard deviation and number of independent values.
 *
 * @param sd with {@code n - 1} in the denominator; 0 is allowed, a missing one is not (see {@link MeanEstimate})
 * @param n at least 2
 */
public record Moments(double mean, double sd, int n) {

    public Moments {
        if (!Double.isFinite(mean) || !(sd >= 0) || Double.isInfinite(sd)) {
            throw new IllegalArgumentException(
                    "mean and SD are finite and the SD not negative, got %s and %s".formatted(mean, sd));
        }
        if (n < 2) {
            throw new IllegalArgumentException("a standard deviation needs at least 2 values, got " + n);
        }
    }

    /** Two-pass mean and SD; stable for large offsets (checked on the NIST StRD set NumAcc4). */
    public static Moments of(double... values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("a standard deviation needs at least 2 values, got " + values.length);
        }
        double mean = new Mean().evaluate(values);
        return new Moments(mean, Math.sqrt(new Variance().evaluate(values, mean)), values.length);
    }

    public double se() {
        return sd / Math.sqrt(n);
    }

    public MeanEstimate estimate() {
        return new MeanEstimate(mean, se(), n - 1);
    }

    /**
     * The range in which one further value is expected: {@code mean ± t(n-1) · s · √(1 + 1/n)}.
     *
     * <p>The prediction interval for one new observation from a normal distribution; standard text-book result.
     */
    public Interval predictionForOneMore(double level) {
        return predictionForMeanOf(1, level);
    }

    /** The range in which the mean of m further values is expected: {@code mean ± t(n-1) · s · √(1/m + 1/n)}. */
    public Interval predictionForMeanOf(int m, double level) {
        SpreadConversion.requireCount(m, 1);
        return Interval.around(mean, Quantiles.tTwoSided(level, n - 1) * sd * Math.sqrt(1.0 / m + 1.0 / n));
    }
}
