package comparand.model.library;

import comparand.unit.Printed;
import java.util.Optional;

/** A margin as a dossier states it: a quantity, or {@code none} to print intervals without an answer. */
public record StatedMargin(Optional<Printed> amount) {

    public static final String NONE_WORD = "none";
    public static final StatedMargin NONE = new StatedMargin(Optional.empty());

    @Override
    public String toString() {
        return amount.map(Printed::toString).orElse(NONE_WORD);
    }
}
