package comparand.metric;

import java.util.List;

/**
 * Oxygen saturation where it was not measured: read off a dissociation curve at the oxygen pressure and pH of the sample.
 * Both curves are of human adult blood, so they are used for no other. Severinghaus: {@code S = 1 / (23400 / (P³ + 150 P) +
 * 1)} at the pressure shifted to pH 7.4.
 */
final class OxygenSaturation {

    static final String KIND = "saturation-kind";
    static final Aspect ASPECT = new Aspect.Choice(
            KIND,
            "kind of saturation",
            "saturation",
            Role.QUALIFIES,
            "functional",
            List.of(
                    new Variant("functional", "measured, of the haemoglobin that can bind oxygen"),
                    new Variant("fractional", "measured, of all haemoglobin"),
                    new Variant("severinghaus", "not measured: from oxygen pressure and pH, Severinghaus 1979"),
                    new Variant("kelman", "not measured: from oxygen pressure, pH and carbon dioxide, Kelman 1966")),
            List.of());

    private OxygenSaturation() {}

    static Metric inlet() {
        return side(Side.INLET);
    }

    static Metric outlet() {
        return side(Side.OUTLET);
    }

    private static Metric side(Side side) {
        var po2 = side.po2();
        var ph = side.ph();
        var pco2 = side.pco2();
        return Metric.named(side.word() + "-saturation", "oxygen saturation at the " + side.word())
                .symbol("S " + side.suffix())
                .meaning("Share of the haemoglobin at the " + side.word() + " that carries oxygen")
                .unit("1")
                .plausible(0.3, 1.0)
                .possible(0, 1.02)
                .derived(Derivation.of(
                                "1 / (23400 / (P³ + 150 P) + 1), P = %s · exp(-((%s / 26.6)^0.184 - 2.2) · (%s - 7.4))"
                                        .formatted(po2.symbol(), po2.symbol(), ph.symbol()),
                                Sources.SEVERINGHAUS,
                                in -> OxygenDissociation.saturation(
                                        OxygenDissociation.virtualPressure(in.of(po2), in.of(ph))),
                                po2,
                                ph)
                        .giving(KIND, "severinghaus")
                        .onlyWhen(Conditions.SPECIES, "human"))
                .derived(Derivation.of(
                                "standard curve at %s · 10^(0.40 (%s - 7.40) + 0.06 log(40 / %s))"
                                        .formatted(po2.symbol(), ph.symbol(), pco2.symbol()),
                                Sources.KELMAN_OXYGEN,
                                in -> OxygenDissociation.kelmanSaturation(
                                        OxygenDissociation.kelmanPressure(in.of(po2), 37, in.of(ph), in.of(pco2))),
                                po2,
                                ph,
                                pco2)
                        .giving(KIND, "kelman")
                        .onlyWhen(Conditions.SPECIES, "human"))
                .aspect(ASPECT)
                .cites(Sources.SEVERINGHAUS)
                .cites(Sources.KELMAN_OXYGEN)
                .worked(WorkedValue.of(
                                "0.68578",
                                Citation.derived("virtual pressure 35.754 mmHg"),
                                po2.id() + "=40 mmHg",
                                ph.id() + "=7.3 [pH]")
                        .under(KIND, "severinghaus"))
                .worked(WorkedValue.of(
                                "0.9508",
                                Citation.read("Open library co2ntent, unit test", "Kelman at 75.006 mmHg: 0.950795"),
                                po2.id() + "=75.006 mmHg",
                                ph.id() + "=7.4 [pH]",
                                pco2.id() + "=40 mmHg")
                        .under(KIND, "kelman"))
                .build();
    }
}
