package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * One adult case, computed through the catalogue, falls where the trade expects it. The ranges are common practice, no
 * source.
 */
class CommonPracticeTest {

    private static Computed adult() {
        return Computed.from(
                "blood-flow=5.0 L/min",
                "haemoglobin=10 g/dL",
                "temperature=37 °C",
                "haematocrit=30 %",
                "oxygen-fraction=64 %",
                "barometric-pressure=1013 hPa",
                "inlet-saturation=70 %",
                "inlet-po2=38 mmHg",
                "inlet-pco2=45 mmHg",
                "inlet-ph=7.37 [pH]",
                "outlet-saturation=98 %",
                "outlet-po2=150 mmHg",
                "outlet-pco2=40 mmHg",
                "outlet-ph=7.40 [pH]",
                "inlet-pressure=210 mmHg",
                "outlet-pressure=160 mmHg",
                "gas-inlet-pressure=8 cmH2O",
                "gas-outlet-pressure=2 cmH2O",
                "membrane-area=2.4 m²",
                "priming-volume=260 mL",
                "patient-height=175 cm",
                "patient-weight=78 kg");
    }

    @Test
    @DisplayName("uptake of 200 to 300 mL/min with an oxygen fraction of 0.4 to 0.65")
    void uptake() {
        assertThat(adult().value("oxygen-transfer")).isBetween(200.0, 300.0);
        assertThat(adult().value("corrected-oxygen-fraction")).isBetween(0.4, 0.65);
    }

    @Test
    @DisplayName("some tens of mL/min per m² of membrane; per m² of body surface another number")
    void perArea() {
        assertThat(adult().value("oxygen-transfer-per-membrane-area")).isBetween(20.0, 99.0);
        assertThat(adult().value("oxygen-transfer-per-body-surface")).isBetween(80.0, 160.0);
    }

    @Test
    @DisplayName("shunt fraction of 0.2 to 0.3")
    void shunt() {
        assertThat(adult().value("shunt-fraction")).isBetween(0.2, 0.3);
    }

    @Test
    @DisplayName("resistance of about 10 mmHg per L/min; average shear stress of some Pa")
    void resistance() {
        assertThat(adult().value("resistance")).isBetween(8.0, 12.0);
        assertThat(adult().value("average-shear-stress")).isBetween(0.5, 15.0);
    }

    @Test
    @DisplayName("gas side pressure of a few mmHg")
    void gasSide() {
        assertThat(adult().value("gas-pressure-drop")).isBetween(2.0, 10.0);
    }

    @Test
    @DisplayName("performance factor falls as blood flow rises, about 0.8 at 3 L/min to about 0.6 at 6 L/min")
    void performanceFactor() {
        // an exchanger of constant conductance, water much faster than blood: what the blood gains is 1 - exp(-N)
        double conductance = 3 * Math.log(1 / (1 - 0.8));
        double last = 1;
        for (int flow = 3; flow <= 6; flow++) {
            double outlet = 30 + 10 * (1 - Math.exp(-conductance / flow));
            double factor = Computed.from(
                            "inlet-blood-temperature=30 °C",
                            "outlet-blood-temperature=%s °C".formatted((float) outlet),
                            "inlet-water-temperature=40 °C")
                    .value("performance-factor");
            assertThat(factor).isLessThan(last);
            last = factor;
        }
        assertThat(last).isBetween(0.5, 0.7);
    }

    @Test
    @DisplayName("bubble volume falls by more than bubble count in the same run")
    void bubbles() {
        var run = Computed.from(
                "bubble-bin-from=10 µm; 20 µm; 40 µm; 100 µm; 200 µm",
                "bubble-bin-to=20 µm; 40 µm; 100 µm; 200 µm; 500 µm",
                "bubble-bin-count-upstream=6000; 3000; 900; 100; 10",
                "bubble-bin-count-downstream=2400; 600; 45; 1; 0",
                "bubble-size-from=10 µm");

        assertThat(run.value("bubble-volume-reduction")).isGreaterThan(run.value("bubble-count-reduction"));
    }

    @Test
    @DisplayName(
            "carbon dioxide given off is 0.6 to 1.3 of the oxygen taken up; delivery and flow are those of an adult")
    void wholeCase() {
        assertThat(adult().under("side", "blood-side").value("respiratory-exchange-ratio"))
                .isBetween(0.6, 1.3);
        assertThat(adult().value("flow-index")).isBetween(2.2, 2.8);
        assertThat(adult().value("oxygen-delivery-index")).isBetween(250.0, 450.0);
    }

    @Test
    void everyResultOfTheCaseIsPlausible() {
        for (var id : new String[] {
            "oxygen-transfer",
            "oxygen-transfer-per-litre",
            "oxygen-transfer-per-membrane-area",
            "oxygen-transfer-per-body-surface",
            "inlet-oxygen-content",
            "outlet-oxygen-content",
            "inlet-carbon-dioxide-content",
            "outlet-carbon-dioxide-content",
            "pressure-drop",
            "resistance",
            "average-shear-stress",
            "blood-viscosity",
            "shunt-fraction",
            "flow-index",
            "oxygen-delivery-index",
            "body-surface-area",
            "oxygen-gradient",
            "haemoglobin-flow",
            "water-vapour-pressure"
        }) {
            assertThat(Computed.metric(id).plausible().contain(adult().value(id)))
                    .as(id)
                    .isTrue();
        }
    }
}
