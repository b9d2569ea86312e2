package comparand.study.quality;

import static java.util.Objects.requireNonNull;

import comparand.unit.Rounding;
import comparand.unit.Unit;

/** A number as it stands in a cell, with the unit its column declares and the decimals it was written with. */
public record Written(double value, Unit unit, int decimals) {

    public Written {
        requireNonNull(unit, "unit");
    }

    double in(Unit target) {
        return unit.convert(value, target);
    }

    /** The same digits under another unit. */
    Written as(Unit other) {
        return new Written(value, other, decimals);
    }

    /** Such as {@code 112 g/dL}. */
    @Override
    public String toString() {
        return Amounts.text(Rounding.halfUp(value, decimals).toPlainString(), unit);
    }
}
