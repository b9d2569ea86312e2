package comparand.metric;

import java.util.List;

/**
 * The change of platelets or fibrinogen that dilution does not explain: {@code 100 · (X_post · c / X_pre - 1)}, c the
 * dilution by some substance that is neither lost nor given. Where blood, plasma or platelets were given between the
 * samples, or blood was concentrated, no such substance exists, and nothing is computed.
 */
final class DilutionCorrected {

    private static final String CORRECTION = "dilution-correction";
    private static final Citation PRACTICE = Citation.commonPractice("corrected by the dilution of a marker");
    private static final Aspect ASPECT = new Aspect.Choice(
            CORRECTION,
            "correction for dilution",
            "correction",
            Role.DECIDES,
            "haematocrit",
            List.of(
                    new Variant("haematocrit", "by the fall of haematocrit"),
                    new Variant("haemoglobin", "by the fall of haemoglobin"),
                    new Variant("total-protein", "by the fall of total protein"),
                    new Variant("albumin", "by the fall of albumin"),
                    new Variant("plasma-share", "by the growth of the plasma, red cells kept"),
                    new Variant("none", "as counted")),
            List.of());

    private DilutionCorrected() {}

    /** A pair of letters: before and after. */
    private record Pair(Input before, Input after) {
        static Pair of(String id, String symbol, String meaning, String unit) {
            return new Pair(
                    Input.of(id + "-before", symbol + "_pre", meaning + " before", unit),
                    Input.of(id + "-after", symbol + "_post", meaning + " after", unit));
        }

        double dilution(Inputs in) {
            return in.of(before) / in.of(after);
        }
    }

    private static final Pair CELLS = Pair.of("haematocrit", "Hct", "haematocrit", "%");

    static Metric platelets() {
        return card(
                        Pair.of("platelet-count", "Plt", "platelet count", "10⁹/L"),
                        "corrected-platelet-change",
                        "change of platelet count, corrected for dilution",
                        "Plt")
                .worked(worked("-40.659 %", "120 × 36/26 = 166.15 of 280", "platelet-count", "280 10⁹/L", "120 10⁹/L"))
                .worked(worked("-57.143 %", "120 of 280", "platelet-count", "280 10⁹/L", "120 10⁹/L")
                        .under(CORRECTION, "none"))
                .build();
    }

    static Metric fibrinogen() {
        return card(
                        Pair.of("fibrinogen", "Fbg", "fibrinogen", "g/L"),
                        "corrected-fibrinogen-change",
                        "change of fibrinogen, corrected for dilution",
                        "Fbg")
                .worked(worked("-30.769 %", "1.2 × 36/26 = 1.6615 of 2.4", "fibrinogen", "2.4 g/L", "1.2 g/L"))
                .worked(worked(
                                "-19.952 %",
                                "1.2 × (36 × 74)/(26 × 64) = 1.9212 of 2.4", "fibrinogen", "2.4 g/L", "1.2 g/L")
                        .under(CORRECTION, "plasma-share"))
                .build();
    }

    private static Metric.Builder card(Pair x, String id, String name, String symbol) {
        var haemoglobin = Pair.of("haemoglobin", "Hb", "haemoglobin", "g/dL");
        var protein = Pair.of("total-protein", "TP", "total protein", "g/L");
        var albumin = Pair.of("albumin", "Alb", "albumin", "g/L");
        return Metric.named(id, name)
                .symbol("Δ" + symbol)
                .meaning("The share by which it fell or rose from before to after, beyond what dilution explains")
                .unit("%")
                .better(Better.MORE)
                .plausible(-80, 20)
                .possible(-100, 300)
                .derived(marked(x, CELLS).giving(CORRECTION, "haematocrit"))
                .derived(marked(x, haemoglobin).giving(CORRECTION, "haemoglobin"))
                .derived(marked(x, protein).giving(CORRECTION, "total-protein"))
                .derived(marked(x, albumin).giving(CORRECTION, "albumin"))
                .derived(Derivation.of(
                                "100 · (%s / %s · Hct_pre (100 - Hct_post) / (Hct_post (100 - Hct_pre)) - 1)"
                                        .formatted(x.after.symbol(), x.before.symbol()),
                                Citation.derived("plasma grows by (1 - Hct_post)/Hct_post while red cells are kept"),
                                in -> 100
                                        * (CELLS.dilution(in)
                                                        * (100 - in.of(CELLS.after))
                                                        / (100 - in.of(CELLS.before))
                                                        / x.dilution(in)
                                                - 1),
                                x.before,
                                x.after,
                                CELLS.before,
                                CELLS.after)
                        .giving(CORRECTION, "plasma-share")
                        .onlyWhen(Conditions.TRANSFUSION, "none"))
                .derived(Derivation.of(
                                "100 · (%s / %s - 1)".formatted(x.after.symbol(), x.before.symbol()),
                                Citation.commonPractice("per cent of the value before"),
                                in -> 100 * (1 / x.dilution(in) - 1),
                                x.before,
                                x.after)
                        .giving(CORRECTION, "none"))
                .aspect(ASPECT)
                .decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.TRANSFUSION, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.SAMPLING_TIME, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.BYPASS_DURATION, Tolerance.percent("15 %"), Influence.UNKNOWN)
                .cites(PRACTICE);
    }

    private static Derivation marked(Pair x, Pair marker) {
        return Derivation.of(
                        "100 · (%s · (%s / %s) / %s - 1)"
                                .formatted(
                                        x.after.symbol(),
                                        marker.before.symbol(),
                                        marker.after.symbol(),
                                        x.before.symbol()),
                        PRACTICE,
                        in -> 100 * (marker.dilution(in) / x.dilution(in) - 1),
                        x.before,
                        x.after,
                        marker.before,
                        marker.after)
                .onlyWhen(Conditions.TRANSFUSION, "none");
    }

    private static WorkedValue worked(String result, String how, String id, String before, String after) {
        return WorkedValue.of(
                result,
                Citation.derived(how),
                id + "-before=" + before,
                id + "-after=" + after,
                "haematocrit-before=36 %",
                "haematocrit-after=26 %");
    }
}
