package comparand.read.workbook;

import comparand.unit.Rounding;
import java.math.BigDecimal;

/**
 * The decimal number a person typed, from the binary number a workbook stores. Spreadsheet programs write 7.35 as
 * {@code 7.3499999999999996}; of all decimals stored as the same bits the shortest is taken.
 */
final class StoredNumber {

    /** Any decimal of so many digits survives the way into a double and back (IEEE 754 binary64). */
    private static final int ALWAYS_EXACT = 15;

    private static final int NEVER_MORE = 17;

    private StoredNumber() {}

    /**
     * The shortest decimal that is stored as the same bits.
     *
     * @throws NumberFormatException if the text is no finite number
     */
    static BigDecimal shortest(String stored) {
        var written = new BigDecimal(stored);
        double bits = written.doubleValue();
        if (Double.isInfinite(bits)) {
            throw new NumberFormatException(stored);
        }
        // what is stored as nought is nought, however many zeros would stand before its digits
        if (bits == 0) {
            return BigDecimal.ZERO;
        }
        if (written.precision() <= ALWAYS_EXACT) {
            return plain(written);
        }
        for (int digits = ALWAYS_EXACT; digits < NEVER_MORE; digits++) {
            var shorter = Rounding.significant(bits, digits);
            if (shorter.doubleValue() == bits) {
                return plain(shorter);
            }
        }
        return plain(Rounding.significant(bits, NEVER_MORE));
    }

    /** Without zeros behind the decimal sign, and without a power of ten. */
    private static BigDecimal plain(BigDecimal number) {
        var shortened = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return shortened.scale() >= 0 ? shortened : new BigDecimal(shortened.toPlainString());
    }
}
