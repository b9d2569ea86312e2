package comparand.metric;

import java.util.Map;

/**
 * The share of the blood that, as it were, passes the device without taking part in exchange:
 * {@code Qs/Qt = (C_c′ - C_out) / (C_c′ - C_in)}. Unsure where the inlet is nearly full.
 */
final class ShuntFraction {

    private ShuntFraction() {}

    static Metric metric() {
        var ideal = Letters.IDEAL_CONTENT;
        var before = Side.INLET.oxygenContent();
        var after = Side.OUTLET.oxygenContent();
        var card = Metric.named("shunt-fraction", "shunt fraction")
                .symbol("Qs/Qt")
                .meaning(
                        "The share of the blood flow that would have to pass the device unchanged to explain the outlet")
                .unit("1")
                .better(Better.LESS)
                .plausible(0, 0.35)
                .possible(-0.03, 1)
                .derived(Derivation.of(
                        "Qs/Qt = (C_c′ - C_out) / (C_c′ - C_in)",
                        Sources.SHUNT_EQUATION,
                        in -> (in.of(ideal) - in.of(after)) / (in.of(ideal) - in.of(before)),
                        ideal,
                        before,
                        after));
        card = OxygenContent.choices(card).aspect(IdealOxygenPressure.ASPECT).aspect(IdealOxygenContent.ASPECT);
        return Flowing.on(card, Influence.more(Effect.RAISES, "blood has less time to exchange"), Map.of(), "")
                .decides(Conditions.OXYGEN_FRACTION, Tolerance.within("0.02"), Influence.UNKNOWN)
                .qualifies(Conditions.BAROMETRIC_PRESSURE, Tolerance.within("15 mmHg"), Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .qualifies(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, Influence.UNKNOWN)
                .interpolatesOver(Conditions.BLOOD_FLOW)
                .cites(Sources.SHUNT_EQUATION)
                .cites(Sources.SHUNT_VARIANTS)
                .worked(WorkedValue.of(
                        "0.1404",
                        Citation.derived("(14.60838 - 13.891) / (14.60838 - 9.4978)"),
                        "ideal-oxygen-content=14.60838 mL/dL",
                        "inlet-oxygen-content=9.4978 mL/dL",
                        "outlet-oxygen-content=13.891 mL/dL"))
                .build();
    }
}
