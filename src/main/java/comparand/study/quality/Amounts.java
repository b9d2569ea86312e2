package comparand.study.quality;

import comparand.unit.Rounding;
import comparand.unit.Unit;

/** Numbers in sentences. */
final class Amounts {

    private Amounts() {}

    /** With at most so many significant digits, and no zeros behind them: 0.58, 11.2, 112. */
    static String plain(double value, int digits) {
        var rounded = Rounding.significant(value, digits);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A number with its unit; a bare number has none. */
    static String text(String number, Unit unit) {
        return unit.isNumber() ? number : number + " " + unit;
    }

    static String text(double value, Unit unit) {
        return text(plain(value, 3), unit);
    }
}
