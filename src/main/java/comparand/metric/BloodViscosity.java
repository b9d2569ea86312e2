package comparand.metric;

import java.util.List;

/** Viscosity of blood, estimated from haematocrit and temperature, taken as usual, or measured. */
final class BloodViscosity {

    static final String MODEL = "viscosity-model";
    static final Aspect ASPECT = new Aspect.Choice(
            MODEL,
            "source of the viscosity",
            "viscosity",
            Role.DECIDES,
            "exponential",
            List.of(
                    new Variant("exponential", "plasma viscosity times exp(2.31 · Hct)"),
                    new Variant("large-tube", "relative viscosity of blood in wide tubes, times that of plasma"),
                    new Variant("nominal", "3.5 mPa·s whatever the blood"),
                    new Variant("measured", "by viscometer")),
            List.of());
    private static final Citation PRIES = Citation.fromMemory(
            "Pries, Neuhaus and Gaehtgens, Am J Physiol 1992;263:H1770-H1778", "limit of wide tubes");
    private static final Citation HUND =
            Citation.read("Hund, Kameneva and Antaki, Fluids 2017;2(1):10", "3.5 cP, commonly assumed");

    private BloodViscosity() {}

    static Metric metric() {
        var plasma = Letters.PLASMA_VISCOSITY;
        var cells = Letters.HAEMATOCRIT;
        return Metric.named("blood-viscosity", "blood viscosity, estimated")
                .symbol("μ")
                .meaning("Viscosity of blood at the temperature and haematocrit of the test")
                .unit("mPa·s")
                .plausible(0.6, 6)
                .possible(0.3, 20)
                .derived(Derivation.of(
                                "μ = μ_p · exp(2.31 · Hct / 100)",
                                Sources.MOCKROS,
                                in -> in.of(plasma) * Math.exp(2.31 * in.of(cells) / 100),
                                plasma,
                                cells)
                        .giving(MODEL, "exponential"))
                .derived(Derivation.of(
                                "μ = μ_p · (1 + 2.2 · ((1 - Hct/100)^-0.8 - 1) / ((1 - 0.45)^-0.8 - 1))",
                                PRIES,
                                in -> in.of(plasma)
                                        * (1
                                                + 2.2
                                                        * (Math.pow(1 - in.of(cells) / 100, -0.8) - 1)
                                                        / (Math.pow(1 - 0.45, -0.8) - 1)),
                                plasma,
                                cells)
                        .giving(MODEL, "large-tube"))
                .derived(Derivation.of("μ = 3.5 mPa·s", HUND, in -> 3.5).giving(MODEL, "nominal"))
                .aspect(ASPECT)
                .cites(Sources.MOCKROS)
                .cites(PRIES)
                .cites(HUND)
                .worked(WorkedValue.of(
                        "2.3619 mPa·s",
                        Citation.derived("1.1811 × exp(0.693), 37 °C"),
                        "plasma-viscosity=1.181125 mPa·s",
                        "haematocrit=30 %"))
                .worked(WorkedValue.of(
                                "2.6215 mPa·s",
                                Citation.derived("1.20 × 2.1846"),
                                "plasma-viscosity=1.20 mPa·s",
                                "haematocrit=30 %")
                        .under(MODEL, "large-tube"))
                .worked(WorkedValue.of("3.5 mPa·s", Citation.derived("constant"))
                        .under(MODEL, "nominal"))
                .build();
    }
}
