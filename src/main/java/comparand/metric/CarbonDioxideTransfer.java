package comparand.metric;

import java.util.List;
import java.util.Map;

/**
 * Carbon dioxide given off by the blood in the device. From the gas, {@code VCO₂ = 1000 · (Qg_out · F_E - Qg_in · F_I)} at
 * STPD; or from blood gases, {@code 10 · Q · (C_in - C_out)}, where single samples are off by a quarter to a half.
 */
final class CarbonDioxideTransfer {

    static final Aspect SIDE = side(Role.DECIDES);
    /** Where the transfer is one ingredient among others. */
    static final Aspect SIDE_QUALIFIES = side(Role.QUALIFIES);

    private static final Input EXHAUST = Letters.EXHAUST_FLOW;
    private static final Input EXHAUST_STPD = Letters.EXHAUST_FLOW_STPD;
    private static final Input SWEEP_STPD = Letters.SWEEP_FLOW_STPD;
    private static final Input F_E = Letters.EXHAUST_CO2_FRACTION;
    private static final Input F_I = Letters.SWEEP_CO2_FRACTION;
    private static final Input T = Letters.GAS_TEMPERATURE;
    private static final Input PB = Letters.BAROMETRIC_PRESSURE;
    private static final Input BTPS = Letters.EXHAUST_FLOW_BTPS;
    private static final Input P_E = Letters.EXHAUST_PCO2;

    private CarbonDioxideTransfer() {}

    private static Aspect side(Role role) {
        return new Aspect.Choice(
                "side",
                "side on which it is measured",
                "side",
                role,
                "gas-side",
                List.of(
                        new Variant("gas-side", "from the carbon dioxide in the exhaust gas"),
                        new Variant("blood-side", "from contents computed of blood gases")),
                List.of());
    }

    /** The preferred way comes first: what the sweep gas brings in is taken off where it is known. */
    private static List<Derivation> ways() {
        var before = Side.INLET.carbonDioxideContent();
        var after = Side.OUTLET.carbonDioxideContent();
        var q = Letters.BLOOD_FLOW;
        return List.of(
                Derivation.of(
                                "VCO₂ = 1000 · (Qg_out,STPD · F_E - Qg_in,STPD · F_I)",
                                Citation.derived("balance of carbon dioxide over the gas path, dry gas at STPD"),
                                in -> 1000 * (in.of(EXHAUST_STPD) * in.of(F_E) - in.of(SWEEP_STPD) * in.of(F_I)),
                                EXHAUST_STPD,
                                F_E,
                                SWEEP_STPD,
                                F_I)
                        .giving("side", "gas-side"),
                Derivation.of(
                                "VCO₂ = 1000 · Qg_out · F_E · (PB / 760) · 273.15 / (273.15 + t)",
                                Sources.GAS_LAW,
                                in -> 1000
                                        * in.of(EXHAUST)
                                        * in.of(F_E)
                                        * GasFlowAtStandardState.dry(in.of(T), in.of(PB)),
                                EXHAUST,
                                F_E,
                                T,
                                PB)
                        .giving("side", "gas-side"),
                Derivation.of(
                                "VCO₂ = 1000 · Qg_out,STPD · F_E",
                                Citation.commonPractice("sweep gas free of carbon dioxide"),
                                in -> 1000 * in.of(EXHAUST_STPD) * in.of(F_E),
                                EXHAUST_STPD,
                                F_E)
                        .giving("side", "gas-side"),
                Derivation.of(
                                "VCO₂ = 1000 · Qg_out,BTPS · P_E / 863",
                                Citation.commonPractice("760 · 310.15 / 273.15 = 862.95, rounded"),
                                in -> 1000 * in.of(BTPS) * in.of(P_E) / 863,
                                BTPS,
                                P_E)
                        .giving("side", "gas-side"),
                Derivation.of(
                                "VCO₂ = 10 · Q · (C_CO₂_in - C_CO₂_out)",
                                Sources.FICK,
                                in -> 10 * in.of(q) * (in.of(before) - in.of(after)),
                                q,
                                before,
                                after)
                        .giving("side", "blood-side"));
    }

    static Metric metric() {
        var card = Metric.named("carbon-dioxide-transfer", "carbon dioxide transfer")
                .symbol("VCO₂")
                .meaning("Carbon dioxide given off by the blood on its way through the device, as gas per minute")
                .unit("mL/min")
                .better(Better.MORE)
                .plausible(5, 350)
                .possible(-40, 800);
        ways().forEach(card::derived);
        return conditions(choices(card))
                .cites(Citation.commonPractice("sweep gas free of carbon dioxide, exhaust gas dried"))
                .cites(Sources.DOUGLAS)
                .worked(WorkedValue.of(
                        "34.476 mL/min",
                        Citation.derived("37.5 × 0.91937, the dry-gas factor at 22 °C and 755 mmHg"),
                        "exhaust-gas-flow=1500 mL/min",
                        "exhaust-co2-fraction=0.0250",
                        "gas-temperature=22 °C",
                        "barometric-pressure=755 mmHg"))
                .worked(WorkedValue.of(
                        "31.286 mL/min",
                        Citation.derived("1500 × 18 / 863"),
                        "exhaust-gas-flow-btps=1500 mL/min",
                        "exhaust-pco2=18 mmHg"))
                .worked(WorkedValue.of(
                        "36.6 mL/min",
                        Citation.derived("1000 × (1.2 × 0.0310 - 1.2 × 0.0005)"),
                        "exhaust-gas-flow-stpd=1.2 L/min",
                        "exhaust-co2-fraction=0.0310",
                        "sweep-gas-flow-stpd=1.2 L/min",
                        "sweep-co2-fraction=0.0005"))
                .worked(WorkedValue.of(
                                "39.62 mL/min",
                                Citation.derived("10 × 1.2 × (53.899 - 50.597)"),
                                "blood-flow=1.2 L/min",
                                "inlet-carbon-dioxide-content=53.899 mL/dL",
                                "outlet-carbon-dioxide-content=50.597 mL/dL")
                        .under("side", "blood-side"))
                .build();
    }

    /** The choices of all that is made of carbon dioxide transfer. */
    static Metric.Builder choices(Metric.Builder card) {
        return CarbonDioxideContent.choices(card.aspect(SIDE));
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
