package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "1.5 L/min | 1.5 | L/min",
                "72.4mmHg | 72.4 | mm[Hg]",
                "0.71 | 0.71 | 1",
                "38 mL | 38 | mL",
                "-38 % | -38 | %",
                "37 °C | 37 | Cel"
            })
    void aQuantityIsANumberAndAUnit(String text, String number, String code) {
        var quantity = QuantityText.quantity(text, DecimalSign.POINT).orThrow();

        assertThat(quantity.number().text()).isEqualTo(number);
        assertThat(quantity.unit().code()).isEqualTo(code);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "0.1 to 1.2 L/min | 0.1 | 1.2",
                "0.1-1.2 L/min | 0.1 | 1.2",
                "0.1 – 1.2 L/min | 0.1 | 1.2",
                "100 mL/min to 1.2 L/min | 100 | 1.2",
                "-80 to 20 % | -80 | 20"
            })
    void aRangeHasTwoEndsAndOneDimension(String text, String low, String high) {
        var range = QuantityText.range(text, DecimalSign.POINT).orThrow();

        assertThat(range.low().number().text()).isEqualTo(low);
        assertThat(range.high().number().text()).isEqualTo(high);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            useHeadersInDisplayName = false,
            value = {
                "1.2 to 0.1 L/min | downwards",
                "1 mL to 2 mmHg | do not fit",
                "1.2 L/min | not a range",
                "a to b | does not start with a number"
            })
    void whatIsNoRangeIsRefused(String text, String says) {
        String problem = QuantityText.range(text, DecimalSign.POINT).fold(r -> "read", f -> f.problem());

        assertThat(problem).contains(says);
    }

    @Test
    void theFaultPointsAtTheUnitAndNotAtTheNumber() {
        int at = QuantityText.quantity("9.3 kpa", DecimalSign.POINT).fold(q -> -1, f -> f.at());

        assertThat(at).isEqualTo(4);
    }

    @Test
    void aConvertedPrintIsOneRoundingAwayFromExact() {
        // 9.3 kPa / 133.322 Pa, computed to 20 digits by hand: 69.75592925398659...
        assertThat(Printed.of("9.3 kPa").in(Unit.of("mmHg"))).isEqualTo(69.7559292539866);
    }

    @Test
    void aDifferenceOfTemperaturesHasNoOffset() {
        assertThat(Printed.of("1 °C").asDifferenceIn(Unit.of("K"))).isEqualTo(1.0);
        assertThat(Printed.of("1.8 °F").asDifferenceIn(Unit.of("°C"))).isEqualTo(1.0);
    }
}
