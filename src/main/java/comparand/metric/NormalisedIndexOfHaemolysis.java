package comparand.metric;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Haemoglobin set free per volume pumped:
 * {@code NIH = ΔfHb · V · (100 - Hct)/100 · 100 / (Q · T)} with ΔfHb in g/L, V in L, Hct in %, Q in L/min, T in min; the
 * result is in g per 100 L.
 *
 * <p>Some print (100 - Hct)/Hct in place of (100 - Hct)/100. At a haematocrit of 30 % that is 3.3 times as much, so the
 * factor belongs to the definition of every value.
 */
final class NormalisedIndexOfHaemolysis {

    private static final String FORMULA = "formula";
    private static final Input HCT = Letters.HAEMATOCRIT;

    private NormalisedIndexOfHaemolysis() {}

    /** Free haemoglobin set free per litre pumped, in g/L, as if all blood were plasma. */
    static double freedPerLitre(Inputs in) {
        return (in.of(Letters.FREE_HAEMOGLOBIN_END) - in.of(Letters.FREE_HAEMOGLOBIN_START))
                * in.of(Letters.LOOP_VOLUME)
                / (in.of(Letters.BLOOD_FLOW) * in.of(Letters.DURATION));
    }

    static Metric metric() {
        var card = Metric.named("normalised-index-of-haemolysis", "normalised index of haemolysis")
                .symbol("NIH")
                .meaning("Haemoglobin set free into plasma per volume of blood pumped, corrected for the plasma share")
                .unit("mg/100 L")
                .better(Better.LESS)
                .plausible(0, 100)
                .possible(-50, 5000)
                .derived(way(
                                "NIH = 1000 · (fHb_end - fHb_start) · V · (100 - Hct)/100 · 100 / (Q · T_d)",
                                in -> 100_000 * freedPerLitre(in) * (100 - in.of(HCT)) / 100)
                        .giving(FORMULA, "plasma-share"))
                .derived(way(
                                "NIH = 1000 · (fHb_end - fHb_start) · V · (100 - Hct)/Hct · 100 / (Q · T_d)",
                                in -> 100_000 * freedPerLitre(in) * (100 - in.of(HCT)) / in.of(HCT))
                        .giving(FORMULA, "plasma-to-cell-ratio"))
                .aspect(factor());
        return conditions(card)
                .confusedWith("plasma-free-haemoglobin", "modified-index-of-haemolysis")
                .cites(Sources.ASTM_F1841)
                .worked(worked("3.5 mg/100 L", "0.20 × 0.450 × 0.70 × 100 / (5 × 360) = 0.0035 g/100 L"))
                .worked(worked("11.667 mg/100 L", "the same with 70/30 in place of 0.70")
                        .under(FORMULA, "plasma-to-cell-ratio"))
                .build();
    }

    private static Derivation way(String formula, Computation computation) {
        return Derivation.of(
                formula,
                Sources.ASTM_F1841,
                computation,
                Letters.FREE_HAEMOGLOBIN_START,
                Letters.FREE_HAEMOGLOBIN_END,
                Letters.LOOP_VOLUME,
                HCT,
                Letters.BLOOD_FLOW,
                Letters.DURATION);
    }

    static WorkedValue worked(String result, String how, String... more) {
        var inputs = new ArrayList<>(List.of(
                "free-haemoglobin-start=0.05 g/L",
                "free-haemoglobin-end=0.25 g/L",
                "loop-volume=0.450 L",
                "haematocrit=30 %",
                "blood-flow=5 L/min",
                "duration=360 min"));
        inputs.addAll(List.of(more));
        return WorkedValue.of(result, Citation.derived(how), inputs.toArray(String[]::new));
    }

    static Aspect factor() {
        return new Aspect.Choice(
                FORMULA,
                "haematocrit factor",
                "formula",
                Role.DECIDES,
                "plasma-share",
                List.of(
                        new Variant("plasma-share", "(100 - Hct)/100"),
                        new Variant("plasma-to-cell-ratio", "(100 - Hct)/Hct")),
                List.of(
                        new VariantConversion(
                                "plasma-to-cell-ratio",
                                "plasma-share",
                                "x · Hct/100",
                                List.of(HCT),
                                Citation.derived("(100 - Hct)/Hct · Hct/100 = (100 - Hct)/100"),
                                in -> in.get(VariantConversion.VALUE) * in.of(HCT) / 100),
                        new VariantConversion(
                                "plasma-share",
                                "plasma-to-cell-ratio",
                                "x · 100/Hct",
                                List.of(HCT),
                                Citation.derived("(100 - Hct)/100 · 100/Hct = (100 - Hct)/Hct"),
                                in -> in.get(VariantConversion.VALUE) * 100 / in.of(HCT))));
    }

    static Metric.Builder conditions(Metric.Builder card) {
        return Flowing.on(card, Influence.UNKNOWN, Map.of(), "")
                .decides(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.HAEMATOCRIT, Tolerance.within("3 percentage points"), Influence.UNKNOWN)
                .decides(Conditions.DURATION, Tolerance.percent("10 %"), Influence.UNKNOWN)
                .qualifies(Conditions.LOOP_VOLUME, Tolerance.percent("10 %"), Influence.UNKNOWN)
                .qualifies(Conditions.PUMP, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN);
    }
}
