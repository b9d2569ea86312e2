package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/** The pressure the pump must find to push blood through the device: {@code ΔP = P_in - P_out}. */
final class PressureDrop {

    static final Influence THICKER = Influence.more(Effect.RAISES, "more red cells make blood more viscous");
    static final Influence WARMER = Influence.more(Effect.LOWERS, "warmer blood is less viscous");
    static final Map<String, Effect> THIN_LIQUIDS = Map.of("bench-water", Effect.LOWERS);
    static final String WATER_IS_THIN = "water is less viscous than blood";

    private PressureDrop() {}

    static Metric metric() {
        var card = Metric.named("pressure-drop", "pressure drop")
                .symbol("ΔP")
                .meaning("The blood pressure at the inlet of the device minus the blood pressure at its outlet")
                .unit("mmHg")
                .better(Better.LESS)
                .plausible(5, 250)
                .possible(-10, 500)
                .derived(new Derivation(
                        "ΔP = P_in - P_out",
                        List.of(
                                Input.of("inlet-pressure", "P_in", "blood pressure at the inlet", "mmHg"),
                                Input.of("outlet-pressure", "P_out", "blood pressure at the outlet", "mmHg")),
                        Definition.NONE,
                        Citation.commonPractice("both transducers levelled"),
                        in -> in.get("inlet-pressure") - in.get("outlet-pressure")))
                .aspect(new Aspect.Parts(
                        "parts between the pressure ports", Role.DECIDES_WITHIN_DEVICE, DevicePart.OXYGENATOR, false))
                .confusedWith("resistance", "gas-inlet-pressure");
        return Flowing.on(card, Influence.more(Effect.RAISES, "resistance to flow"), THIN_LIQUIDS, WATER_IS_THIN)
                .decides(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, THICKER)
                .qualifies(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, WARMER)
                .interpolatesOver(Conditions.BLOOD_FLOW)
                .cites(Citation.fromMemory(
                        "ISO 7199, Blood-gas exchangers (oxygenators)", "blood pathway pressure drop"))
                .worked(new WorkedValue(
                        Map.of("inlet-pressure", "182 mmHg", "outlet-pressure", "131 mmHg"),
                        Definition.NONE,
                        Printed.of("51 mmHg"),
                        Citation.derived("182 - 131")))
                .build();
    }
}
