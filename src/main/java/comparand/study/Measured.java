package comparand.study;

import static java.util.Objects.requireNonNull;

import comparand.unit.Unit;

/** A number from a data file with the unit its mapping declares. */
record Measured(double value, Unit unit, int decimals) {

    Measured {
        requireNonNull(unit, "unit");
    }

    double in(Unit target) {
        return unit.convert(value, target);
    }
}
