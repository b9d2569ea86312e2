package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.metric.Condition;
import comparand.unit.Rounding;
import comparand.unit.Unit;

/**
 * A condition in numbers that is recorded row by row.
 *
 * @param unit the unit of the data file, in which it is printed
 * @param decimals the most decimals met in the file
 */
public record VaryingCondition(Condition condition, Unit unit, int decimals) {

    public VaryingCondition {
        requireNonNull(unit, "unit");
        if (!condition.isNumber()) {
            throw new IllegalArgumentException(condition.id() + " is named in words");
        }
    }

    /** An amount given in the condition's own unit, printed as the file would. */
    public Circumstance.Amount of(double amount) {
        var number = Rounding.halfUp(condition.unit().orElse(Unit.ONE).convert(amount, unit), decimals);
        var spelling = unit.spelling();
        return new Circumstance.Amount(amount, spelling.isEmpty() ? number.toPlainString() : number + " " + spelling);
    }
}
