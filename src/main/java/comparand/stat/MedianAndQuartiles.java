package comparand.stat;

import java.util.Optional;

/** A median between the quartiles of n values. */
public record MedianAndQuartiles(double q1, double median, double q3, int n) implements MedianSummary {

    /** From fewer values quartiles say too little of a standard deviation; a convention. */
    public static final int FEWEST = 8;

    public MedianAndQuartiles {
        if (!(q1 <= median && median <= q3) || Double.isInfinite(q3 - q1)) {
            throw new IllegalArgumentException("not in order: %s, %s, %s".formatted(q1, median, q3));
        }
        SpreadConversion.requireCount(n, 2);
    }

    @Override
    public double mean() {
        return SpreadConversion.meanFromQuartiles(q1, median, q3, n);
    }

    @Override
    public double sd() {
        return SpreadConversion.sdFromQuartiles(q1, q3, n);
    }

    /** {@code (q₁ + m + q₃)/3}. */
    @Override
    public double meanAfterWan() {
        return (q1 + median + q3) / 3;
    }

    @Override
    public double sdAfterWan() {
        return sd();
    }

    @Override
    public boolean looksSkewed() {
        return SpreadConversion.quartilesLookSkewed(q1, median, q3, n);
    }

    @Override
    public int fewest() {
        return FEWEST;
    }

    @Override
    public Optional<MedianSummary> logarithms() {
        return q1 > 0
                ? Optional.of(new MedianAndQuartiles(Math.log(q1), Math.log(median), Math.log(q3), n))
                : Optional.empty();
    }
}
