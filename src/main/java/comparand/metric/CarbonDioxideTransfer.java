package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/**
 * Carbon dioxide given off by the blood in the device. Measured in the exhaust gas,
 * {@code VCO₂ = 1000 · Qg · F_E · (PB/760) · 273.15/(273.15 + t)} for dry gas metered at t.
 */
final class CarbonDioxideTransfer {

    static final Aspect SIDE = new Aspect.Choice(
            "side",
            "side on which it is measured",
            "side",
            Role.DECIDES,
            "gas-side",
            List.of(
                    new Variant("gas-side", "from the carbon dioxide in the exhaust gas"),
                    new Variant("blood-side", "from contents computed of blood gases")),
            List.of());

    private CarbonDioxideTransfer() {}

    static Metric metric() {
        var card = Metric.named("carbon-dioxide-transfer", "carbon dioxide transfer")
                .symbol("VCO₂")
                .meaning("Carbon dioxide given off by the blood on its way through the device, as gas per minute")
                .unit("mL/min")
                .better(Better.MORE)
                .plausible(5, 350)
                .possible(-40, 800)
                .derived(new Derivation(
                        "VCO₂ = 1000 · Qg · F_E · (PB / 760) · 273.15 / (273.15 + t)",
                        List.of(
                                Input.of("exhaust-gas-flow", "Qg", "flow of dry exhaust gas at t and PB", "L/min"),
                                Input.of(
                                        "exhaust-co2-fraction",
                                        "F_E",
                                        "carbon dioxide fraction of the exhaust gas",
                                        "1"),
                                Input.of("gas-temperature", "t", "temperature at which the gas is metered", "°C"),
                                Input.of("barometric-pressure", "PB", "barometric pressure", "mmHg")),
                        Definition.NONE.with(SIDE.id(), List.of("gas-side")),
                        Citation.read(
                                "MacIntyre et al., Eur Respir J 2005;26:720-735",
                                "Table 5, dry gas to STPD (identified from memory)"),
                        in -> 1000
                                * in.get("exhaust-gas-flow")
                                * in.get("exhaust-co2-fraction")
                                * (in.get("barometric-pressure") / 760)
                                * 273.15
                                / (273.15 + in.get("gas-temperature"))))
                .aspect(SIDE);
        return conditions(card)
                .cites(Citation.commonPractice("sweep gas free of carbon dioxide, exhaust gas dried"))
                .worked(new WorkedValue(
                        Map.of(
                                "exhaust-gas-flow", "1500 mL/min",
                                "exhaust-co2-fraction", "0.0250",
                                "gas-temperature", "22 °C",
                                "barometric-pressure", "755 mmHg"),
                        Definition.NONE,
                        Printed.of("34.476 mL/min"),
                        Citation.derived("37.5 × 0.91937, the dry-gas factor at 22 °C and 755 mmHg")))
                .build();
    }

    /** Inlet pressure is held to 3 mmHg: at 63 mL/min and 45 mmHg each mmHg moves transfer by about 1.4 mL/min. */
    static Metric.Builder conditions(Metric.Builder card) {
        return Flowing.on(
                        card,
                        Influence.more(Effect.RAISES, "more blood passes per minute"),
                        Map.of("bench-water", Effect.LOWERS),
                        "water carries no bound carbon dioxide")
                .decides(
                        Conditions.GAS_BLOOD_RATIO,
                        Tolerance.within("0.1"),
                        Influence.more(Effect.RAISES, "more sweep gas washes out more carbon dioxide"))
                .decides(
                        Conditions.INLET_PCO2,
                        Tolerance.within("3 mmHg"),
                        Influence.more(Effect.RAISES, "a higher inlet pressure drives more across"))
                .decides(
                        Conditions.GAS_VOLUME_BASIS,
                        Tolerance.EQUAL,
                        Influence.instead(
                                Map.of("BTPS", Effect.RAISES),
                                "the same gas fills more volume warm and moist than at STPD"))
                .qualifies(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .interpolatesOver(Conditions.BLOOD_FLOW);
    }
}
