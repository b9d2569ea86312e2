package comparand.stat;

/**
 * What an SD can be at all, given the range of the values, or the bounds of the quantity. Algebra on the definition of the
 * SD: the smallest has all values but the two extremes in the middle, the largest has half of them at either end.
 */
public final class SpreadPlausibility {

    private SpreadPlausibility() {}

    /** What a printed SD looks like beside what it can be. */
    public enum Finding {
        POSSIBLE,
        /** Too large: an error of entry. */
        TOO_LARGE,
        /** Too small: the printed number may be a standard error. */
        TOO_SMALL
    }

    /**
     * {@code R/√(2(n-1)) <= SD <= (R/2)√(n/(n-1))}, for an odd n {@code <= R √((n+1)/(4n))}.
     *
     * @param range the largest of n values minus the smallest
     */
    public static Interval fromRange(double range, int n) {
        SpreadConversion.requireCount(n, 2);
        double most = n % 2 == 0 ? range / 2 * Math.sqrt(n / (n - 1.0)) : range * Math.sqrt((n + 1.0) / (4.0 * n));
        return new Interval(Math.min(range / Math.sqrt(2.0 * (n - 1)), most), most);
    }

    /**
     * {@code SD² <= (u - m)(m - l) n/(n-1)} for a quantity that lies between l and u.
     *
     * @throws IllegalArgumentException if the mean lies outside the bounds
     */
    public static double mostWithin(Interval bounds, double mean, int n) {
        SpreadConversion.requireCount(n, 2);
        if (!bounds.contains(mean)) {
            throw new IllegalArgumentException("a mean lies within the bounds, got " + mean);
        }
        return Math.sqrt((bounds.high() - mean) * (mean - bounds.low()) * n / (n - 1.0));
    }

    /**
     * An SD beside its bounds.
     *
     * @param rounding half a unit of the last printed digit of the SD
     */
    public static Finding of(double sd, Interval possible, double rounding) {
        if (sd - rounding > possible.high()) {
            return Finding.TOO_LARGE;
        }
        return sd + rounding < possible.low() ? Finding.TOO_SMALL : Finding.POSSIBLE;
    }
}
