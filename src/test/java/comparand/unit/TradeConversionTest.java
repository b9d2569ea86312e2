package comparand.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rows of {@code published/units.csv}, converted by the unit kernel. */
class TradeConversionTest {

    private static final Path ROWS = Path.of("src/test/resources/published/units.csv");

    /** UCUM's millimetre of mercury against the conventional one. */
    private static final double MERCURY = 133.322387415 / 133.322 - 1;

    private static Stream<String[]> rows() throws IOException {
        return Files.readAllLines(ROWS).stream().filter(l -> l.matches("\\d.*")).map(l -> l.split(",", 4));
    }

    @TestFactory
    Stream<DynamicTest> everyRowComesOut() throws IOException {
        assertThat(rows()).hasSizeGreaterThan(30);
        return rows().map(row -> dynamicTest("%s is %s %s (%s)".formatted(row[0], row[2], row[1], row[3]), () -> {
            double expected = Double.parseDouble(row[2]);
            double half = row[3].startsWith("exact") ? 0 : 0.5 * Math.pow(10, -new BigDecimal(row[2]).scale());
            double mercury = row[3].startsWith("conventional") ? 1.01 * MERCURY * expected : 0;

            assertThat(Printed.of(row[0]).in(Unit.of(row[1])))
                    .isCloseTo(expected, within(half + mercury + 1e-14 * expected));
        }));
    }

    @Test
    @DisplayName("a difference of 10 °C is 10 K and 18 °F: offsets take no part")
    void differencesOfTemperature() {
        assertThat(Printed.of("10 °C").asDifferenceIn(Unit.of("K"))).isEqualTo(10);
        assertThat(Printed.of("10 °C").asDifferenceIn(Unit.of("°F"))).isCloseTo(18, within(1e-12));
    }

    @Test
    @DisplayName("amounts and masses do not convert without a molar mass, nor contents into amounts without a volume")
    void amountsAreNotMasses() {
        assertThat(Unit.of("g/dL").convertsTo(Unit.of("mmol/L"))).isFalse();
        assertThat(Unit.of("mL/dL").convertsTo(Unit.of("mmol/L"))).isFalse();
    }
}
