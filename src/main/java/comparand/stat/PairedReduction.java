package comparand.stat;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.Covariance;

/**
 * How much less there is after than before, in the same cases. Three different quantities; the one shown is named.
 *
 * <p>Values before are above zero. One pair per case, at least 2 pairs.
 */
public final class PairedReduction {

    /** From this relative standard error of the mean before on, the linear interval of a ratio of sums is not used. */
    private static final double LINEAR_BELOW = 0.1;

    private final double[] pre;
    private final double[] post;

    /** @throws IllegalArgumentException unless both sides have the same number of values, at least 2, those before above 0 */
    public PairedReduction(double[] pre, double[] post) {
        if (pre.length != post.length || pre.length < 2) {
            throw new IllegalArgumentException("not pairs: %d before, %d after".formatted(pre.length, post.length));
        }
        for (double x : pre) {
            if (!(x > 0)) {
                throw new IllegalArgumentException("values before are above zero, got " + x);
            }
        }
        this.pre = pre.clone();
        this.post = post.clone();
    }

    /** A reduction as a share, with its interval. */
    public record Reduction(double value, Interval interval) {}

    /** The logarithms of the ratios after to before, of which the centre-aware mean may be taken. */
    public Derived<double[]> logRatios() {
        for (double x : post) {
            if (!(x > 0)) {
                return Derived.refused(Refusal.NOT_POSITIVE);
            }
        }
        return Derived.of(each(i -> Math.log(post[i] / pre[i])));
    }

    /** {@code 1 - exp(L ± t s_L/√n)} with {@code L = mean ln(post/pre)}; refused where a value after is not above zero. */
    public Derived<Reduction> geometric(double level) {
        return logRatios().map(logs -> {
            var mean = Moments.of(logs).estimate();
            var limits = mean.interval(level);
            return new Reduction(
                    -Math.expm1(mean.mean()), new Interval(-Math.expm1(limits.high()), -Math.expm1(limits.low())));
        });
    }

    /** {@code mean(1 - post/pre)} with Student's t. */
    public Reduction meanOfEach(double level) {
        var mean = Moments.of(each(i -> 1 - post[i] / pre[i])).estimate();
        return new Reduction(mean.mean(), mean.interval(level));
    }

    /**
     * What fraction of all that entered remained, {@code R = Σ post/Σ pre}, with
     * {@code SE = s_d/(√n · mean pre)}, {@code d = post - R pre}; Cochran, Sampling Techniques, 3rd ed. 1977, ch. 6 (from
     * memory).
     */
    public MeanEstimate ratioOfSums() {
        double meanPre = Moments.of(pre).mean();
        double ratio = Moments.of(post).mean() / meanPre;
        double se = Moments.of(each(i -> post[i] - ratio * pre[i])).se() / meanPre;
        return new MeanEstimate(ratio, se, pre.length - 1);
    }

    /** {@code 1 - R} with the linear interval, and with Fieller's where the mean before is not well known. */
    public Derived<Reduction> ofSums(double level) {
        var ratio = ratioOfSums();
        var before = Moments.of(pre).estimate();
        var limits = before.se() > LINEAR_BELOW * before.mean() ? fieller(level) : Derived.of(ratio.interval(level));
        return limits.map(i -> new Reduction(1 - ratio.mean(), new Interval(1 - i.high(), 1 - i.low())));
    }

    /** The interval of R after Fieller, the two sums being of the same cases. */
    public Derived<Interval> fieller(double level) {
        double covariance = new Covariance().covariance(pre, post) / pre.length;
        return Fieller.of(
                Moments.of(post).estimate(),
                Moments.of(pre).estimate(),
                covariance,
                Quantiles.tTwoSided(level, pre.length - 1));
    }

    private double[] each(IntToDoubleFunction value) {
        return IntStream.range(0, pre.length).mapToDouble(value).toArray();
    }
}
