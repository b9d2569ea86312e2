package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The relations that the case data follow, against what was measured in blood. */
class CaseDataBloodTest {

    /** Severinghaus 1979, table 1; the paper gives its equation an error of 0.0055. */
    @ParameterizedTest
    @CsvSource({
        "26, 0.4827",
        "30, 0.5754",
        "34, 0.6516",
        "40, 0.7469",
        "46, 0.8171",
        "60, 0.9085",
        "80, 0.9584",
        "100, 0.9749",
        "120, 0.9821",
        "150, 0.9877",
        "200, 0.9920",
        "300, 0.9953"
    })
    void saturation(double po2, double measured) {
        assertThat(CaseDataBlood.saturation(po2, 7.4)).isCloseTo(measured, within(0.0055));
    }

    /** Acid blood lets oxygen go: Δlog P50/ΔpH is -0.48 in text-books; Severinghaus' equation gives -0.52 at that point. */
    @Test
    void effectOfBohr() {
        double acid = halfSaturated(7.35);
        double alkaline = halfSaturated(7.45);

        assertThat(Math.log10(alkaline / acid) / 0.1).isCloseTo(-0.48, within(0.05));
    }

    private static double halfSaturated(double ph) {
        return CaseDataBlood.solved(5, 100, p -> CaseDataBlood.saturation(p, ph) - 0.5);
    }

    @ParameterizedTest
    @CsvSource({"9.5, 7.38, 40", "11.2, 7.41, 55", "8.4, 7.33, 170"})
    void pressureIsTheInverseOfContent(double haemoglobin, double ph, double po2) {
        double content = CaseDataBlood.oxygenContent(haemoglobin, CaseDataBlood.saturation(po2, ph), po2);

        assertThat(CaseDataBlood.oxygenPressure(content, haemoglobin, ph)).isCloseTo(po2, within(1e-6));
    }

    /** Douglas 1988, table 3: pH, PCO2, content of plasma as printed. */
    @ParameterizedTest
    @CsvSource({
        "7.51, 28.6, 53.84",
        "7.493, 31.4, 56.84",
        "7.321, 43.0, 52.48",
        "7.352, 45.2, 59.19",
        "7.383, 48.3, 67.89",
        "7.457, 31.8, 52.97",
        "7.308, 49.6, 58.78"
    })
    void plasma(double ph, double pco2, double printed) {
        assertThat(CaseDataBlood.plasmaCarbonDioxide(pco2, ph)).isCloseTo(printed, within(0.005));
    }

    /** Douglas 1988, table 3, whole blood as measured; the paper gives its equation an error of 0.02 (SD 1.19) mL/dL. */
    @Test
    void wholeBlood() {
        double[][] rows = {
            {7.51, 16.5, 0.930, 28.6, 40.3},
            {7.493, 16.5, 0.738, 31.4, 42.5},
            {7.433, 18.4, 0.853, 27.3, 34.0},
            {7.321, 19.0, 0.335, 43.0, 43.5},
            {7.5, 16.1, 0.979, 29.8, 40.6},
            {7.352, 18.2, 0.440, 45.2, 46.5},
            {7.474, 15.7, 0.949, 34.8, 46.3},
            {7.383, 16.5, 0.467, 48.3, 52.7},
            {7.45, 16.8, 0.714, 38.7, 46.2},
            {7.457, 18.3, 0.858, 31.8, 39.0},
            {7.382, 17.8, 0.407, 43.6, 48.5},
            {7.308, 17.1, 0.395, 49.6, 46.8}
        };
        double sum = 0;
        for (var row : rows) {
            double off = CaseDataBlood.carbonDioxideContent(row[3], row[0], row[1], row[2]) - row[4];
            assertThat(off).isCloseTo(0, within(3 * 1.19));
            sum += off;
        }
        assertThat(sum / rows.length).isCloseTo(0.02, within(2 * 1.19 / Math.sqrt(rows.length)));
    }

    /** By definition none in blood of pH 7.40 and 40 mmHg; alkali is what acid blood lacks. */
    @Test
    void baseExcess() {
        assertThat(CaseDataBlood.baseExcess(40, 7.40, 10)).isCloseTo(0, within(0.5));
        assertThat(CaseDataBlood.baseExcess(40, 7.30, 10)).isNegative();
        assertThat(CaseDataBlood.baseExcess(40, 7.50, 10)).isPositive();
    }
}
