package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import comparand.unit.Printed;
import comparand.unit.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas of the catalogue against values that others print, and against traps met in print. */
class PublishedFormulaTest {

    @ParameterizedTest(name = "Hb {0}, S {1}, P {2}: {3}")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {
                "150 g/L, 97 %, 10 kPa, 197 mL/L",
                "150 g/L, 100 %, 50 kPa, 212.5 mL/L",
                "150 g/L, 57 %, 4.5 kPa, 116 mL/L"
            })
    @DisplayName("oxygen content: RCEM Learning page, 1.34 mL/g and 0.23 mL/L/kPa, printed to the mL (read)")
    void rcemOxygenContent(String hb, String saturation, String pressure, String printed) {
        var content = metric("inlet-oxygen-content");
        double computed = compute(
                content, Map.of("haemoglobin", hb, "inlet-saturation", saturation, "inlet-po2", pressure), Map.of());

        // the page's 0.23 mL/L/kPa is 0.003066 mL/dL/mmHg; ours is 0.0031: at 50 kPa that is 0.13 mL/L
        double solubility = Printed.of(pressure).in(Unit.of("mmHg")) * (0.0031 - 0.023 / 7.50062);
        assertThat(computed - solubility)
                .isCloseTo(
                        Printed.of(printed).in(content.unit()),
                        within(Printed.of(printed).halfUnitIn(content.unit()) * 1.0001));
    }

    @ParameterizedTest(name = "k = {0}, α = {1}: {2} mL/dL")
    @CsvSource(
            useHeadersInDisplayName = false,
            value = {"1.34, 0.0031, 13.891", "1.36, 0.0031, 14.090", "1.39, 0.0031, 14.388", "1.34, 0.003, 13.873"})
    @DisplayName(
            "oxygen content of Hb 10 g/dL, 99.5 %, 180 mmHg under each pair of constants (computed by hand from the formula)")
    void constantsMoveTheContent(String k, String alpha, String expected) {
        double computed = compute(
                metric("outlet-oxygen-content"),
                Map.of("haemoglobin", "10 g/dL", "outlet-saturation", "0.995", "outlet-po2", "180 mmHg"),
                Map.of("hufner-constant", k, "oxygen-solubility", alpha));

        assertThat(computed).isCloseTo(Double.parseDouble(expected), within(0.5e-3));
    }

    @Test
    @DisplayName(
            "theoretical Hüfner constant: 4 × 22 391 mL / 64 458 g = 1.3895 mL/g (published as 1.39; Gorelov, Anaesthesia 2004;59:97, from memory)")
    void theoreticalHufnerConstant() {
        assertThat(4 * 22391.0 / 64458).isCloseTo(1.39, within(0.005));
    }

    @Test
    @DisplayName("haemolysis: (100 - Hct)/Hct in place of (100 - Hct)/100 is 3.3 times too much at 30 %")
    void theTwoHaemolysisFactors() {
        var formula = (Aspect.Choice)
                metric("normalised-index-of-haemolysis").aspect("formula").orElseThrow();
        var conversion =
                formula.conversion("plasma-to-cell-ratio", "plasma-share").orElseThrow();
        double x = conversion
                .computation()
                .of(new Inputs(Map.of(VariantConversion.VALUE, 11.667, "haematocrit", 30.0), Definition.NONE));

        assertThat(x).isCloseTo(3.5, within(0.0005)); // 0.0035 and 0.011667 g/100 L from the same inputs
    }

    @Test
    @DisplayName("dry gas metered at 20 °C and 760 mmHg is 0.93178 of itself at STPD (273.15/293.15)")
    void dryGasToStandardState() {
        double computed = compute(
                metric("carbon-dioxide-transfer"),
                Map.of(
                        "exhaust-gas-flow",
                        "1 L/min",
                        "exhaust-co2-fraction",
                        "1",
                        "gas-temperature",
                        "20 °C",
                        "barometric-pressure",
                        "760 mmHg"),
                Map.of());

        assertThat(computed).isCloseTo(931.78, within(0.005));
    }

    @Test
    @DisplayName(
            "oxygen transfer at 1.2 L/min from Hb 10, 70 to 99.5 %, 38 to 180 mmHg: 52.718; per 0.80 m² 65.898 mL/min/m²")
    void transferAndTransferPerArea() {
        double in = compute(
                metric("inlet-oxygen-content"),
                Map.of("haemoglobin", "10 g/dL", "inlet-saturation", "0.70", "inlet-po2", "38 mmHg"),
                Map.of());
        double out = compute(
                metric("outlet-oxygen-content"),
                Map.of("haemoglobin", "10 g/dL", "outlet-saturation", "0.995", "outlet-po2", "180 mmHg"),
                Map.of());
        var transfer = metric("oxygen-transfer").derivations().get(0).computation();
        double v = transfer.of(new Inputs(
                Map.of("blood-flow", 1.2, "inlet-oxygen-content", in, "outlet-oxygen-content", out), Definition.NONE));

        assertThat(v).isCloseTo(52.718, within(0.0005));
        assertThat(v / 0.80).isCloseTo(65.898, within(0.0005));
    }

    private static Metric metric(String id) {
        return Catalogue.shipped().find(id).orElseThrow();
    }

    private static double compute(Metric metric, Map<String, String> inputs, Map<String, String> variants) {
        var way = metric.derivations().get(0);
        var numbers = new HashMap<String, Double>();
        way.inputs()
                .forEach(i -> numbers.put(
                        i.id(), Printed.of(inputs.getOrDefault(i.id(), "")).in(i.unit())));
        var definition = new TreeMap<>(metric.standardDefinition().aspects());
        variants.forEach((aspect, word) -> definition.put(aspect, List.of(word)));
        return way.computation().of(new Inputs(numbers, new Definition(definition)));
    }
}
