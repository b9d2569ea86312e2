package comparand.stat;

import java.util.Optional;

/** Extremes, quartiles and median of n values. */
public record FiveNumbers(double min, double q1, double median, double q3, double max, int n) implements MedianSummary {

    public FiveNumbers {
        if (!(min <= q1 && q1 <= median && median <= q3 && q3 <= max) || Double.isInfinite(max - min)) {
            throw new IllegalArgumentException("not in order: %s, %s, %s, %s, %s".formatted(min, q1, median, q3, max));
        }
        SpreadConversion.requireCount(n, 2);
    }

    /**
     * {@code w₁(a + b)/2 + w₂(q₁ + q₃)/2 + (1 - w₁ - w₂)m} with {@code w₁ = 2.2/(2.2 + n^0.75)} and
     * {@code w₂ = 0.7 - 0.72/n^0.55}.
     */
    @Override
    public double mean() {
        double w1 = 2.2 / (2.2 + Math.pow(n, 0.75));
        double w2 = 0.7 - 0.72 / Math.pow(n, 0.55);
        return w1 * (min + max) / 2 + w2 * (q1 + q3) / 2 + (1 - w1 - w2) * median;
    }

    /** {@code w · SD_range + (1 - w) · SD_quartiles} with {@code w = 1/(1 + 0.07 n^0.6)}; Shi et al. 2020. */
    @Override
    public double sd() {
        double w = 1 / (1 + 0.07 * Math.pow(n, 0.6));
        return w * SpreadConversion.sdFromRangeApproximately(min, max, n)
                + (1 - w) * SpreadConversion.sdFromQuartiles(q1, q3, n);
    }

    /** {@code (a + 2q₁ + 2m + 2q₃ + b)/8}. */
    @Override
    public double meanAfterWan() {
        return (min + 2 * q1 + 2 * median + 2 * q3 + max) / 8;
    }

    /** The mean of the SD from the range and that from the quartiles. */
    @Override
    public double sdAfterWan() {
        return (SpreadConversion.sdFromRangeApproximately(min, max, n) + SpreadConversion.sdFromQuartiles(q1, q3, n))
                / 2;
    }

    /** Either pair around the median. */
    @Override
    public boolean looksSkewed() {
        return SpreadConversion.extremesLookSkewed(min, median, max, n)
                || SpreadConversion.quartilesLookSkewed(q1, median, q3, n);
    }

    @Override
    public int fewest() {
        return 5;
    }

    @Override
    public Optional<MedianSummary> logarithms() {
        return min > 0
                ? Optional.of(
                        new FiveNumbers(Math.log(min), Math.log(q1), Math.log(median), Math.log(q3), Math.log(max), n))
                : Optional.empty();
    }
}
