package comparand.metric;

import java.util.List;
import java.util.Map;

/**
 * How much of the possible warming or cooling the heat exchanger reaches:
 * {@code R = (T_b,out - T_b,in) / (T_w,in - T_b,in)}. The sign cancels, so it holds both ways.
 *
 * <p>Two other ratios go by the same name: the fall of the water's temperature, and the heat moved as a share of the most
 * the weaker stream could take, which is the same as R while blood is the weaker stream.
 */
final class PerformanceFactor {

    static final Input BLOOD_IN = Side.INLET.bloodTemperature();
    static final Input BLOOD_OUT = Side.OUTLET.bloodTemperature();
    static final Input WATER_IN = Side.INLET.waterTemperature();
    private static final Input WATER_OUT = Side.OUTLET.waterTemperature();
    private static final Input Q = Letters.BLOOD_FLOW;
    private static final Input Q_W = Letters.WATER_FLOW;
    private static final String RATIO = "ratio";
    private static final Citation HEAT = Citation.fromMemory(
            "Heat exchanger theory, effectiveness", "blood 1055 kg/m³ and 3600, water 992 kg/m³ and 4179 J/(kg·K)");

    private PerformanceFactor() {}

    static double share(Inputs in, Input from, Input to) {
        return (in.of(to) - in.of(from)) / (in.of(WATER_IN) - in.of(BLOOD_IN));
    }

    private static double bloodOverLeast(Inputs in) {
        double blood = Blood.DENSITY * Blood.SPECIFIC_HEAT * in.of(Q);
        double water = Blood.WATER_DENSITY * Blood.WATER_SPECIFIC_HEAT * in.of(Q_W);
        return blood / Math.min(blood, water);
    }

    static Metric metric() {
        var card = Metric.named("performance-factor", "heat exchanger performance factor")
                .symbol("R")
                .meaning(
                        "The change of blood temperature over the device as a share of the difference between water and"
                                + " blood at their inlets")
                .unit("1")
                .better(Better.MORE)
                .mostDecimals(2)
                .plausible(0.2, 0.95)
                .possible(-0.05, 1.05)
                .derived(Derivation.of(
                                "R = (T_b_out - T_b_in) / (T_w_in - T_b_in)",
                                Sources.ISO_7199,
                                in -> share(in, BLOOD_IN, BLOOD_OUT),
                                BLOOD_IN,
                                BLOOD_OUT,
                                WATER_IN)
                        .giving(RATIO, "blood-side"))
                .derived(Derivation.of(
                                "(T_w_in - T_w_out) / (T_w_in - T_b_in)",
                                Citation.derived("the same over the water's temperatures"),
                                in -> share(in, WATER_OUT, WATER_IN),
                                BLOOD_IN,
                                WATER_IN,
                                WATER_OUT)
                        .giving(RATIO, "water-side"))
                .derived(Derivation.of(
                                "C_b (T_b_out - T_b_in) / (min(C_b, C_w) (T_w_in - T_b_in)), C_b = 1055 · 3600 · Q,"
                                        + " C_w = 992 · 4179 · Q_w",
                                HEAT,
                                in -> bloodOverLeast(in) * share(in, BLOOD_IN, BLOOD_OUT),
                                BLOOD_IN,
                                BLOOD_OUT,
                                WATER_IN,
                                Q,
                                Q_W)
                        .giving(RATIO, "least-capacity-stream"))
                .aspect(new Aspect.Choice(
                        RATIO,
                        "temperatures it is the ratio of",
                        "ratio",
                        Role.DECIDES,
                        "blood-side",
                        List.of(
                                new Variant("blood-side", "rise of blood temperature over the inlet difference"),
                                new Variant("water-side", "fall of water temperature over the inlet difference"),
                                new Variant(
                                        "least-capacity-stream",
                                        "heat moved over the most the weaker stream could take")),
                        List.of()));
        return Flowing.on(
                        card,
                        Influence.more(Effect.LOWERS, "blood stays in the exchanger for less time"),
                        Map.of("bench-water", Effect.RAISES),
                        "water takes up heat more readily than blood")
                .decides(
                        Conditions.WATER_FLOW,
                        Tolerance.percent("10 %"),
                        Influence.more(Effect.RAISES, "more water carries more heat"))
                .qualifies(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .interpolatesOver(Conditions.BLOOD_FLOW)
                .cites(Sources.ISO_7199)
                .worked(WorkedValue.of(
                        "0.60",
                        Citation.derived("6 / 10, at the temperatures of the ISO 7199 exchanger test (from memory)"),
                        "inlet-blood-temperature=30.0 °C",
                        "outlet-blood-temperature=36.0 °C",
                        "inlet-water-temperature=40.0 °C"))
                .worked(WorkedValue.of(
                        "0.519",
                        Citation.derived("cooling, 2.7 / 5.2: the sign cancels"),
                        "inlet-blood-temperature=34.2 °C",
                        "outlet-blood-temperature=31.5 °C",
                        "inlet-water-temperature=29.0 °C"))
                .worked(WorkedValue.of(
                                "0.10",
                                Citation.derived("1 / 10"),
                                "inlet-blood-temperature=30.0 °C",
                                "inlet-water-temperature=40.0 °C",
                                "outlet-water-temperature=39.0 °C")
                        .under(RATIO, "water-side"))
                .worked(WorkedValue.of(
                                "0.6",
                                Citation.derived("blood is the weaker stream: 6 / 10"),
                                "inlet-blood-temperature=30 °C",
                                "outlet-blood-temperature=36 °C",
                                "inlet-water-temperature=40 °C",
                                "blood-flow=2 L/min",
                                "water-flow=10 L/min")
                        .under(RATIO, "least-capacity-stream"))
                .build();
    }
}
