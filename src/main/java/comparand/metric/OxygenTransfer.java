package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/** Oxygen taken up by the blood in the device: {@code VO₂ = 10 · Q · (C_out - C_in)}. */
final class OxygenTransfer {

    static final Influence FULLER = Influence.more(Effect.LOWERS, "blood that arrives fuller has less room for oxygen");

    private OxygenTransfer() {}

    static Metric metric() {
        var card = Metric.named("oxygen-transfer", "oxygen transfer")
                .symbol("VO₂")
                .meaning("Oxygen taken up by the blood on its way through the device, as gas per minute")
                .unit("mL/min")
                .better(Better.MORE)
                .plausible(8, 400)
                .possible(-10, 800)
                .derived(new Derivation(
                        "VO₂ = 10 · Q · (C_out - C_in)",
                        List.of(
                                Input.of("blood-flow", "Q", "blood flow", "L/min"),
                                Input.of("inlet-oxygen-content", "C_in", "oxygen content at the inlet", "mL/dL"),
                                Input.of("outlet-oxygen-content", "C_out", "oxygen content at the outlet", "mL/dL")),
                        Definition.NONE,
                        Citation.commonPractice("the principle of Fick, blood side"),
                        in -> 10
                                * in.get("blood-flow")
                                * (in.get("outlet-oxygen-content") - in.get("inlet-oxygen-content"))))
                .aspect(OxygenContent.HUFNER)
                .aspect(OxygenContent.SOLUBILITY)
                .confusedWith("oxygen-transfer-per-membrane-area");
        return conditions(card)
                .cites(Citation.commonPractice("the principle of Fick"))
                .worked(new WorkedValue(
                        Map.of(
                                "blood-flow", "5 L/min",
                                "inlet-oxygen-content", "15.2 mL/dL",
                                "outlet-oxygen-content", "20.1 mL/dL"),
                        Definition.NONE,
                        Printed.of("245 mL/min"),
                        Citation.read(
                                "anaesthesiauk.com 2005, oxygen content",
                                "oxygen consumption 1005 - 760 = 245 mL/min")))
                .worked(new WorkedValue(
                        Map.of(
                                "blood-flow", "1.2 L/min",
                                "inlet-oxygen-content", "9.4978 mL/dL",
                                "outlet-oxygen-content", "13.8913 mL/dL"),
                        Definition.NONE,
                        Printed.of("52.72 mL/min"),
                        Citation.derived("10 × 1.2 × 4.3935")))
                .build();
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
