package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/**
 * How much of the possible warming or cooling the heat exchanger reaches:
 * {@code R = (T_b,out - T_b,in) / (T_w,in - T_b,in)}. The sign cancels, so it holds both ways.
 */
final class PerformanceFactor {

    private PerformanceFactor() {}

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
                .derived(new Derivation(
                        "R = (T_b,out - T_b,in) / (T_w,in - T_b,in)",
                        List.of(
                                Input.of("inlet-blood-temperature", "T_b,in", "blood temperature at the inlet", "°C"),
                                Input.of(
                                        "outlet-blood-temperature", "T_b,out", "blood temperature at the outlet", "°C"),
                                Input.of("inlet-water-temperature", "T_w,in", "water temperature at the inlet", "°C")),
                        Definition.NONE.with("ratio", List.of("blood-side")),
                        Citation.fromMemory("ISO 7199", "definition of the heat exchanger performance factor"),
                        in -> (in.get("outlet-blood-temperature") - in.get("inlet-blood-temperature"))
                                / (in.get("inlet-water-temperature") - in.get("inlet-blood-temperature"))))
                .aspect(new Aspect.Choice(
                        "ratio",
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
                .cites(Citation.fromMemory("ISO 7199", "definition of the heat exchanger performance factor"))
                .worked(new WorkedValue(
                        Map.of(
                                "inlet-blood-temperature", "30.0 °C",
                                "outlet-blood-temperature", "36.0 °C",
                                "inlet-water-temperature", "40.0 °C"),
                        Definition.NONE,
                        Printed.of("0.60"),
                        Citation.derived(
                                "6 / 10, at the temperatures of the ISO 7199 heat exchanger test (from memory)")))
                .worked(new WorkedValue(
                        Map.of(
                                "inlet-blood-temperature", "34.2 °C",
                                "outlet-blood-temperature", "31.5 °C",
                                "inlet-water-temperature", "29.0 °C"),
                        Definition.NONE,
                        Printed.of("0.519"),
                        Citation.derived("cooling, 2.7 / 5.2: the sign cancels")))
                .build();
    }
}
