package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The dissociation curve against Severinghaus's table, and its inverses against worked values. */
class OxygenDissociationTest {

    private static final Path TABLE = Path.of("src/test/resources/published/severinghaus-1979.csv");

    /** The paper states ±0.0055 for the fit; the table is printed to 0.01 %. */
    private static final double STATED_ERROR_PERCENT = 0.55 + 0.01;

    private static List<String[]> table() throws IOException {
        return Files.readAllLines(TABLE).stream()
                .filter(l -> l.matches("\\d.*"))
                .map(l -> l.split(",", -1))
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> everyPointOfTheTable() throws IOException {
        assertThat(table()).hasSize(51);
        return table().stream()
                .map(row -> dynamicTest(row[0] + " mmHg: " + row[1] + " %", () -> {
                    double percent = 100 * OxygenDissociation.saturation(Double.parseDouble(row[0]));

                    assertThat(percent).isCloseTo(Double.parseDouble(row[1]), within(STATED_ERROR_PERCENT));
                    double half = 0.5 * Math.pow(10, -Math.max(3, new BigDecimal(row[2]).scale()));
                    // the second column has five significant digits, of which trailing zeros are not printed
                    assertThat(percent)
                            .isCloseTo(Double.parseDouble(row[2]), within(Math.max(half, percent < 10 ? 5e-5 : 5e-4)));
                }));
    }

    @Test
    @DisplayName("largest deviation from the table 0.546 at 150 mmHg, smallest -0.459 at 24 (computed)")
    void largestDeviations() throws IOException {
        var deviations = table().stream()
                .mapToDouble(
                        r -> 100 * OxygenDissociation.saturation(Double.parseDouble(r[0])) - Double.parseDouble(r[1]))
                .summaryStatistics();

        assertThat(deviations.getMax()).isCloseTo(0.546, within(0.0005));
        assertThat(deviations.getMin()).isCloseTo(-0.459, within(0.0005));
    }

    @ParameterizedTest(name = "S {0}: exact {1}, approximate {2} mmHg")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "0.05, 6.4345, 6.7437",
                "0.1, 10.219, 10.331",
                "0.3, 19.256, 19.056",
                "0.5, 26.857, 26.831",
                "0.65, 33.736, 33.925",
                "0.7, 36.620, 36.832",
                "0.75, 40.040, 40.213",
                "0.9, 58.655, 57.983",
                "0.95, 75.668, 74.741",
                "0.97, 90.573, 90.231",
                "0.99, 131.94, 136.32"
            })
    @DisplayName("inverses, computed from Ellis 1989 and from equation 2 of Severinghaus 1979")
    void inverses(double saturation, String exact, String approximate) {
        assertThat(OxygenDissociation.pressure(saturation))
                .isCloseTo(Double.parseDouble(exact), within(halfUnit(exact)));
        assertThat(OxygenDissociation.approximatePressure(saturation))
                .isCloseTo(Double.parseDouble(approximate), within(halfUnit(approximate)));
    }

    private static double halfUnit(String printed) {
        return 0.5 * Math.pow(10, -new BigDecimal(printed).scale()) * (1 + 1e-9);
    }

    @Test
    @DisplayName(
            "equation 3 at 100 mmHg: 0.059661 /K, with (P/100)^3.88; the misreading (0.243 P/100)^3.88 gives 0.070761;"
                    + " at 40 mmHg 0.070600, at 200 mmHg 0.025670 (computed)")
    void temperatureCoefficient() {
        assertThat(OxygenDissociation.temperatureCoefficient(40)).isCloseTo(0.070600, within(5e-7));
        assertThat(OxygenDissociation.temperatureCoefficient(200)).isCloseTo(0.025670, within(5e-7));
        assertThat(OxygenDissociation.temperatureCoefficient(100)).isCloseTo(0.059661, within(5e-7));
        assertThat(0.058 / (Math.pow(0.243, 3.88) + 1) + 0.013).isCloseTo(0.070761, within(5e-7));
    }

    @ParameterizedTest(name = "{0} mmHg at pH {1}: virtual {2} mmHg")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"40, 7.4, 40.000", "40, 7.3, 35.754", "40, 7.5, 44.750", "60, 7.25, 51.345"})
    @DisplayName("Bohr shift to pH 7.4 (computed from equation 4)")
    void virtualPressure(double po2, double ph, String virtual) {
        assertThat(OxygenDissociation.virtualPressure(po2, ph))
                .isCloseTo(Double.parseDouble(virtual), within(halfUnit(virtual)));
    }

    @Test
    @DisplayName("Kelman's virtual pressure of 40 mmHg at pH 7.30 and 50 mmHg carbon dioxide: 35.995 mmHg (computed)")
    void kelmanPressure() {
        assertThat(OxygenDissociation.kelmanPressure(40, 37, 7.30, 50)).isCloseTo(35.995, within(5e-4));
    }
}
