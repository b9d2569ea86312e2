package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.Library.PublishedValue;

/**
 * A published value that takes no part, and why. It is listed in every output.
 *
 * @param detail what completes the reason: the notice, the other source, the finding
 */
public record SetAside(PublishedValue value, Reason reason, String detail) {

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
        requireNonNull(value, "value");
        requireNonNull(reason, "reason");
        requireNonNull(detail, "detail");
    }
}
