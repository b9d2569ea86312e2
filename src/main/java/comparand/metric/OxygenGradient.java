package comparand.metric;

import java.util.Map;

/** Oxygen pressure of the sweep gas, less what carbon dioxide and blood have of it: gas to blood, at the outlet. */
final class OxygenGradient {

    private OxygenGradient() {}

    static Metric metric() {
        var ideal = Letters.IDEAL_PO2;
        var po2 = Side.OUTLET.po2();
        var card = Metric.named("oxygen-gradient", "gas-to-blood oxygen gradient")
                .symbol("ΔPO₂")
                .meaning("Oxygen pressure at full equilibrium minus the oxygen pressure at the blood outlet")
                .unit("mmHg")
                .better(Better.LESS)
                .plausible(0, 650)
                .possible(-20, 760)
                .derived(Derivation.of(
                        "P_c′ - PO₂_out",
                        Citation.commonPractice("gas-to-blood gradient"),
                        in -> in.of(ideal) - in.of(po2),
                        ideal,
                        po2))
                .aspect(IdealOxygenPressure.ASPECT);
        return Flowing.on(card, Influence.more(Effect.RAISES, "blood has less time to exchange"), Map.of(), "")
                .decides(
                        Conditions.OXYGEN_FRACTION,
                        Tolerance.within("0.02"),
                        Influence.more(Effect.RAISES, "the gas starts from a higher pressure"))
                .cites(Citation.commonPractice("gas-to-blood gradient"))
                .worked(WorkedValue.of(
                        "209.8 mmHg",
                        Citation.derived("389.8 - 180"),
                        "ideal-oxygen-pressure=389.8 mmHg",
                        "outlet-po2=180 mmHg"))
                .build();
    }
}
