package comparand.metric;

import java.util.List;

/** Oxygen content of fully equilibrated blood: {@code C_c′ = k · Hb · S_c′ + α · P_c′}, with S_c′ 1 or off the curve. */
final class IdealOxygenContent {

    static final String SATURATION = "ideal-saturation";
    static final Aspect ASPECT = new Aspect.Choice(
            SATURATION,
            "saturation taken for full equilibrium",
            "ideal saturation",
            Role.QUALIFIES,
            "full",
            List.of(new Variant("full", "1"), new Variant("severinghaus", "of the ideal pressure, Severinghaus 1979")),
            List.of());

    private IdealOxygenContent() {}

    static Metric metric() {
        var hb = Letters.HAEMOGLOBIN;
        var p = Letters.IDEAL_PO2;
        return Metric.named("ideal-oxygen-content", "oxygen content at full equilibrium")
                .symbol("Cc′")
                .meaning("Oxygen content the blood would have in full equilibrium with the gas of the device")
                .unit("mL/dL")
                .plausible(6, 26)
                .possible(0, 40)
                .derived(Derivation.of(
                                "C_c′ = k · Hb + α · P_c′",
                                Sources.SHUNT_EQUATION,
                                in -> OxygenContent.of(in, in.of(hb), 1, in.of(p)),
                                hb,
                                p)
                        .giving(SATURATION, "full"))
                .derived(Derivation.of(
                                "C_c′ = k · Hb · S(P_c′) + α · P_c′",
                                Sources.SEVERINGHAUS,
                                in -> OxygenContent.of(
                                        in, in.of(hb), OxygenDissociation.saturation(in.of(p)), in.of(p)),
                                hb,
                                p)
                        .giving(SATURATION, "severinghaus")
                        .onlyWhen(Conditions.SPECIES, "human"))
                .aspect(OxygenContent.HUFNER)
                .aspect(OxygenContent.SOLUBILITY)
                .aspect(IdealOxygenPressure.ASPECT)
                .aspect(ASPECT)
                .cites(Sources.SHUNT_EQUATION)
                .worked(WorkedValue.of(
                        "14.608 mL/dL",
                        Citation.derived("13.4 + 0.0031 × 389.8"),
                        "haemoglobin=10 g/dL",
                        "ideal-oxygen-pressure=389.8 mmHg"))
                .worked(WorkedValue.of(
                                "14.603 mL/dL",
                                Citation.derived("13.4 × 0.99961 + 0.0031 × 389.8"),
                                "haemoglobin=10 g/dL",
                                "ideal-oxygen-pressure=389.8 mmHg")
                        .under(SATURATION, "severinghaus"))
                .build();
    }
}
