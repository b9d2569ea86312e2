package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/**
 * Oxygen taken up by the blood in the device. From blood gases, {@code VO₂ = 10 · Q · (C_out - C_in)}; or from the gas, as
 * oxygen that goes in and does not come out, which is a small difference of large numbers wherever the sweep gas is rich
 * in oxygen.
 */
final class OxygenTransfer {

    static final Influence FULLER = Influence.more(Effect.LOWERS, "blood that arrives fuller has less room for oxygen");
    static final String SIDE_ID = "oxygen-side";
    static final Aspect SIDE = new Aspect.Choice(
            SIDE_ID,
            "side on which it is measured",
            "oxygen side",
            Role.QUALIFIES,
            "blood-side",
            List.of(
                    new Variant("blood-side", "from contents of blood before and after"),
                    new Variant("gas-side", "from the oxygen in sweep gas and exhaust gas")),
            List.of());

    private OxygenTransfer() {}

    static Metric metric() {
        var q = Letters.BLOOD_FLOW;
        var before = Side.INLET.oxygenContent();
        var after = Side.OUTLET.oxygenContent();
        var in = Letters.SWEEP_FLOW_STPD;
        var out = Letters.EXHAUST_FLOW_STPD;
        var fraction = Letters.OXYGEN_FRACTION;
        var left = Letters.EXHAUST_OXYGEN_FRACTION;
        var card = Metric.named("oxygen-transfer", "oxygen transfer")
                .symbol("VO₂")
                .meaning("Oxygen taken up by the blood on its way through the device, as gas per minute")
                .unit("mL/min")
                .better(Better.MORE)
                .plausible(8, 400)
                .possible(-10, 800)
                .derived(Derivation.of(
                                "VO₂ = 10 · Q · (C_out - C_in)",
                                Sources.FICK,
                                x -> 10 * x.of(q) * (x.of(after) - x.of(before)),
                                q,
                                before,
                                after)
                        .giving(SIDE_ID, "blood-side"))
                .derived(Derivation.of(
                                "VO₂ = 1000 · (Qg_in,STPD · F_O₂ - Qg_out,STPD · F_E,O₂)",
                                Citation.derived("balance of oxygen over the gas path, dry gas at STPD"),
                                x -> 1000 * (x.of(in) * x.of(fraction) - x.of(out) * x.of(left)),
                                in,
                                fraction,
                                out,
                                left)
                        .giving(SIDE_ID, "gas-side"));
        return conditions(choices(card))
                .inletStandard(standardInlet())
                .confusedWith("oxygen-transfer-per-membrane-area", "oxygen-transfer-per-body-surface")
                .cites(Citation.commonPractice("the principle of Fick"))
                .worked(WorkedValue.of(
                        "245 mL/min",
                        Citation.read(
                                "anaesthesiauk.com 2005, oxygen content", "oxygen consumption 1005 - 760 = 245 mL/min"),
                        "blood-flow=5 L/min",
                        "inlet-oxygen-content=15.2 mL/dL",
                        "outlet-oxygen-content=20.1 mL/dL"))
                .worked(WorkedValue.of(
                        "52.72 mL/min",
                        Citation.derived("10 × 1.2 × 4.3935"),
                        "blood-flow=1.2 L/min",
                        "inlet-oxygen-content=9.4978 mL/dL",
                        "outlet-oxygen-content=13.8913 mL/dL"))
                .worked(WorkedValue.of(
                                "56 mL/min",
                                Citation.derived("1000 × (1.00 × 0.600 - 0.97 × 0.5608)"),
                                "sweep-gas-flow-stpd=1.00 L/min",
                                "oxygen-fraction=0.600",
                                "exhaust-gas-flow-stpd=0.97 L/min",
                                "exhaust-oxygen-fraction=0.5608")
                        .under(SIDE_ID, "gas-side"))
                .build();
    }

    /**
     * Blood of 65 % at the inlet. Dissolved oxygen at the inlet moves by less than 0.01 mL/dL between 60 and 70 % and is left
     * out.
     */
    private static InletStandard standardInlet() {
        var q = Letters.BLOOD_FLOW;
        var hb = Letters.HAEMOGLOBIN;
        return new InletStandard(
                Conditions.INLET_SATURATION,
                Printed.of("65 %"),
                Conditions.OUTLET_SATURATION,
                Printed.of("98 %"),
                List.of(q, hb),
                "VO₂ - 10 · Q · k · Hb · (S_to - S_from)",
                Citation.derived("10 · Q · (C_out - C_in) with C_out unchanged"),
                x -> -10
                        * x.of(q)
                        * x.constant(OxygenContent.HUFNER.id())
                        * x.of(hb)
                        * (x.get(InletStandard.TO) - x.get(InletStandard.FROM))
                        / 100);
    }

    /** The choices of all that is made of oxygen transfer. */
    static Metric.Builder choices(Metric.Builder card) {
        return OxygenContent.choices(card).aspect(SIDE);
    }

    /**
     * What oxygen transfer depends on. Inlet saturation is held to 2 percentage points, not to the 5 of the usual test
     * band: at 1.5 L/min and 12 g/dL one point moves transfer by 2.4 mL/min.
     */
    static Metric.Builder conditions(Metric.Builder card) {
        return Flowing.on(
                        card,
                        Influence.more(Effect.RAISES, "more blood passes per minute"),
                        Map.of("bench-water", Effect.LOWERS, "bench-glycerol", Effect.LOWERS),
                        "without haemoglobin little oxygen is carried")
                .decides(
                        Conditions.HAEMOGLOBIN,
                        Flowing.HAEMOGLOBIN,
                        Influence.more(Effect.RAISES, "each gram carries oxygen"))
                .decides(Conditions.INLET_SATURATION, Tolerance.within("2 percentage points"), FULLER)
                .decides(
                        Conditions.OXYGEN_FRACTION,
                        Tolerance.within("0.02"),
                        Influence.more(Effect.RAISES, "a higher oxygen pressure drives more oxygen across"))
                .decides(
                        Conditions.GAS_VOLUME_BASIS,
                        Tolerance.EQUAL,
                        Influence.instead(
                                Map.of("BTPS", Effect.RAISES),
                                "the same gas fills more volume warm and moist than at STPD"))
                .qualifies(Conditions.GAS_BLOOD_RATIO, Tolerance.within("0.1"), Influence.more(Effect.NONE, ""))
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .qualifies(Conditions.INLET_PCO2, Tolerance.within("5 mmHg"), Influence.more(Effect.NONE, ""))
                .interpolatesOver(Conditions.BLOOD_FLOW);
    }
}
