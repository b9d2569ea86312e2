package comparand.metric;

import java.util.List;

/** The oxygen pressure at which human blood of pH 7.4 and 37 °C has a saturation: the curve of Severinghaus backwards. */
final class OxygenPressureAtSaturation {

    private static final String INVERSE = "inverse";
    private static final Input SATURATION =
            Input.of("oxygen-saturation", "S", "oxygen saturation, at pH 7.4 and 37 °C", "1");

    private OxygenPressureAtSaturation() {}

    static Metric metric() {
        return Metric.named("oxygen-pressure-at-saturation", "oxygen pressure at a saturation")
                .symbol("P(S)")
                .meaning("Oxygen pressure at which human blood of pH 7.4 at 37 °C reaches a saturation")
                .unit("mmHg")
                .plausible(10, 150)
                .possible(0, 2000)
                .derived(Derivation.of(
                                "(r + a)^(1/3) - (r - a)^(1/3), a = 11700 S / (1 - S), r = √(50³ + a²)",
                                Sources.ELLIS,
                                in -> OxygenDissociation.pressure(in.of(SATURATION)),
                                SATURATION)
                        .giving(INVERSE, "exact")
                        .onlyWhen(Conditions.SPECIES, "human"))
                .derived(Derivation.of(
                                "exp(0.385 ln(S / (1 - S)) + 3.32 - 1 / (72 S) - 0.17 S⁶)",
                                Sources.SEVERINGHAUS,
                                in -> OxygenDissociation.approximatePressure(in.of(SATURATION)),
                                SATURATION)
                        .giving(INVERSE, "approximate")
                        .onlyWhen(Conditions.SPECIES, "human"))
                .aspect(new Aspect.Choice(
                        INVERSE,
                        "way the curve is inverted",
                        "inverse",
                        Role.QUALIFIES,
                        "exact",
                        List.of(
                                new Variant("exact", "the root of equation 1, after Ellis"),
                                new Variant("approximate", "equation 2 of Severinghaus")),
                        List.of()))
                .cites(Sources.ELLIS)
                .cites(Sources.SEVERINGHAUS)
                .worked(WorkedValue.of("33.736 mmHg", Citation.derived("a = 21 728.57"), "oxygen-saturation=0.65"))
                .worked(WorkedValue.of("33.925 mmHg", Citation.derived("equation 2"), "oxygen-saturation=65 %")
                        .under(INVERSE, "approximate"))
                .build();
    }
}
