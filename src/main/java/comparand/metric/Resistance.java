package comparand.metric;

import java.util.List;

/**
 * Pressure drop per flow: {@code R_b = ΔP / Q}. Not constant in flow, so it is compared at one flow; the slope over several
 * flows and the ratio of means are other quantities.
 */
final class Resistance {

    private static final Input DROP = Letters.PRESSURE_DROP;
    private static final Input Q = Letters.BLOOD_FLOW;
    private static final String REDUCTION = "reduction";
    private static final Citation WOOD = Citation.commonPractice("1 mmHg·min/L is 1 Wood unit");

    private Resistance() {}

    static Metric metric() {
        var ratio = Derivation.of("R_b = ΔP / Q", WOOD, in -> in.of(DROP) / in.of(Q), DROP, Q);
        var card = Metric.named("resistance", "resistance")
                .symbol("Rb")
                .meaning("The pressure drop of the blood path divided by the blood flow through it")
                .unit("mmHg·min/L")
                .better(Better.LESS)
                .plausible(3, 150)
                .possible(0, 600)
                .derived(ratio.giving(REDUCTION, "ratio-at-one-flow"))
                .derived(Derivation.found(
                                "R_b = slope of ΔP on Q, with intercept",
                                Citation.commonPractice("least squares through the flows of one unit"),
                                new Gathering.Fit(
                                        Q.id(),
                                        DROP.id(),
                                        Gathering.Fit.Form.WITH_INTERCEPT,
                                        Gathering.Fit.Result.SLOPE,
                                        Gathering.Over.MEMBER),
                                DROP,
                                Q)
                        .giving(REDUCTION, "slope"))
                .derived(
                        ratio.gathered(new Gathering.Sums(Gathering.Over.GROUP)).giving(REDUCTION, "ratio-of-means"))
                .aspect(PressureDrop.PARTS)
                .aspect(new Aspect.Choice(
                        REDUCTION,
                        "way the ratio is formed",
                        "reduction",
                        Role.DECIDES,
                        "ratio-at-one-flow",
                        List.of(
                                new Variant("ratio-at-one-flow", "pressure drop over flow at one flow, then the mean"),
                                new Variant("slope", "slope of pressure drop on flow"),
                                new Variant("ratio-of-means", "mean pressure drop over mean flow")),
                        List.of()))
                .confusedWith("pressure-drop");
        return PressureDrop.conditions(
                        card, Influence.more(Effect.RAISES, "part of the pressure drop grows with the square of flow"))
                .cites(Citation.commonPractice("pressure drop per flow, in Wood units or dyn·s/cm⁵"))
                .worked(WorkedValue.of(
                        "42.5 mmHg·min/L",
                        Citation.derived("51 / 1.2"),
                        "pressure-drop=51 mmHg",
                        "blood-flow=1.2 L/min"))
                .worked(WorkedValue.of(
                                "52.0 mmHg·min/L",
                                Citation.derived("14, 36 and 66 mmHg at 0.5, 1.0 and 1.5 L/min: 52 over 1.0"),
                                "pressure-drop=14 mmHg; 36 mmHg; 66 mmHg",
                                "blood-flow=0.5 L/min; 1.0 L/min; 1.5 L/min")
                        .under(REDUCTION, "slope"))
                .worked(WorkedValue.of(
                                "38.7 mmHg·min/L",
                                Citation.derived("(14 + 36 + 66) / (0.5 + 1.0 + 1.5)"),
                                "pressure-drop=14 mmHg; 36 mmHg; 66 mmHg",
                                "blood-flow=0.5 L/min; 1.0 L/min; 1.5 L/min")
                        .under(REDUCTION, "ratio-of-means"))
                .build();
    }
}
