package comparand.model;

import comparand.stat.Interval;

/**
 * For which margins an answer would be the one it is: above one and below another.
 *
 * @param above 0 where there is no such limit
 * @param below infinite where there is no such limit
 */
public record MarginRange(double above, double below) {

    public MarginRange {
        if (!(above >= 0 && below >= above)) {
            throw new IllegalArgumentException("not a range of margins: %s to %s".formatted(above, below));
        }
    }

    /** Of a verdict that some margin gives for an interval of differences; without a margin there is none to vary. */
    public static MarginRange of(Verdict verdict, Interval d) {
        double nearer = Math.min(Math.abs(d.low()), Math.abs(d.high()));
        double farther = Math.max(Math.abs(d.low()), Math.abs(d.high()));
        return switch (verdict) {
            case HIGHER_BEYOND_MARGIN, LOWER_BEYOND_MARGIN -> new MarginRange(0, nearer);
            case HIGHER_MARGIN_OPEN, LOWER_MARGIN_OPEN -> new MarginRange(nearer, farther);
            case NONE_AS_LARGE_AS_MARGIN, SMALLER_THAN_MARGIN -> new MarginRange(farther, Double.POSITIVE_INFINITY);
            case NOT_SETTLED -> new MarginRange(0, farther);
            case HIGHER, LOWER -> new MarginRange(0, Double.POSITIVE_INFINITY);
        };
    }
}
