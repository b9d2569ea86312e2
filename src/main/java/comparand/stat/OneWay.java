package comparand.stat;

import java.util.List;

/**
 * The spread of values within and between groups (centres, units, days).
 *
 * <pre>
 * n₀ = (N - Σ nᵢ²/N)/(J - 1),  s_between² = (MSB - MSW)/n₀,  ICC = (MSB - MSW)/(MSB + (n₀ - 1) MSW)
 * </pre>
 *
 * <p>Analysis of variance with one factor; the intraclass correlation ICC(1,1) and its interval are those of Shrout and
 * Fleiss, Psychol Bull 1979;86:420-428, exact for groups of one size and approximate, with n₀, for others.
 *
 * @param squaresBetween sum of squares of the group means about the grand mean, each as often as it has values
 * @param squaresWithin sum of squares about the group means
 * @param groups at least 2
 * @param n all values, more than groups
 * @param n0 the size of a group, as it counts between groups
 */
public record OneWay(double grandMean, double squaresBetween, double squaresWithin, int groups, int n, double n0) {

    public OneWay {
        if (groups < 2 || n <= groups) {
            throw new IllegalArgumentException("needs 2 groups and a spread within, got %d in %d".formatted(n, groups));
        }
    }

    /** From the values of each group. */
    public static OneWay of(List<double[]> groups) {
        var all = new ExactSum();
        groups.forEach(g -> {
            for (double x : g) {
                all.accept(x);
            }
        });
        // the grand mean is taken off before any squaring: a large common offset would eat the digits
        double origin = all.mean();
        double within = 0;
        double between = 0;
        for (double[] group : groups) {
            var sum = new ExactSum();
            for (double x : group) {
                sum.accept(x - origin);
            }
            double mean = sum.mean();
            between += group.length * mean * mean;
            for (double x : group) {
                within += Math.pow(x - origin - mean, 2);
            }
        }
        var sizes = groups.stream().mapToInt(g -> g.length).toArray();
        return sized(origin, between, within, sizes);
    }

    /** From the moments of each group. */
    public static OneWay ofMoments(List<Moments> groups) {
        double origin = Subgroups.together(groups).mean();
        double within =
                groups.stream().mapToDouble(g -> (g.n() - 1) * g.sd() * g.sd()).sum();
        double between = groups.stream()
                .mapToDouble(g -> g.n() * Math.pow(g.mean() - origin, 2))
                .sum();
        return sized(
                origin, between, within, groups.stream().mapToInt(Moments::n).toArray());
    }

    private static OneWay sized(double mean, double between, double within, int... sizes) {
        double n = 0;
        double squares = 0;
        for (int size : sizes) {
            n += size;
            squares += (double) size * size;
        }
        return new OneWay(mean, between, within, sizes.length, (int) n, (n - squares / n) / (sizes.length - 1));
    }

    public double meanSquareBetween() {
        return squaresBetween / (groups - 1);
    }

    public double meanSquareWithin() {
        return squaresWithin / (n - groups);
    }

    public double f() {
        return meanSquareBetween() / meanSquareWithin();
    }

    /** Probability of an F at least as large without differences between groups. No licence to ignore the groups. */
    public double p() {
        return Quantiles.fTail(f(), groups - 1, n - groups);
    }

    /** The variance between groups as it comes out; may be negative. */
    public double rawVarianceBetween() {
        return (meanSquareBetween() - meanSquareWithin()) / n0;
    }

    /** The variance between groups for use, not below 0. */
    public double varianceBetween() {
        return Math.max(0, rawVarianceBetween());
    }

    /** The intraclass correlation as it comes out; may be negative. */
    public double icc() {
        return (meanSquareBetween() - meanSquareWithin()) / (meanSquareBetween() + (n0 - 1) * meanSquareWithin());
    }

    /** {@code (F_ - 1)/(F_ + n₀ - 1)} with {@code F_ = F/F((1±level)/2; J-1, N-J)}; a negative limit is kept. */
    public Interval iccInterval(double level) {
        Quantiles.requireLevel(level);
        double low = f() / Quantiles.f((1 + level) / 2, groups - 1, n - groups);
        double high = f() / Quantiles.f((1 - level) / 2, groups - 1, n - groups);
        return new Interval((low - 1) / (low + n0 - 1), (high - 1) / (high + n0 - 1));
    }
}
