package comparand.metric;

import java.util.Map;

/** Heat that the blood takes up or gives off in the device: {@code ρ · c_p · Q · (T_b,out - T_b,in)}. */
final class HeatFlow {

    private HeatFlow() {}

    static Metric metric() {
        var card = Metric.named("heat-flow", "heat flow to the blood")
                .symbol("Φ")
                .meaning("Heat that the blood takes up on its way through the device; negative while it is cooled")
                .unit("W")
                .plausible(-4000, 4000)
                .possible(-20_000, 20_000)
                .derived(Derivation.of(
                        "Φ = 1055 kg/m³ · 3600 J/(kg·K) · Q · (T_b_out - T_b_in) / 60 000",
                        Citation.fromMemory("Properties of blood", "density 1055 kg/m³, specific heat 3600 J/(kg·K)"),
                        in -> Blood.DENSITY
                                * Blood.SPECIFIC_HEAT
                                * in.of(Letters.BLOOD_FLOW)
                                / 60_000
                                * (in.of(PerformanceFactor.BLOOD_OUT) - in.of(PerformanceFactor.BLOOD_IN)),
                        Letters.BLOOD_FLOW,
                        PerformanceFactor.BLOOD_IN,
                        PerformanceFactor.BLOOD_OUT))
                .confusedWith("performance-factor");
        return Flowing.on(card, Influence.UNKNOWN, Map.of(), "")
                .qualifies(Conditions.WATER_FLOW, Tolerance.percent("10 %"), Influence.UNKNOWN)
                .cites(Citation.derived("mass flow times specific heat times rise of temperature"))
                .worked(WorkedValue.of(
                        "379.8 W",
                        Citation.derived("1.055 kg/L × 3600 J/(kg·K) × 1.0 L/min × 6 K / 60 s/min"),
                        "blood-flow=1.0 L/min",
                        "inlet-blood-temperature=30.0 °C",
                        "outlet-blood-temperature=36.0 °C"))
                .build();
    }
}
