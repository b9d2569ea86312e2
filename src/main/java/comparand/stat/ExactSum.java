package comparand.stat;

import java.util.Arrays;
import java.util.function.DoubleConsumer;

/**
 * A running sum that is exact until it is read and rounded once when it is: the same whatever the order of the values.
 *
 * <p>Keeps non-overlapping partial sums, of which there are never more than about 40 for doubles (2098 bits in pieces of
 * 53), and usually two or three. Shewchuk, Discrete Comput Geom 1997;18:305-363 (grow-expansion); the final rounding
 * half to even is that of a correctly rounded sum. Sums that overflow a double are refused.
 */
public final class ExactSum implements DoubleConsumer {

    private double[] partials = new double[8];
    private int used;
    private long count;

    /** Adds one value; refuses what is not finite. */
    @Override
    public void accept(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only finite values have a sum, got " + value);
        }
        add(value);
        count++;
    }

    /** Adds all that another sum holds; the other is left as it is. */
    public void accept(ExactSum other) {
        for (double partial : Arrays.copyOf(other.partials, other.used)) {
            add(partial);
        }
        count += other.count;
    }

    private void add(double value) {
        double x = value;
        int kept = 0;
        for (int i = 0; i < used; i++) {
            double y = partials[i];
            double high = x + y;
            if (Double.isInfinite(high)) {
                throw new ArithmeticException("the sum is larger than a double holds");
            }
            // what the addition lost, exactly, whichever of the two is larger (Knuth's two-sum)
            double virtual = high - x;
            double low = (x - (high - virtual)) + (y - virtual);
            if (low != 0) {
                partials[kept++] = low;
            }
            x = high;
        }
        if (kept == partials.length) {
            partials = Arrays.copyOf(partials, 2 * partials.length);
        }
        partials[kept] = x;
        used = kept + 1;
    }

    /** The number of values added. */
    public long count() {
        return count;
    }

    /** The double nearest to the exact sum; 0 for no values. */
    public double sum() {
        int i = used;
        if (i == 0) {
            return 0;
        }
        double high = partials[--i];
        double low = 0;
        while (i > 0 && low == 0) {
            double x = high;
            double y = partials[--i];
            high = x + y;
            low = y - (high - x);
        }
        // exactly half a unit off, and the rest points away from where the tie was broken
        if (i > 0 && ((low < 0 && partials[i - 1] < 0) || (low > 0 && partials[i - 1] > 0))) {
            double twice = 2 * low;
            double rounded = high + twice;
            if (twice == rounded - high) {
                high = rounded;
            }
        }
        return high;
    }

    /**
     * The mean.
     *
     * @throws IllegalStateException for no values
     */
    public double mean() {
        if (count == 0) {
            throw new IllegalStateException("no values have no mean");
        }
        return sum() / count;
    }
}
