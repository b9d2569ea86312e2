package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintedNumberTest {

    @Test
    void trailingZerosAreEvidence() {
        assertThat(PrintedNumber.of("0.90").halfUnit()).isCloseTo(0.005, within(1e-15));
        assertThat(PrintedNumber.of("0.9").halfUnit()).isCloseTo(0.05, within(1e-15));
        assertThat(PrintedNumber.of("65").halfUnit()).isEqualTo(0.5);
        assertThat(PrintedNumber.of("0.90").significantDigits()).isEqualTo(2);
        assertThat(PrintedNumber.of("65.0").significantDigits()).isEqualTo(3);
    }

    @ParameterizedTest(name = "{0} with decimal {1}: {2}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "1_000 | POINT | underscore",
                "1e400 | POINT | power of ten",
                "1E3 | COMMA | power of ten",
                "017 | POINT | zero too many",
                "12:30 | POINT | time or a ratio",
                "1:20:30 | POINT | time or a ratio",
                "0,77 | POINT | decimal comma",
                "0.77 | COMMA | decimal point",
                "1,000 | POINT | thousands",
                "12.000 | COMMA | thousands",
                "1.2.3 | POINT | not a number",
                "no | POINT | not a number",
                "NaN | POINT | not a number",
                "Infinity | POINT | not a number",
                "0x1F | POINT | not a number",
                "12 000 | POINT | thousands",
                "5± | POINT | not a number",
                ".5 | POINT | not a number",
                "5. | POINT | not a number",
                "99999999999999999999999999 | POINT | more digits",
                "<10 | POINT | not a number"
            })
    void whatHasBeenMisreadBeforeIsRefused(String text, DecimalSign sign, String says) {
        PrintedNumber.read(text, sign)
                .fold(
                        number -> {
                            throw new AssertionError(text + " was read as " + number.value());
                        },
                        fault -> assertThat(fault.problem()).contains(says));
    }

    @ParameterizedTest(name = "{0} with decimal {1} is {2}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "0,77 | COMMA | 0.77",
                "-5 | POINT | -5",
                "−5 | POINT | -5",
                "+3.2 | POINT | 3.2",
                "0·98 | POINT | 0.98",
                "12.000 | POINT | 12.000",
                "0 | POINT | 0"
            })
    void whatPapersPrintIsRead(String text, DecimalSign sign, String value) {
        var number = PrintedNumber.read(text, sign).orThrow();

        assertThat(number.value()).isEqualTo(new BigDecimal(value));
        assertThat(number.text()).isEqualTo(text);
    }
}
