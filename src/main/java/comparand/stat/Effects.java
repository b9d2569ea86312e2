package comparand.stat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Independent estimates, each with its variance: one per source, or one per centre. */
public record Effects(List<Effect> each) {

    /** An estimate with the square of its standard error, which is above 0. */
    public record Effect(double value, double variance) {
        public Effect {
            if (!Double.isFinite(value) || !(variance > 0) || Double.isInfinite(variance)) {
                throw new IllegalArgumentException("not an effect: %s, variance %s".formatted(value, variance));
            }
        }
    }

    public Effects {
        each = List.copyOf(each);
        if (each.size() < 2) {
            throw new IllegalArgumentException("needs at least 2 estimates, got " + each.size());
        }
    }

    public static Effects of(double[] values, double[] variances) {
        if (values.length != variances.length) {
            throw new IllegalArgumentException("%d values, %d variances".formatted(values.length, variances.length));
        }
        return new Effects(IntStream.range(0, values.length)
                .mapToObj(i -> new Effect(values[i], variances[i]))
                .toList());
    }

    public static Effects ofEstimates(List<MeanEstimate> estimates) {
        return new Effects(estimates.stream()
                .map(e -> new Effect(e.mean(), e.se() * e.se()))
                .toList());
    }

    public int size() {
        return each.size();
    }

    /** All but one. */
    public Effects without(int index) {
        var rest = new ArrayList<>(each);
        rest.remove(index);
        return new Effects(rest);
    }

    /** {@code Σ w^power} with {@code w = 1/(v + τ²)}. */
    double weights(double tau2, int power) {
        double sum = 0;
        for (Effect e : each) {
            sum += Math.pow(e.variance + tau2, -power);
        }
        return sum;
    }

    double mean(double tau2) {
        // as distances from the first, so that a large common offset costs no digits
        double origin = each.get(0).value;
        double sum = 0;
        for (Effect e : each) {
            sum += (e.value - origin) / (e.variance + tau2);
        }
        return origin + sum / weights(tau2, 1);
    }

    /** {@code Σ w^power (y - μ)²}: with power 1 the generalised Q. */
    double squares(double tau2, int power) {
        double mean = mean(tau2);
        double sum = 0;
        for (Effect e : each) {
            sum += Math.pow(e.variance + tau2, -power) * Math.pow(e.value - mean, 2);
        }
        return sum;
    }

    double largestVariance() {
        return each.stream().mapToDouble(Effect::variance).max().orElseThrow();
    }

    /** The variance of the values, without weights: a first guess of τ². */
    double spread() {
        return Math.pow(
                Moments.of(each.stream().mapToDouble(Effect::value).toArray()).sd(), 2);
    }
}
