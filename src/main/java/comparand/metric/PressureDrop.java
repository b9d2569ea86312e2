package comparand.metric;

import java.util.Map;

/**
 * The pressure the pump must find to push blood through the device: {@code ΔP = P_in - P_out}. Where the outlet transducer
 * stands above the inlet's, the blood column between them is taken off.
 */
final class PressureDrop {

    static final Influence THICKER = Influence.more(Effect.RAISES, "more red cells make blood more viscous");
    static final Influence WARMER = Influence.more(Effect.LOWERS, "warmer blood is less viscous");
    static final Map<String, Effect> THIN_LIQUIDS = Map.of("bench-water", Effect.LOWERS);
    static final String WATER_IS_THIN = "water is less viscous than blood";
    static final Aspect PARTS = new Aspect.Parts(
            "parts between the pressure ports", Role.DECIDES_WITHIN_DEVICE, DevicePart.OXYGENATOR, false);

    private PressureDrop() {}

    static Metric metric() {
        var in = Side.INLET.pressure();
        var out = Side.OUTLET.pressure();
        var card = Metric.named("pressure-drop", "pressure drop")
                .symbol("ΔP")
                .meaning("The blood pressure at the inlet of the device minus the blood pressure at its outlet")
                .unit("mmHg")
                .better(Better.LESS)
                .plausible(5, 250)
                .possible(-10, 500)
                .derived(Derivation.of(
                        "ΔP = P_in - P_out - P_h",
                        Citation.derived("transducers at two heights, blood column taken off"),
                        x -> x.of(in) - x.of(out) - x.of(Letters.HYDROSTATIC_PRESSURE),
                        in,
                        out,
                        Letters.HYDROSTATIC_PRESSURE))
                .derived(Derivation.of(
                        "ΔP = P_in - P_out",
                        Citation.commonPractice("both transducers levelled"),
                        x -> x.of(in) - x.of(out),
                        in,
                        out))
                .aspect(PARTS)
                .confusedWith("resistance", "gas-inlet-pressure");
        return conditions(card, Influence.more(Effect.RAISES, "resistance to flow"))
                .interpolatesOver(Conditions.BLOOD_FLOW)
                .cites(Citation.fromMemory(
                        "ISO 7199, Blood-gas exchangers (oxygenators)", "blood pathway pressure drop"))
                .worked(WorkedValue.of(
                        "51 mmHg",
                        Citation.derived("182 - 131"),
                        "inlet-pressure=182 mmHg",
                        "outlet-pressure=131 mmHg"))
                .worked(WorkedValue.of(
                        "43.24 mmHg",
                        Citation.derived("51 - 7.76: the outlet transducer 10 cm above the inlet's reads too little"),
                        "inlet-pressure=182 mmHg",
                        "outlet-pressure=131 mmHg",
                        "hydrostatic-pressure=7.76 mmHg"))
                .build();
    }

    /** Two degrees move the viscosity of blood by some 4 %: less than what haemoglobin may differ by. */
    private static final Tolerance TEMPERATURE = Tolerance.within("2 °C");

    /** What pressure drop and all that is made of it depend on. */
    static Metric.Builder conditions(Metric.Builder card, Influence flow) {
        return Flowing.on(card, flow, THIN_LIQUIDS, WATER_IS_THIN)
                .decides(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, THICKER)
                .qualifies(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .decidesIfKnown(Conditions.TEMPERATURE, TEMPERATURE, WARMER);
    }
}
