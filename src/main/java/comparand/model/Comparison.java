package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pair and its answer.
 *
 * @param adjustedP Holm's adjusted p over the family of device comparisons; empty outside of it
 */
public record Comparison(Pairing pairing, Optional<Margin> margin, Answer answer, OptionalDouble adjustedP) {

    public Comparison {
        requireNonNull(pairing, "pairing");
        requireNonNull(margin, "margin");
        requireNonNull(answer, "answer");
        requireNonNull(adjustedP, "adjustedP");
    }
}
