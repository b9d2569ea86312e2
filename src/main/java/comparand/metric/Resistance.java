package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/** Pressure drop per flow: {@code R_b = ΔP / Q}. Not constant in flow, so it is compared at one flow. */
final class Resistance {

    private Resistance() {}

    static Metric metric() {
        var card = Metric.named("resistance", "resistance")
                .symbol("Rb")
                .meaning("The pressure drop of the blood path divided by the blood flow through it")
                .unit("mmHg·min/L")
                .better(Better.LESS)
                .plausible(3, 150)
                .possible(0, 600)
                .derived(new Derivation(
                        "R_b = ΔP / Q",
                        List.of(
                                Input.of("pressure-drop", "ΔP", "pressure drop", "mmHg"),
                                Input.of("blood-flow", "Q", "blood flow", "L/min")),
                        Definition.NONE,
                        Citation.commonPractice("1 mmHg·min/L is 1 Wood unit"),
                        in -> in.get("pressure-drop") / in.get("blood-flow")))
                .aspect(new Aspect.Parts(
                        "parts between the pressure ports", Role.DECIDES_WITHIN_DEVICE, DevicePart.OXYGENATOR, false))
                .aspect(new Aspect.Choice(
                        "reduction",
                        "way the ratio is formed",
                        "reduction",
                        Role.QUALIFIES,
                        "ratio-at-one-flow",
                        List.of(
                                new Variant("ratio-at-one-flow", "pressure drop over flow at one flow"),
                                new Variant("slope", "slope of pressure drop on flow"),
                                new Variant("ratio-of-means", "mean pressure drop over mean flow")),
                        List.of()))
                .confusedWith("pressure-drop");
        return Flowing.on(
                        card,
                        Influence.more(Effect.RAISES, "part of the pressure drop grows with the square of flow"),
                        PressureDrop.THIN_LIQUIDS,
                        PressureDrop.WATER_IS_THIN)
                .decides(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, PressureDrop.THICKER)
                .qualifies(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, PressureDrop.WARMER)
                .cites(Citation.commonPractice("pressure drop per flow, in Wood units or dyn·s/cm⁵"))
                .worked(new WorkedValue(
                        Map.of("pressure-drop", "51 mmHg", "blood-flow", "1.2 L/min"),
                        Definition.NONE,
                        Printed.of("42.5 mmHg·min/L"),
                        Citation.derived("51 / 1.2")))
                .build();
    }
}
