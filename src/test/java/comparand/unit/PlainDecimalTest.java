package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The short way from a cell to a number gives what the long way gives, to the bit, or leaves the cell to it. */
class PlainDecimalTest {

    @Property(tries = 5000)
    void bothWaysGiveOneNumber(@ForAll("numbers") String text, @ForAll DecimalSign decimal) {
        PlainDecimal.read(text, decimal).ifPresent(plain -> {
            var read = PrintedNumber.read(text, decimal).orThrow();
            assertThat(Double.doubleToRawLongBits(plain.value()))
                    .isEqualTo(Double.doubleToRawLongBits(read.toDouble()));
            assertThat(plain.decimals()).isEqualTo(read.decimals());
        });
    }

    @Provide
    Arbitrary<String> numbers() {
        var signs = Arbitraries.of("", "-", "+", "−", "--");
        var digits =
                Arbitraries.strings().withChars("0123456789").ofMinLength(0).ofMaxLength(18);
        var middles = Arbitraries.of("", ".", ",", "·", " ", "e", "..");
        var ends = Arbitraries.strings().withChars("0123456789x").ofMaxLength(9);
        return net.jqwik.api.Combinators.combine(signs, digits, middles, ends).as((s, d, m, e) -> s + d + m + e);
    }

    @Test
    void takesWhatNearlyAllCellsHold() {
        assertThat(PlainDecimal.read("72.4", DecimalSign.POINT)).contains(new PlainDecimal(72.4, 1));
        assertThat(PlainDecimal.read("-0,05", DecimalSign.COMMA)).contains(new PlainDecimal(-0.05, 2));
        assertThat(PlainDecimal.read("0", DecimalSign.POINT)).contains(new PlainDecimal(0, 0));
        assertThat(PlainDecimal.read("123456789012345", DecimalSign.POINT))
                .contains(new PlainDecimal(123456789012345.0, 0));
    }

    @Test
    void leavesTheRest() {
        for (var text : List.of("", "-", ".", "1.", ".5", "01", "1,2", "1.2.3", "1e3", "+1", "1234567890123456", "٣")) {
            assertThat(PlainDecimal.read(text, DecimalSign.POINT))
                    .describedAs(text)
                    .isEmpty();
        }
    }
}
