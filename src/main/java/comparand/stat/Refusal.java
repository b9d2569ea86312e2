package comparand.stat;

/** Why a method gives no value for the numbers at hand. */
public enum Refusal {
    TOO_FEW_VALUES("there are too few values for the method"),
    TOO_FEW_SOURCES("there are too few sources to learn how much sources differ"),
    NO_SPREAD("a spread of zero gives no weight"),
    NO_SPREAD_WITHIN_CENTRES("no centre has two cases, so the spread within centres is not known"),
    SKEWED("the values are skewed, on the plain and on the logarithmic scale"),
    LIMITS_NOT_CENTRED(
            "the limits lie symmetrically around the mean neither on the plain nor on the logarithmic scale"),
    ROUNDED_TOO_COARSELY("the printed limits are rounded too coarsely to tell their width"),
    NOT_CONVERTIBLE("a p value of 0 or 1, or a statistic of 0, does not tell the standard error"),
    NOT_POSITIVE("the logarithmic scale needs values above zero"),
    UNBOUNDED("the denominator may be zero, so the limits are not determined"),
    SLOPE_NOT_CLEAR("the slope is not clearly different from zero, so the limits are not determined"),
    TOO_FEW_POINTS("a line needs at least 5 points at 3 or more places"),
    EXTRAPOLATED("the place lies outside the points measured"),
    MEAN_NEAR_ZERO("a mean is not far enough above zero for a ratio on the logarithmic scale"),
    OUTSIDE_ITS_RESAMPLES("the estimate lies outside the values of its resamples"),
    INPUTS_CORRELATED("degrees of freedom are not defined for correlated inputs"),
    NOT_REACHABLE("no number of cases reaches the aim");

    private final String words;

    Refusal(String words) {
        this.words = words;
    }

    /** A sentence without its full stop. */
    public String words() {
        return words;
    }
}
