package comparand.stat;

import java.util.Optional;

/** A median between the smallest and the largest of n values. */
public record MedianAndRange(double min, double median, double max, int n) implements MedianSummary {

    /** From fewer values extremes say too little of a standard deviation; a convention. */
    public static final int FEWEST = 5;

    public MedianAndRange {
        if (!(min <= median && median <= max) || Double.isInfinite(max - min)) {
            throw new IllegalArgumentException("not in order: %s, %s, %s".formatted(min, median, max));
        }
        SpreadConversion.requireCount(n, 2);
    }

    @Override
    public double mean() {
        return SpreadConversion.meanFromRange(min, median, max, n);
    }

    @Override
    public double sd() {
        return SpreadConversion.sdFromRange(min, max, n);
    }

    /** {@code (a + 2m + b)/4}. */
    @Override
    public double meanAfterWan() {
        return (min + 2 * median + max) / 4;
    }

    @Override
    public double sdAfterWan() {
        return SpreadConversion.sdFromRangeApproximately(min, max, n);
    }

    @Override
    public boolean looksSkewed() {
        return SpreadConversion.extremesLookSkewed(min, median, max, n);
    }

    @Override
    public int fewest() {
        return FEWEST;
    }

    @Override
    public Optional<MedianSummary> logarithms() {
        return min > 0
                ? Optional.of(new MedianAndRange(Math.log(min), Math.log(median), Math.log(max), n))
                : Optional.empty();
    }
}
