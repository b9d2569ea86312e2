package comparand.metric;

import java.util.List;

/**
 * Oxygen uptake against the oxygen fraction it took: at one outlet pressure, a better device needs less oxygen in its gas
 * for the same uptake. One point per case, by least squares, in four ways that give four numbers.
 */
final class UptakeRelation {

    static final String BASIS = "fraction-basis";
    static final Aspect BASIS_ASPECT = new Aspect.Choice(
            BASIS,
            "oxygen fraction that is used",
            "fraction",
            Role.DECIDES,
            "corrected",
            List.of(
                    new Variant("corrected", "corrected to 150 mmHg at the outlet"),
                    new Variant("as-set", "as set, from samples within a window of outlet pressure")),
            List.of());
    private static final String LINE = "regression-line";
    private static final String DIRECTION = "regression-direction";
    private static final Input UPTAKE = Letters.OXYGEN_TRANSFER;
    private static final Citation STUDY = Citation.read(
            "Perfusion 2026, DOI 10.1177/02676591261438976",
            "abstract: VO₂ = 284.34 · FiO₂ through the origin, 57 samples at 150 ± 5 mmHg");

    private UptakeRelation() {}

    static Metric slope() {
        var card = Metric.named("uptake-per-oxygen-fraction", "slope of oxygen uptake on oxygen fraction")
                .symbol("m")
                .meaning("Oxygen uptake per unit of oxygen fraction of the sweep gas, over the cases of a device")
                .unit("mL/min")
                .better(Better.MORE)
                .plausible(40, 700)
                .possible(0, 2000);
        for (var basis : List.of(Letters.CORRECTED_OXYGEN_FRACTION, Letters.OXYGEN_FRACTION)) {
            for (var form : Gathering.Fit.Form.values()) {
                card.derived(way(basis, form, true)).derived(way(basis, form, false));
            }
        }
        return conditions(OxygenTransfer.choices(card).aspect(BASIS_ASPECT))
                .aspect(new Aspect.Choice(
                        LINE,
                        "line that is fitted",
                        "line",
                        Role.DECIDES,
                        "with-intercept",
                        List.of(
                                new Variant("with-intercept", "free to pass beside the origin"),
                                new Variant("through-origin", "held to the origin")),
                        List.of()))
                .aspect(new Aspect.Choice(
                        DIRECTION,
                        "direction of the regression",
                        "direction",
                        Role.DECIDES,
                        "uptake-on-fraction",
                        List.of(
                                new Variant("uptake-on-fraction", "uptake from fraction"),
                                new Variant("fraction-on-uptake", "fraction from uptake, its slope inverted")),
                        List.of()))
                .cites(STUDY)
                .worked(points("163.79 mL/min", "slope with intercept"))
                .worked(points("140.58 mL/min", "slope through the origin").under(LINE, "through-origin"))
                .worked(points("165.05 mL/min", "slope of fraction on uptake, inverted: 163.79 / r²")
                        .under(DIRECTION, "fraction-on-uptake"))
                .build();
    }

    static Metric fractionAtUptake() {
        var corrected = Letters.CORRECTED_OXYGEN_FRACTION;
        var set = Letters.OXYGEN_FRACTION;
        var card = Metric.named("oxygen-fraction-at-uptake", "oxygen fraction at an oxygen uptake")
                .symbol("FO₂@VO₂")
                .meaning("The oxygen fraction of the sweep gas that an oxygen uptake takes")
                .unit("1")
                .better(Better.LESS)
                .plausible(0.25, 0.95)
                .possible(0.15, 1.3)
                .derived(Derivation.of("cF_O₂", Sources.KARDIOTECHNIK, in -> in.of(corrected), corrected)
                        .giving(BASIS, "corrected"))
                .derived(Derivation.of(
                                "F_O₂", Citation.commonPractice("as set, samples near 150 mmHg"), in -> in.of(set), set)
                        .giving(BASIS, "as-set"))
                .aspect(BASIS_ASPECT)
                .decides(
                        Conditions.OXYGEN_TRANSFER,
                        Tolerance.percent("5 %"),
                        Influence.more(Effect.RAISES, "a higher uptake takes more oxygen in the gas"))
                .interpolatesOver(Conditions.OXYGEN_TRANSFER);
        return conditions(card)
                .cites(Sources.KARDIOTECHNIK)
                .worked(WorkedValue.of("0.5295", Citation.derived("as computed"), "corrected-oxygen-fraction=0.5295"))
                .worked(WorkedValue.of("0.60", Citation.derived("as set"), "oxygen-fraction=60 %")
                        .under(BASIS, "as-set"))
                .build();
    }

    private static Metric.Builder conditions(Metric.Builder card) {
        return card.decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.BAROMETRIC_PRESSURE, Tolerance.within("15 mmHg"), Influence.UNKNOWN)
                .decides(Conditions.HAEMOGLOBIN, Flowing.HAEMOGLOBIN, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .qualifies(Conditions.BLOOD_FLOW, Flowing.FLOW, Influence.UNKNOWN);
    }

    private static Derivation way(Input fraction, Gathering.Fit.Form form, boolean uptakeOnFraction) {
        boolean origin = form == Gathering.Fit.Form.THROUGH_ORIGIN;
        var x = uptakeOnFraction ? fraction : UPTAKE;
        var y = uptakeOnFraction ? UPTAKE : fraction;
        var fit = new Gathering.Fit(x.id(), y.id(), form, Gathering.Fit.Result.SLOPE, Gathering.Over.GROUP);
        return Derivation.of(
                        "%sslope of %s on %s, %s"
                                .formatted(
                                        uptakeOnFraction ? "m = " : "m = 1 / ",
                                        y.symbol(),
                                        x.symbol(),
                                        origin ? "through the origin" : "with intercept"),
                        Citation.commonPractice("least squares, one point per case"),
                        in -> uptakeOnFraction ? in.get(Gathering.FOUND) : 1 / in.get(Gathering.FOUND),
                        fraction,
                        UPTAKE)
                .gathered(fit)
                .giving(BASIS, fraction.equals(Letters.OXYGEN_FRACTION) ? "as-set" : "corrected")
                .giving(LINE, origin ? "through-origin" : "with-intercept")
                .giving(DIRECTION, uptakeOnFraction ? "uptake-on-fraction" : "fraction-on-uptake");
    }

    private static WorkedValue points(String result, String how) {
        return WorkedValue.of(
                        result,
                        Citation.derived(how),
                        "oxygen-fraction=0.40; 0.45; 0.50; 0.60; 0.70",
                        "oxygen-transfer=52 mL/min; 60 mL/min; 70 mL/min; 88 mL/min; 100 mL/min")
                .under(BASIS, "as-set");
    }
}
