package comparand.metric;

import java.util.List;

/**
 * Oxygen carried by blood on one side of the device, bound and dissolved: {@code C = k · Hb · S + α · P}.
 *
 * <p>k is Hüfner's constant (mL/g), α the solubility (mL/dL/mmHg). Both are met with several values in print, so both
 * belong to the definition of every value computed from them; so does the haemoglobin that counts.
 */
final class OxygenContent {

    static final Aspect HUFNER = new Aspect.Choice(
            "hufner-constant",
            "Hüfner's constant, mL/g",
            "k",
            Role.QUALIFIES,
            "1.34",
            List.of(
                    new Variant("1.34", "usual in clinical work"),
                    new Variant("1.36", "usual in physiology"),
                    new Variant("1.39", "theoretical, 4 × 22 391 mL / 64 458 g")),
            List.of());
    static final Aspect SOLUBILITY = new Aspect.Choice(
            "oxygen-solubility",
            "solubility of oxygen, mL/dL/mmHg",
            "α",
            Role.QUALIFIES,
            "0.0031",
            List.of(
                    new Variant("0.0031", "0.023 mL/dL/kPa"),
                    new Variant("0.003", "0.0225 mL/dL/kPa"),
                    new Variant("0.0029345", "9.83e-3 mmol/L/kPa"),
                    new Variant("0", "dissolved oxygen left out")),
            List.of());
    /** The content of blood that binds oxygen with all of its haemoglobin, or with what carbon monoxide and iron III leave. */
    static final Aspect EFFECTIVE = new Aspect.Choice(
            "effective-haemoglobin",
            "haemoglobin that counts",
            "Hb counted",
            Role.QUALIFIES,
            "total",
            List.of(
                    new Variant("total", "all haemoglobin"),
                    new Variant("without-dyshaemoglobins", "less carboxyhaemoglobin and methaemoglobin")),
            List.of());

    private OxygenContent() {}

    static Metric inlet() {
        return side(Side.INLET);
    }

    static Metric outlet() {
        return side(Side.OUTLET);
    }

    /** Every metric that is made of oxygen contents carries their choices. */
    static Metric.Builder choices(Metric.Builder card) {
        return card.aspect(HUFNER)
                .aspect(SOLUBILITY)
                .aspect(OxygenSaturation.ASPECT)
                .aspect(EFFECTIVE);
    }

    /** Oxygen content in mL/dL by the constants asked for. */
    static double of(Inputs in, double haemoglobin, double saturation, double po2) {
        return in.constant(HUFNER.id()) * haemoglobin * saturation + in.constant(SOLUBILITY.id()) * po2;
    }

    private static Metric side(Side side) {
        var saturation = side.saturation();
        var pressure = side.po2();
        var hb = Letters.HAEMOGLOBIN;
        var co = Letters.CARBOXYHAEMOGLOBIN;
        var met = Letters.METHAEMOGLOBIN;
        var c = side.oxygenContent().symbol();
        var card = Metric.named(side.word() + "-oxygen-content", "oxygen content at the " + side.word())
                .symbol("C " + side.suffix())
                .meaning("Oxygen bound to haemoglobin and dissolved in the blood at the " + side.word()
                        + ", as gas at STPD")
                .unit("mL/dL")
                .plausible(4, 24)
                .possible(0, 35)
                .derived(Derivation.of(
                                "%s = k · Hb · %s + α · %s".formatted(c, saturation.symbol(), pressure.symbol()),
                                Citation.commonPractice("bound plus dissolved oxygen"),
                                in -> of(in, in.of(hb), in.of(saturation), in.of(pressure)),
                                hb,
                                saturation,
                                pressure)
                        .giving(EFFECTIVE.id(), "total"))
                .derived(Derivation.of(
                                "%s = k · Hb · (1 - F_CO - F_Met) · %s + α · %s"
                                        .formatted(c, saturation.symbol(), pressure.symbol()),
                                Citation.read(
                                        "Manual of a blood gas analyser, equation 34.3",
                                        "ctO₂ = α · pO₂ + sO₂ · (1 - FCOHb - FMetHb) · ctHb"),
                                in -> of(
                                        in,
                                        in.of(hb) * (1 - in.of(co) - in.of(met)),
                                        in.of(saturation),
                                        in.of(pressure)),
                                hb,
                                saturation,
                                pressure,
                                co,
                                met)
                        .giving(EFFECTIVE.id(), "without-dyshaemoglobins"));
        return choices(card)
                .cites(Citation.read(
                        "Dijkhuizen et al., Pflügers Arch 1977;369:223-231", "measured 1.368 (SD 0.017) mL/g"))
                .cites(Citation.read(
                        "Dominguez de Villota et al., Br J Anaesth 1981;53:1325-1328",
                        "1.392 mL/g after inactive haemoglobin is taken off"))
                .cites(Sources.OXYGEN_CONTENT_EXAMPLE)
                .worked(WorkedValue.of(
                        "20.4 mL/dL",
                        Sources.OXYGEN_CONTENT_EXAMPLE,
                        "haemoglobin=15 g/dL",
                        saturation.id() + "=100 %",
                        pressure.id() + "=13.3 kPa"))
                .worked(WorkedValue.of(
                                "14.090 mL/dL",
                                Citation.derived("1.36 × 10 × 0.995 + 0.0031 × 180"),
                                "haemoglobin=10 g/dL",
                                saturation.id() + "=0.995",
                                pressure.id() + "=180 mmHg")
                        .under(HUFNER.id(), "1.36"))
                .worked(WorkedValue.of(
                                "14.137 mL/dL",
                                Citation.derived("1.39 × 10 × 0.984 × 0.995 + 0.0029345 × 180"),
                                "haemoglobin=10 g/dL",
                                saturation.id() + "=0.995",
                                pressure.id() + "=180 mmHg",
                                "carboxyhaemoglobin-fraction=0.010",
                                "methaemoglobin-fraction=0.006")
                        .under(HUFNER.id(), "1.39")
                        .under(SOLUBILITY.id(), "0.0029345")
                        .under(EFFECTIVE.id(), "without-dyshaemoglobins"))
                .build();
    }
}
