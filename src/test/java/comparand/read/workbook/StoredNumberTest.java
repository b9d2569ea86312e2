package comparand.read.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * IEEE 754-2019, 5.12.2: a decimal of up to 15 digits survives the way into binary64 and back; 17 digits always tell two
 * doubles apart.
 */
class StoredNumberTest {

    @ParameterizedTest
    @CsvSource({
        "7.3499999999999996, 7.35",
        "0.10000000000000001, 0.1",
        "0.30000000000000004, 0.30000000000000004",
        "12, 12",
        "120, 120",
        "1.5E-3, 0.0015",
        "1.0E+2, 100",
        "-0, 0",
        "36.600000000000001, 36.6"
    })
    void theNumberThatWasTypedComesBack(String stored, String typed) {
        assertThat(StoredNumber.shortest(stored)).isEqualTo(new BigDecimal(typed));
    }

    @Property
    void anyDecimalOfFifteenDigitsComesBackFromSeventeen(
            @ForAll @LongRange(min = -999_999_999_999_999L, max = 999_999_999_999_999L) long digits,
            @ForAll @IntRange(min = 0, max = 12) int decimals) {
        var typed = BigDecimal.valueOf(digits, decimals);
        var stored = new BigDecimal(typed.doubleValue()).round(new MathContext(17));

        assertThat(StoredNumber.shortest(stored.toString())).isEqualByComparingTo(typed);
    }

    @Property
    void everyDoubleIsStoredAsTheSameBitsAgain(@ForAll double bits) {
        var stored = new BigDecimal(bits).round(new MathContext(17)).toString();

        assertThat(StoredNumber.shortest(stored).doubleValue()).isEqualTo(bits == 0 ? 0.0 : bits);
    }

    @Test
    void whatIsNoFiniteNumberIsRefused() {
        assertThatThrownBy(() -> StoredNumber.shortest("1E400")).isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> StoredNumber.shortest("NaN")).isInstanceOf(NumberFormatException.class);
    }
}
