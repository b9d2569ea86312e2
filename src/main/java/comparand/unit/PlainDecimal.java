package comparand.unit;

import java.util.Optional;

/**
 * Reads the numbers that nearly all cells of raw files hold: an ASCII sign, digits, the decimal sign, digits, no more than 15
 * of them. Such a number is a whole number below 2^53 divided by a power of ten that a double holds exactly, so one division
 * gives the double nearest to it: the same as {@link PrintedNumber} gives, at a fraction of the time. All else is left to that.
 *
 * @param decimals how many digits stand behind the decimal sign
 */
public record PlainDecimal(double value, int decimals) {

    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** The number, or nothing where it is written in any other way, rightly or wrongly. */
    public static Optional<PlainDecimal> read(String text, DecimalSign decimal) {
        int length = text.length();
        boolean negative = length > 0 && text.charAt(0) == '-';
        int at = negative ? 1 : 0;
        int start = at;
        int point = -1;
        long digits = 0;
        for (; at < length; at++) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else if (c == decimal.sign() && point < 0) {
                point = at;
            } else {
                return Optional.empty();
            }
            if (at - start > MOST_DIGITS) {
                return Optional.empty();
            }
        }
        int whole = (point < 0 ? length : point) - start;
        int decimals = point < 0 ? 0 : length - point - 1;
        boolean leadingZero = whole > 1 && text.charAt(start) == '0';
        if (whole == 0 || whole + decimals > MOST_DIGITS || (point >= 0 && decimals == 0) || leadingZero) {
            return Optional.empty();
        }
        double value = digits / POWERS[decimals];
        // zero has no sign in a decimal number
        return Optional.of(new PlainDecimal(negative && digits != 0 ? -value : value, decimals));
    }
}
