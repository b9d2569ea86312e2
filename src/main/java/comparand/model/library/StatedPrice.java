package comparand.model.library;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/** A price as a dossier states it, or the plain statement that it was not supplied. */
public record StatedPrice(Optional<Price> price) {

    public static final String NOT_SUPPLIED_WORDS = "not supplied";
    public static final StatedPrice NOT_SUPPLIED = new StatedPrice(Optional.empty());

    public StatedPrice {
        requireNonNull(price, "price");
    }

    @Override
    public String toString() {
        return price.map(Price::toString).orElse(NOT_SUPPLIED_WORDS);
    }
}
