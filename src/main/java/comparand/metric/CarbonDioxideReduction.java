package comparand.metric;

import java.util.Map;

/** The fall of carbon dioxide pressure over the device as a share of the inlet's: a weak stand-in for transfer. */
final class CarbonDioxideReduction {

    private CarbonDioxideReduction() {}

    static Metric metric() {
        var before = Side.INLET.pco2();
        var after = Side.OUTLET.pco2();
        var card = Metric.named("carbon-dioxide-reduction", "reduction of carbon dioxide pressure")
                .symbol("ΔPCO₂/PCO₂")
                .meaning("The fall of carbon dioxide pressure over the device as a share of the pressure at the inlet")
                .unit("1")
                .plausible(0, 0.7)
                .possible(-0.5, 1)
                .derived(Derivation.of(
                        "(PCO₂_in - PCO₂_out) / PCO₂_in",
                        Citation.commonPractice("share of the inlet pressure"),
                        in -> (in.of(before) - in.of(after)) / in.of(before),
                        before,
                        after))
                .confusedWith("carbon-dioxide-transfer");
        return Flowing.on(card, Influence.more(Effect.LOWERS, "blood stays in the device for less time"), Map.of(), "")
                .decides(
                        Conditions.GAS_BLOOD_RATIO,
                        Tolerance.within("0.1"),
                        Influence.more(Effect.RAISES, "more sweep gas washes out more carbon dioxide"))
                .cites(Citation.commonPractice("weak surrogate of transfer"))
                .worked(WorkedValue.of(
                        "0.191", Citation.derived("9 / 47"), "inlet-pco2=47 mmHg", "outlet-pco2=38 mmHg"))
                .build();
    }
}
