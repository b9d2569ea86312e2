package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * The standard deviation of single results that a plan rests on.
 *
 * @param value in the metric's unit, above 0
 * @param df degrees of freedom of the local results it was found from, or would be found from; empty where there are none
 */
public record PlanningSd(double value, From from, OptionalDouble df) {

    /** Where a standard deviation for planning comes from. */
    public enum From {
        /** The dossier states it. */
        DECLARED,
        /** From both local groups together. */
        POOLED,
        /** From our own results, the other side being published. */
        OURS
    }

    public PlanningSd {
        requireNonNull(from, "from");
        requireNonNull(df, "df");
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a plan needs a spread above 0, got " + value);
        }
    }
}
