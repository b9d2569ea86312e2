package comparand.model;

import comparand.stat.Interval;
import java.util.Optional;

/** What an interval for a difference says, given a margin or none. */
public enum Verdict {
    HIGHER_BEYOND_MARGIN,
    LOWER_BEYOND_MARGIN,
    HIGHER_MARGIN_OPEN,
    LOWER_MARGIN_OPEN,
    NONE_AS_LARGE_AS_MARGIN,
    SMALLER_THAN_MARGIN,
    /** With a margin or without: the interval allows both directions. */
    NOT_SETTLED,
    /** No margin was set. */
    HIGHER,
    /** No margin was set. */
    LOWER;

    /** Reads the interval against the margin; a limit that touches zero or the margin does not go beyond it. */
    public static Verdict of(Interval d, Optional<Margin> margin) {
        if (margin.isEmpty()) {
            return d.low() > 0 ? HIGHER : d.high() < 0 ? LOWER : NOT_SETTLED;
        }
        double m = margin.get().value();
        if (d.low() > m) {
            return HIGHER_BEYOND_MARGIN;
        }
        if (d.high() < -m) {
            return LOWER_BEYOND_MARGIN;
        }
        if (d.insideOf(-m, m)) {
            return d.contains(0) ? NONE_AS_LARGE_AS_MARGIN : SMALLER_THAN_MARGIN;
        }
        return d.low() > 0 ? HIGHER_MARGIN_OPEN : d.high() < 0 ? LOWER_MARGIN_OPEN : NOT_SETTLED;
    }
}
