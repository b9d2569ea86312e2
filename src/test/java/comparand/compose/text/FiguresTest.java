package comparand.compose.text;

import static org.assertj.core.api.Assertions.assertThat;

import comparand.metric.Catalogue;
import comparand.metric.Metric;
import comparand.stat.Interval;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers are printed: digits, signs and spaces. */
class FiguresTest {

    private static final char NO_BREAK = '\u00a0';

    private final Figures figures = new Figures(Words.of("en"));
    private final Metric pressure = metric("pressure-drop");
    private final Metric factor = metric("performance-factor");

    @ParameterizedTest
    @CsvSource({
        "72.4312, 1, 72.4",
        "72.45, 1, 72.5",
        "0.285, 2, 0.29",
        "1.005, 2, 1.01",
        "2.5, 0, 3",
        "-2.5, 0, −3",
        "-8.46, 1, −8.5",
        "1234.5, 0, 1235",
        "0.1, 3, 0.100",
        "1e-7, 2, 0.00",
        "104.29999999999998, 1, 104.3"
    })
    @DisplayName("numbers are rounded half up from their shortest decimal, with trailing zeros kept")
    void rounding(double value, int decimals, String printed) {
        assertThat(figures.number(value, decimals)).isEqualTo(printed);
    }

    @Test
    @DisplayName("a negative number has a true minus, and never a hyphen")
    void trueMinus() {
        assertThat(figures.number(-1, 0)).isEqualTo("\u22121");
        assertThat(figures.range(new Interval(-7.59, -4.26), 1)).isEqualTo("\u22127.6 to \u22124.3");
        assertThat(figures.cell(-1.25, 1, "[", "]").shown()).isEqualTo("[\u22121.3]");
    }

    @ParameterizedTest
    @CsvSource({"-0.0, 0, 0", "-0.004, 2, 0.00", "-0.4, 0, 0", "-1e-300, 3, 0.000", "0.0, 1, 0.0"})
    @DisplayName("nothing is ever printed as minus zero")
    void noMinusZero(double value, int decimals, String printed) {
        assertThat(figures.number(value, decimals)).isEqualTo(printed);
        assertThat(figures.cell(value, decimals, "", "").shown()).isEqualTo(printed);
    }

    @Test
    @DisplayName("a number has as many decimals as it was given, in whatever sign and size")
    void decimals() {
        DoubleStream.of(0, 1, -1, 0.05, -0.05, 99.995, 1e6, -123456.789).forEach(v -> {
            for (int decimals = 1; decimals < 5; decimals++) {
                assertThat(figures.number(v, decimals)).matches("−?\\d+\\.\\d{" + decimals + "}");
            }
            assertThat(figures.number(v, 0)).matches("−?\\d+");
        });
    }

    @Test
    @DisplayName("a unit stands behind a space that does not break, and a bare number stays bare")
    void units() {
        assertThat(figures.withUnit("72.4", pressure)).isEqualTo("72.4" + NO_BREAK + "mmHg");
        assertThat(figures.withUnit("0.71", factor)).isEqualTo("0.71");
    }

    @ParameterizedTest
    @CsvSource({"4.09, 1", "2.0, 1", "9.96, 0", "10.4, 0", "0.95, 2", "0.0209, 2", "99.6, 0", "0, 0"})
    @DisplayName("a local mean has the decimals that show two digits of its standard deviation, none too many")
    void decimalsOfSpread(double sd, int decimals) {
        assertThat(figures.ofSpread(factor, sd)).isEqualTo(decimals);
    }

    @Test
    @DisplayName("no number has more decimals than its metric allows")
    void capped() {
        assertThat(factor.mostDecimals()).hasValue(2);
        assertThat(figures.ofSpread(factor, 0.0021)).isEqualTo(2);
        assertThat(figures.ofDifference(factor, new Interval(-0.001, 0.002))).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"12.82, 21.58, 1", "-7.59, 4.59, 1", "-14.04, 11.04, 0", "0.013, 0.067, 2", "-200, 300, 0"})
    @DisplayName("a difference and both limits have one number of decimals, that of two digits of the half-width")
    void decimalsOfDifference(double low, double high, int decimals) {
        var interval = new Interval(low, high);

        assertThat(figures.ofDifference(factor, interval)).isEqualTo(decimals);
        var limits = figures.range(interval, decimals).split(" to ");
        assertThat(limits).hasSize(2).allSatisfy(l -> assertThat(decimalsOf(l)).isEqualTo(decimals));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0558, 0.056",
        "0.1067, 0.11",
        "0.5, 0.50",
        "0.0999, 0.10",
        "0.04, 0.040",
        "0.0126, 0.013",
        "0.0094, 0.009",
        "0.001, 0.001",
        "0.00099, <0.001",
        "0.0000846, <0.001",
        "0, <0.001",
        "1, 1.00"
    })
    @DisplayName("P has two digits, three decimals at most, and below 0.001 is said to be below it")
    void p(double p, String printed) {
        assertThat(figures.p(p)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"0.0664, 6.6", "0.2646, 26", "0.1, 10", "0.0151, 1.5", "1, 100", "0, 0.0", "0.0996, 10"})
    @DisplayName("a share is printed with two digits: whole from 10 per cent on, one decimal below")
    void percent(double share, String printed) {
        assertThat(figures.percent(share)).isEqualTo(printed);
    }

    @Test
    @DisplayName("a share that is not zero is not printed as zero")
    void smallShare() {
        assertThat(figures.percent(0.0003)).isNotEqualTo("0.0");
    }

    @Test
    @DisplayName("a cell keeps the number as it was computed, and prints it rounded")
    void cellsKeepTheNumber() {
        var cell = figures.cell(69.7559292539866, 0, "[", "?]");

        assertThat(cell.value()).isEqualTo(69.7559292539866);
        assertThat(cell.shown()).isEqualTo("[70?]");
        assertThat(cell.printed().scale()).isZero();
    }

    private static int decimalsOf(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    private static Metric metric(String id) {
        return Catalogue.shipped().find(id).orElseThrow();
    }
}
