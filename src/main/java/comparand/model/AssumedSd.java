package comparand.model;

import static java.util.Objects.requireNonNull;

/** One of the standard deviations for which a plan gives its numbers, in the metric's unit. */
public record AssumedSd(Which which, double value) {

    /** How it stands to the one at hand. */
    public enum Which {
        /** Three quarters of the one at hand. */
        SMALLER,
        /** The one at hand. */
        AT_HAND,
        /** The upper 80 % limit of the one at hand. */
        UPPER
    }

    public AssumedSd {
        requireNonNull(which, "which");
    }
}
