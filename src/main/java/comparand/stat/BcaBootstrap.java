package comparand.stat;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * The bias-corrected and accelerated bootstrap interval; Efron, J Am Stat Assoc 1987;82:171-185 (from memory).
 *
 * <pre>
 * z₀ = z( (#{θ* &lt; θ} + ½ #{θ* = θ}) / B ),  a = Σ dᵢ³ / (6 (Σ dᵢ²)^1.5),  dᵢ = mean θ₍.₎ - θ₍₋ᵢ₎
 * α' = Φ( z₀ + (z₀ + z_α)/(1 - a (z₀ + z_α)) ),  limit: the value at (B + 1) α' of the sorted resamples
 * </pre>
 *
 * <p>Cases are drawn, never samples of a case. Too short in small samples, so refused below 10 cases.
 */
public final class BcaBootstrap {

    /** Resamples of a report. */
    public static final int RESAMPLES = 9999;

    /** Fewer cases are refused. */
    public static final int FEWEST = 10;

    /** Two values of a statistic are the same within this share: the order of adding differs between resamples. */
    private static final double SAME = 1e-12;

    private BcaBootstrap() {}

    /** Bias, acceleration, the two shares of resamples, and the interval between them. */
    public record Limits(double z0, double a, double lowShare, double highShare, Interval interval) {}

    /**
     * The interval of a statistic.
     *
     * @param cases how many cases there are
     * @param statistic of the cases at the places given, which may repeat
     * @param seed stands in the report
     */
    public static Derived<Interval> of(
            int cases, ToDoubleFunction<int[]> statistic, int resamples, long seed, double level) {
        Quantiles.requireLevel(level);
        if (cases < FEWEST) {
            return Derived.refused(Refusal.TOO_FEW_VALUES);
        }
        var random = SeededRandom.of(seed);
        int[] drawn = new int[cases];
        double[] values = new double[resamples];
        for (int b = 0; b < resamples; b++) {
            for (int i = 0; i < cases; i++) {
                drawn[i] = random.nextInt(cases);
            }
            values[b] = statistic.applyAsDouble(drawn);
        }
        double estimate = statistic.applyAsDouble(IntStream.range(0, cases).toArray());
        return limits(values, estimate, leftOut(cases, statistic), level).map(Limits::interval);
    }

    /** The statistic without each case in turn. */
    static double[] leftOut(int cases, ToDoubleFunction<int[]> statistic) {
        return IntStream.range(0, cases)
                .mapToDouble(out -> statistic.applyAsDouble(
                        IntStream.range(0, cases).filter(i -> i != out).toArray()))
                .toArray();
    }

    /** From the statistic of all resamples, of all cases, and without each case. */
    static Derived<Limits> limits(double[] resampled, double estimate, double[] leftOut, double level) {
        double below = 0;
        for (double value : resampled) {
            boolean same = Math.abs(value - estimate) <= SAME * Math.abs(estimate);
            below += same ? 0.5 : value < estimate ? 1 : 0;
        }
        if (below == 0 || below == resampled.length) {
            return Derived.refused(Refusal.OUTSIDE_ITS_RESAMPLES);
        }
        double a = acceleration(leftOut);
        if (Double.isNaN(a)) {
            return Derived.refused(Refusal.NO_SPREAD);
        }
        double z0 = Quantiles.z(below / resampled.length);
        double low = share(z0, a, (1 - level) / 2);
        double high = share(z0, a, (1 + level) / 2);
        // the library's default is the rule (B + 1)p with linear interpolation, the ends taken beyond them
        var sorted = new Percentile();
        sorted.setData(resampled);
        return Derived.of(
                new Limits(z0, a, low, high, new Interval(sorted.evaluate(100 * low), sorted.evaluate(100 * high))));
    }

    /** Not a number where leaving out any case changes nothing. */
    static double acceleration(double... leftOut) {
        double mean = Arrays.stream(leftOut).average().orElseThrow();
        double squares = Arrays.stream(leftOut).map(x -> Math.pow(mean - x, 2)).sum();
        double cubes = Arrays.stream(leftOut).map(x -> Math.pow(mean - x, 3)).sum();
        return cubes / (6 * Math.pow(squares, 1.5));
    }

    private static double share(double z0, double a, double alpha) {
        double z = z0 + Quantiles.z(alpha);
        return Quantiles.normal(z0 + z / (1 - a * z));
    }
}
