package comparand.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one routine that rounds numbers for print: decimal, half up, from the shortest decimal that stands for the double.
 */
public final class Rounding {

    /** More decimals than any measurement has; a wish for more is cut to this. */
    private static final int MOST = 12;

    private Rounding() {}

    /** With a fixed number of decimals, never a negative zero. */
    public static BigDecimal halfUp(double value, int decimals) {
        var rounded = BigDecimal.valueOf(value).setScale(Math.min(MOST, Math.max(0, decimals)), RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs() : rounded;
    }

    /**
     * How many decimals show a spread with so many significant digits: 1 for 4.1 and two digits, 3 for 0.0213; 0 for a
     * spread of hundreds. Rounding that carries (0.0996 to two digits is 0.10) is followed.
     */
    public static int decimalsFor(double spread, int significantDigits) {
        if (spread == 0 || !Double.isFinite(spread)) {
            return 0;
        }
        int decimals = decimalsBeforeCarry(Math.abs(spread), significantDigits);
        double carried = halfUp(Math.abs(spread), decimals).doubleValue();
        return carried == 0 ? decimals : Math.min(decimals, decimalsBeforeCarry(carried, significantDigits));
    }

    private static int decimalsBeforeCarry(double size, int significantDigits) {
        int exponent = (int) Math.floor(Math.log10(size) + 1e-12);
        return Math.min(MOST, Math.max(0, significantDigits - 1 - exponent));
    }

    /** With a number of significant digits; trailing zeros count. */
    public static BigDecimal significant(double value, int digits) {
        return value == 0 ? BigDecimal.ZERO : wholeOrDecimal(value, digits);
    }

    private static BigDecimal wholeOrDecimal(double value, int digits) {
        var rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : padded(rounded, digits);
    }

    private static BigDecimal padded(BigDecimal rounded, int digits) {
        int missing = digits - rounded.precision();
        return missing > 0
                ? rounded.setScale(Math.min(MOST, rounded.scale() + missing), RoundingMode.UNNECESSARY)
                : rounded;
    }
}
