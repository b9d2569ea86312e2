package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * One thing that a further measurement is to achieve.
 *
 * @param amount the difference to be found, or the half-width of the 95 % interval, in the metric's unit
 * @param results how many results that takes, for each standard deviation assumed, in their order
 * @param hospitals how many hospitals it takes, in the same order; empty unless the spread between hospitals is known
 */
public record PlanAim(Kind kind, double amount, List<Needed> results, List<Needed> hospitals) {

    /** What is to be achieved. */
    public enum Kind {
        /** To find a difference of this size, by the power of the test. */
        DETECT,
        /** To show that the difference is smaller than the margin, if it stays as it was observed. */
        EXCLUDE_MARGIN,
        /** To show that it is larger than the margin, if it stays as it was observed. */
        SHOW_BEYOND
    }

    public PlanAim {
        requireNonNull(kind, "kind");
        results = List.copyOf(results);
        hospitals = List.copyOf(hospitals);
        if (!(amount > 0)) {
            throw new IllegalArgumentException("an aim is more than zero, got " + amount);
        }
    }
}
