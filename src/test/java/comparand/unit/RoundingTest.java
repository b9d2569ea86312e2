package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {

    @ParameterizedTest(name = "{0} to {1} decimals is {2}")
    @CsvSource({
        "0.125, 2, 0.13",
        "2.5, 0, 3",
        "-2.5, 0, -3",
        "-0.04, 1, 0.0",
        "1.005, 2, 1.01",
        "72.4, 1, 72.4",
        "0, 2, 0.00"
    })
    void halvesGoUpFromTheDecimalThatIsSeen(double value, int decimals, String expected) {
        assertThat(Rounding.halfUp(value, decimals).toPlainString()).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} with {1} digits needs {2} decimals")
    @CsvSource({
        "4.1, 2, 1",
        "0.0213, 2, 3",
        "123, 2, 0",
        "0.0996, 2, 2",
        "9.96, 2, 0",
        "9.94, 2, 1",
        "1, 2, 1",
        "0.8, 1, 1",
        "0, 2, 0"
    })
    void decimalsFollowTheSpreadThroughCarries(double spread, int digits, int decimals) {
        assertThat(Rounding.decimalsFor(spread, digits)).isEqualTo(decimals);
    }

    @ParameterizedTest(name = "{0} to {1} digits is {2}")
    @CsvSource({"69.7559, 2, 70", "9.3, 2, 9.3", "0.0997, 2, 0.10", "1234.5, 2, 1200", "5, 3, 5.00", "0, 3, 0"})
    void significantDigitsKeepTheirZeros(double value, int digits, String expected) {
        assertThat(Rounding.significant(value, digits).toPlainString()).isEqualTo(expected);
    }

    @Property
    void roundingMovesANumberByAtMostHalfAUnit(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @IntRange(min = 0, max = 6) int decimals) {
        double rounded = Rounding.halfUp(value, decimals).doubleValue();

        assertThat(Math.abs(rounded - value)).isLessThanOrEqualTo(0.5 * Math.pow(10, -decimals) + 1e-9);
    }
}
