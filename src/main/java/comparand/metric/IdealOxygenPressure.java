package comparand.metric;

import java.util.List;

/**
 * The oxygen pressure of blood in full equilibrium with the gas of the device, which no one measures: taken from the sweep
 * gas in one of several ways. The way alone moves a shunt fraction by a sixth, so it decides.
 */
final class IdealOxygenPressure {

    static final String WAY = "ideal-pressure";
    static final Aspect ASPECT = new Aspect.Choice(
            WAY,
            "oxygen pressure taken for full equilibrium",
            "ideal PO₂",
            Role.DECIDES,
            "less-carbon-dioxide",
            List.of(
                    new Variant("less-carbon-dioxide", "dry share of the sweep gas, less PCO₂ at the outlet"),
                    new Variant("sweep-gas", "dry share of the sweep gas"),
                    new Variant("alveolar-gas-equation", "the alveolar gas equation with an exchange ratio of 0.8"),
                    new Variant("gas-outlet", "measured at the gas outlet")),
            List.of());
    private static final Input F = Letters.OXYGEN_FRACTION;
    private static final Input PB = Letters.BAROMETRIC_PRESSURE;
    private static final Input VAPOUR = Letters.VAPOUR_PRESSURE;

    private IdealOxygenPressure() {}

    static double moist(Inputs in) {
        return in.of(F) * (in.of(PB) - in.of(VAPOUR));
    }

    static Metric metric() {
        var pco2 = Side.OUTLET.pco2();
        return Metric.named("ideal-oxygen-pressure", "oxygen pressure at full equilibrium")
                .symbol("Pc′")
                .meaning("Oxygen pressure the blood would have in full equilibrium with the gas of the device")
                .unit("mmHg")
                .plausible(80, 720)
                .possible(0, 800)
                .derived(Derivation.of(
                                "P_c′ = F_O₂ · (PB - PH₂O) - PCO₂_out",
                                Sources.SHUNT_EQUATION,
                                in -> moist(in) - in.of(pco2),
                                F,
                                PB,
                                VAPOUR,
                                pco2)
                        .giving(WAY, "less-carbon-dioxide"))
                .derived(Derivation.of(
                                "P_c′ = F_O₂ · (PB - PH₂O)",
                                Citation.commonPractice("carbon dioxide ignored"),
                                IdealOxygenPressure::moist,
                                F,
                                PB,
                                VAPOUR)
                        .giving(WAY, "sweep-gas"))
                .derived(Derivation.of(
                                "P_c′ = F_O₂ · (PB - PH₂O) - PCO₂_out · (F_O₂ + (1 - F_O₂) / 0.8)",
                                Sources.SHUNT_EQUATION,
                                in -> moist(in) - in.of(pco2) * (in.of(F) + (1 - in.of(F)) / 0.8),
                                F,
                                PB,
                                VAPOUR,
                                pco2)
                        .giving(WAY, "alveolar-gas-equation"))
                .derived(Derivation.of(
                                "P_c′ = P_g,O₂",
                                Citation.commonPractice("exhaust gas taken for the ideal"),
                                in -> in.of(Letters.GAS_OUTLET_PO2),
                                Letters.GAS_OUTLET_PO2)
                        .giving(WAY, "gas-outlet"))
                .aspect(ASPECT)
                .cites(Sources.SHUNT_VARIANTS)
                .worked(worked("389.8 mmHg", "0.60 × 713 - 38").under(WAY, "less-carbon-dioxide"))
                .worked(worked("427.8 mmHg", "0.60 × 713").under(WAY, "sweep-gas"))
                .worked(worked("386.0 mmHg", "0.60 × 713 - 38 × 1.1").under(WAY, "alveolar-gas-equation"))
                .worked(WorkedValue.of("402 mmHg", Citation.derived("as measured"), "gas-outlet-po2=402 mmHg")
                        .under(WAY, "gas-outlet"))
                .build();
    }

    private static WorkedValue worked(String result, String how) {
        return WorkedValue.of(
                result,
                Citation.derived(how),
                "oxygen-fraction=0.60",
                "barometric-pressure=760 mmHg",
                "water-vapour-pressure=47 mmHg",
                "outlet-pco2=38 mmHg");
    }
}
