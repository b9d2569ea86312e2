package comparand.check;

import comparand.unit.PrintedNumber;
import comparand.unit.Unit;
import java.math.BigDecimal;

/** How the unit of a recorded number fits what the number is to measure. */
enum UnitFit {
    FITS,
    /** A bare number, where a unit is needed. */
    MISSING,
    /** A bare number, where a fraction and per cent are both possible. */
    FRACTION_OR_PER_CENT,
    /** A unit of something else. */
    OTHER_QUANTITY;

    static UnitFit of(Unit given, Unit wanted) {
        if (!given.convertsTo(wanted)) {
            return given.isNumber() ? MISSING : OTHER_QUANTITY;
        }
        return given.isNumber() && !wanted.isNumber() ? FRACTION_OR_PER_CENT : FITS;
    }

    /** What is wrong with {@code text} as {@code name}; for a fit that is not {@link #FITS}. */
    String problem(Object text, String name) {
        return switch (this) {
            case FITS -> throw new IllegalStateException("nothing is wrong with " + text);
            case MISSING -> "`%s` of %s has no unit".formatted(text, name);
            case FRACTION_OR_PER_CENT -> "`%s` of %s may be a fraction or per cent".formatted(text, name);
            case OTHER_QUANTITY -> "`%s` is in a unit that does not measure %s".formatted(text, name);
        };
    }

    /** The line to type, with the digits at hand. */
    String fix(PrintedNumber number, Unit wanted) {
        if (wanted.isNumber()) {
            return "write a bare number";
        }
        return switch (this) {
            case FITS, MISSING -> "write it with its unit as printed, such as `%s %s`".formatted(number, wanted);
            case OTHER_QUANTITY -> "write it in %s, or in another unit of the same quantity".formatted(wanted);
            case FRACTION_OR_PER_CENT -> {
                boolean fraction = number.value().abs().compareTo(BigDecimal.ONE) <= 0;
                var percent = fraction ? number.value().movePointRight(2) : number.value();
                yield "write it in per cent, with the sign, such as `%s %%`".formatted(percent.toPlainString());
            }
        };
    }

    /** What a unit is called in a sentence. */
    static String name(Unit unit) {
        return unit.isNumber() ? "plain numbers" : unit.toString();
    }
}
