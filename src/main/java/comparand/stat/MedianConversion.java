package comparand.stat;

/**
 * From a median with extremes or quartiles to mean and SD, with the guard against skewed values.
 *
 * <p>Where the numbers look skewed and are all positive, their logarithms are looked at (quantiles survive logarithms) and
 * converted; where those look skewed too, nothing is.
 */
public final class MedianConversion {

    private MedianConversion() {}

    /**
     * Estimated moments.
     *
     * @param scale the scale on which {@code moments} stand
     */
    public record Converted(IntervalConversion.Scale scale, Moments moments) {}

    /** Refused for too few values, and for values skewed on both scales. */
    public static Derived<Converted> of(MedianSummary summary) {
        if (summary.n() < summary.fewest()) {
            return Derived.refused(Refusal.TOO_FEW_VALUES);
        }
        if (!summary.looksSkewed()) {
            return Derived.of(converted(IntervalConversion.Scale.PLAIN, summary));
        }
        return summary.logarithms()
                .filter(logs -> !logs.looksSkewed())
                .map(logs -> Derived.of(converted(IntervalConversion.Scale.LOGARITHMIC, logs)))
                .orElseGet(() -> Derived.refused(Refusal.SKEWED));
    }

    private static Converted converted(IntervalConversion.Scale scale, MedianSummary summary) {
        return new Converted(scale, new Moments(summary.mean(), summary.sd(), summary.n()));
    }
}
