package comparand.metric;

import java.util.List;

/**
 * Carbon dioxide carried by blood on one side of the device, by Douglas, Jones and Reed (1988) from pressure, pH,
 * haemoglobin and saturation, or by Loeppky (1983) from pressure alone. Which model decides: two models differ by more
 * than two devices. Pressure and pH are those of the analyser, at 37 °C; the patient's temperature does not enter.
 */
final class CarbonDioxideContent {

    static final String MODEL = "carbon-dioxide-model";
    static final Aspect MOLAR_VOLUME = new Aspect.Choice(
            "carbon-dioxide-molar-volume",
            "molar volume of carbon dioxide, L/mol",
            "molar volume",
            Role.QUALIFIES,
            "22.26",
            List.of(new Variant("22.26", "real gas, as in Douglas 1988"), new Variant("22.414", "ideal gas")),
            List.of());

    private CarbonDioxideContent() {}

    static Metric inlet() {
        return whole(Side.INLET);
    }

    static Metric outlet() {
        return whole(Side.OUTLET);
    }

    static Metric inletPlasma() {
        return plasma(Side.INLET);
    }

    static Metric outletPlasma() {
        return plasma(Side.OUTLET);
    }

    /** What transfers made of contents carry: the model only qualifies them, as it has no part in those of the gas side. */
    static Metric.Builder choices(Metric.Builder card) {
        return choices(card, Role.QUALIFIES);
    }

    private static Metric.Builder choices(Metric.Builder card, Role role) {
        return card.aspect(model(role)).aspect(MOLAR_VOLUME).aspect(OxygenSaturation.ASPECT);
    }

    static Aspect model(Role role) {
        return new Aspect.Choice(
                MODEL,
                "model of carbon dioxide content",
                "CO₂ model",
                role,
                "douglas-1988",
                List.of(
                        new Variant("douglas-1988", "from pressure, pH, haemoglobin and saturation"),
                        new Variant("loeppky-1983", "from pressure alone")),
                List.of());
    }

    /** Solubility in plasma after Kelman, mmol/L/mmHg. */
    static double solubility(double celsius) {
        double below = 37 - celsius;
        return 0.0307 + 0.00057 * below + 0.00002 * below * below;
    }

    /** Apparent pK' of plasma after Kelman. */
    static double apparentPk(double celsius, double ph) {
        double acid = 7.4 - ph;
        return 6.086 + 0.042 * acid + (38 - celsius) * (0.00472 + 0.00139 * acid);
    }

    private static Metric plasma(Side side) {
        var pco2 = side.pco2();
        var ph = side.ph();
        return Metric.named(
                        side.word() + "-plasma-carbon-dioxide-content",
                        "carbon dioxide content of plasma at the " + side.word())
                .symbol("Cpl CO₂ " + side.suffix())
                .meaning("Carbon dioxide dissolved and as bicarbonate in the plasma at the " + side.word()
                        + "; not that of whole blood")
                .unit("mL/dL")
                .plausible(20, 85)
                .possible(2, 150)
                .derived(Derivation.of(
                        "%s = V_m / 10 · s · %s · (1 + 10^(%s - pK′)), s = 0.0307, pK′ = 6.086 + 0.042 (7.4 - %s) + 0.00472 + 0.00139 (7.4 - %s)"
                                .formatted(
                                        side.plasmaCarbonDioxideContent().symbol(),
                                        pco2.symbol(),
                                        ph.symbol(),
                                        ph.symbol(),
                                        ph.symbol()),
                        Sources.DOUGLAS,
                        in -> in.constant(MOLAR_VOLUME.id())
                                / 10
                                * solubility(37)
                                * in.of(pco2)
                                * (1 + Math.pow(10, in.of(ph) - apparentPk(37, in.of(ph)))),
                        pco2,
                        ph))
                .aspect(MOLAR_VOLUME)
                .confusedWith(side.word() + "-carbon-dioxide-content")
                .cites(Sources.DOUGLAS)
                .cites(Sources.KELMAN_CARBON_DIOXIDE)
                .worked(WorkedValue.of(
                        "53.84 mL/dL", Sources.DOUGLAS, pco2.id() + "=28.6 mmHg", ph.id() + "=7.51 [pH]"))
                .build();
    }

    private static Metric whole(Side side) {
        var plasma = side.plasmaCarbonDioxideContent();
        var pco2 = side.pco2();
        var ph = side.ph();
        var hb = Letters.HAEMOGLOBIN;
        var saturation = side.saturation();
        var symbol = side.carbonDioxideContent().symbol();
        var card = Metric.named(side.word() + "-carbon-dioxide-content", "carbon dioxide content at the " + side.word())
                .symbol("C CO₂ " + side.suffix())
                .meaning("Carbon dioxide in all its forms in the blood at the " + side.word() + ", as gas at STPD")
                .unit("mL/dL")
                .plausible(20, 75)
                .possible(5, 110)
                .derived(Derivation.of(
                                "%s = %s · (1 - 0.0289 · Hb / ((3.352 - 0.456 · %s) · (8.142 - %s)))"
                                        .formatted(symbol, plasma.symbol(), saturation.symbol(), ph.symbol()),
                                Sources.DOUGLAS,
                                in -> in.of(plasma)
                                        * (1
                                                - 0.0289
                                                        * in.of(hb)
                                                        / ((3.352 - 0.456 * in.of(saturation)) * (8.142 - in.of(ph)))),
                                plasma,
                                hb,
                                saturation,
                                ph)
                        .giving(MODEL, "douglas-1988"))
                .derived(Derivation.of(
                                "%s = 12.8105 · %s^0.3692".formatted(symbol, pco2.symbol()),
                                Sources.LOEPPKY,
                                in -> 12.8105 * Math.pow(in.of(pco2), 0.3692),
                                pco2)
                        .giving(MODEL, "loeppky-1983"));
        return choices(card, Role.DECIDES)
                .confusedWith(side.word() + "-plasma-carbon-dioxide-content")
                .cites(Sources.DOUGLAS)
                .cites(Sources.LOEPPKY)
                .cites(Citation.read(
                        "Bioengineering 2021;8(3):33",
                        "abstract: the choice of model moves the transfer of oxygenators; the simplest did better"))
                .worked(WorkedValue.of(
                        "47.548 mL/dL",
                        Citation.read("Open library co2ntent, unit test", "0.867593 × 54.803778 = 47.5474"),
                        plasma.id() + "=54.8045 mL/dL",
                        "haemoglobin=10 g/dL",
                        saturation.id() + "=0.90",
                        ph.id() + "=7.40 [pH]"))
                .worked(WorkedValue.of(
                                "50.01 mL/dL",
                                Citation.derived("12.8105 × 40^0.3692 = 12.8105 × 3.9041"),
                                pco2.id() + "=40 mmHg")
                        .under(MODEL, "loeppky-1983"))
                .build();
    }
}
