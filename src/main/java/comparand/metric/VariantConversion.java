package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * How a value defined one way becomes a value defined another way.
 *
 * @param formula with the value itself written {@code x}
 * @param needs what else it takes, found among the value's own conditions; refused when one is missing
 * @param computation given the value as input {@link #VALUE}
 */
public record VariantConversion(
        String from, String to, String formula, List<Input> needs, Citation citation, Computation computation) {

    /** The name under which the value to be converted is handed to the computation. */
    public static final String VALUE = "value";

    public VariantConversion {
        requireNonNull(citation, "citation");
        requireNonNull(computation, "computation");
        needs = List.copyOf(needs);
        if (from.equals(to)) {
            throw new IllegalArgumentException("a conversion leads somewhere else, got " + from + " to " + to);
        }
    }
}
