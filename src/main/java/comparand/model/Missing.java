package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What a source does not say of some of its values.
 *
 * @param what the conditions in words, for {@link What#CONDITIONS}; else empty
 * @param values ids of the values concerned
 */
public record Missing(What kind, List<String> what, List<String> values) {

    /** What is to be asked for. */
    public enum What {
        /** Conditions or parts of the definition. */
        CONDITIONS,
        /** Standard deviation and number behind a figure. */
        SPREAD,
        /** Whether a printed ± is a standard deviation or a standard error. */
        KIND_OF_SPREAD
    }

    public Missing {
        requireNonNull(kind, "kind");
        what = List.copyOf(what);
        values = List.copyOf(values);
    }
}
