package comparand.model;

import static java.util.Objects.requireNonNull;

/**
 * A value that takes no part, and why. It is listed in every output.
 *
 * @param comparand made by the same steps as those that take part, so that it can be traced
 * @param detail what completes the reason: the notice, the other source, the finding
 */
public record SetAside(Comparand comparand, Reason reason, String detail) {

    /** Why a value takes no part. */
    public enum Reason {
        RETRACTED,
        SUPERSEDED,
        PREPRINT,
        SAME_STUDY,
        LEFT_OUT,
        HELD
    }

    public SetAside {
        requireNonNull(comparand, "comparand");
        requireNonNull(reason, "reason");
        requireNonNull(detail, "detail");
    }
}
