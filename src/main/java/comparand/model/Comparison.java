package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pair and its answer.
 *
 * @param ifCompared what would be answered if the two were compared whatever their conditions; for who tries other tolerances, and
 *     never printed as an answer
 * @param adjustedP Holm's adjusted p over the family of device comparisons; empty outside of it
 */
public record Comparison(Pairing pairing, Optional<Margin> margin, Answer ifCompared, OptionalDouble adjustedP) {

    public Comparison {
        requireNonNull(pairing, "pairing");
        requireNonNull(margin, "margin");
        requireNonNull(ifCompared, "ifCompared");
        requireNonNull(adjustedP, "adjustedP");
    }

    /** What is said of the pair: shown alone where its conditions forbid more. */
    public Answer answer() {
        return pairing.standing().isCompared() ? ifCompared : new Answer.Shown();
    }
}
