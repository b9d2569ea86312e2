package comparand.unit;

import static java.util.Objects.requireNonNull;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A quantity as a source prints it: the number with its digits, and the unit with its spelling. A number without a
 * unit has {@link Unit#ONE}.
 */
public record Printed(PrintedNumber number, Unit unit) {

    public Printed {
        requireNonNull(number, "number");
        requireNonNull(unit, "unit");
    }

    /** A quantity this program itself names, such as {@code 10 mmHg}. */
    public static Printed of(String text) {
        return QuantityText.quantity(text, DecimalSign.POINT).orThrow();
    }

    /** The amount in another unit, from the exact factor and one rounding to double. */
    public double in(Unit target) {
        // most are asked for in the unit they are printed in, where the digits alone say it
        return unit.equals(target)
                ? number.toDouble()
                : unit.convert(number.exact(), target).doubleValue();
    }

    /** The amount read as a difference, spread or tolerance: offsets such as that of °C take no part. */
    public double asDifferenceIn(Unit target) {
        return exactDifferenceIn(target).doubleValue();
    }

    public BigFraction exactDifferenceIn(Unit target) {
        return number.exact().multiply(unit.stepIn(target));
    }

    /** Half a unit in the last printed place, in another unit. */
    public double halfUnitIn(Unit target) {
        return unit.stepIn(target).doubleValue() * number.halfUnit();
    }

    /** Half a unit in the last place that is not zero: "about 60" may stand for anything that rounds to it. */
    public double roughHalfUnitIn(Unit target) {
        double place = Math.pow(10, -number.value().stripTrailingZeros().scale());
        return unit.stepIn(target).doubleValue() * 0.5 * place;
    }

    /** As written: {@code 9.3 kPa}. */
    @Override
    public String toString() {
        return unit.spelling().isEmpty() ? number.text() : number.text() + " " + unit.spelling();
    }
}
