package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Unit;

/**
 * A letter of a formula.
 *
 * @param id the quantity, as data columns, conditions and other metrics name it, such as {@code blood-flow}
 * @param symbol as it stands in the formula
 * @param meaning in words
 * @param unit the unit in which the formula expects it
 */
public record Input(String id, String symbol, String meaning, Unit unit) {

    public Input {
        requireNonNull(unit, "unit");
        if (id.isBlank() || symbol.isBlank() || meaning.isBlank()) {
            throw new IllegalArgumentException("an input has an id, a symbol and a meaning");
        }
    }

    public static Input of(String id, String symbol, String meaning, String unit) {
        return new Input(id, symbol, meaning, Unit.of(unit));
    }
}
