package comparand.stat;

/**
 * Two one-sided tests of a difference against margins fixed beforehand; Schuirmann, J Pharmacokinet Biopharm
 * 1987;15:657-680 (from memory). Both reject at level α exactly where the interval of level {@code 1 - 2α} lies within the
 * margins.
 *
 * @param tLower {@code (D - lower)/SE}
 * @param tUpper {@code (D - upper)/SE}
 * @param pLower probability of a difference at least as far above the lower margin, were it the true one
 * @param pUpper the same below the upper margin
 * @param interval of the difference, of level {@code 1 - 2α}
 * @param within whether the interval lies within the margins
 */
public record TwoOneSided(
        double tLower, double tUpper, double pLower, double pUpper, Interval interval, boolean within) {

    /**
     * Tests one difference.
     *
     * @param alpha of each side, below 0.5
     * @throws IllegalArgumentException for a standard error of 0, which leaves nothing to test
     */
    public static TwoOneSided of(MeanDifference difference, Interval margins, double alpha) {
        if (!(difference.se() > 0)) {
            throw new IllegalArgumentException("a difference without uncertainty is not tested");
        }
        double lower = (difference.value() - margins.low()) / difference.se();
        double upper = (difference.value() - margins.high()) / difference.se();
        var interval = difference.interval(1 - 2 * alpha);
        return new TwoOneSided(
                lower,
                upper,
                difference.tail(lower),
                difference.tail(-upper),
                interval,
                interval.insideOf(margins.low(), margins.high()));
    }

    /** The larger of both. */
    public double p() {
        return Math.max(pLower, pUpper);
    }
}
