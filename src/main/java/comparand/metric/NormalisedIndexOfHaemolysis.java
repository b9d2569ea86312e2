package comparand.metric;

import comparand.unit.Printed;
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

    private static final Citation ASTM = Citation.fromMemory(
            "ASTM F1841, Assessment of hemolysis in continuous flow blood pumps", "definition of the index");

    private NormalisedIndexOfHaemolysis() {}

    static Metric metric() {
        var haematocrit = Input.of("haematocrit", "Hct", "haematocrit", "%");
        var card = Metric.named("normalised-index-of-haemolysis", "normalised index of haemolysis")
                .symbol("NIH")
                .meaning("Haemoglobin set free into plasma per volume of blood pumped, corrected for the plasma share")
                .unit("mg/100 L")
                .better(Better.LESS)
                .plausible(0, 100)
                .possible(-50, 5000)
                .derived(new Derivation(
                        "NIH = 1000 · (fHb_end - fHb_start) · V · (100 - Hct)/100 · 100 / (Q · T)",
                        List.of(
                                Input.of(
                                        "free-haemoglobin-start",
                                        "fHb_start",
                                        "plasma free haemoglobin at the start",
                                        "g/L"),
                                Input.of(
                                        "free-haemoglobin-end", "fHb_end", "plasma free haemoglobin at the end", "g/L"),
                                Input.of("loop-volume", "V", "volume of the test loop", "L"),
                                haematocrit,
                                Input.of("blood-flow", "Q", "blood flow", "L/min"),
                                Input.of("duration", "T", "duration of the test", "min")),
                        Definition.NONE.with("formula", List.of("plasma-share")),
                        ASTM,
                        in -> 1000
                                * (in.get("free-haemoglobin-end") - in.get("free-haemoglobin-start"))
                                * in.get("loop-volume")
                                * (100 - in.get("haematocrit"))
                                / 100
                                * 100
                                / (in.get("blood-flow") * in.get("duration"))))
                .aspect(new Aspect.Choice(
                        "formula",
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
                                        List.of(haematocrit),
                                        Citation.derived("(100 - Hct)/Hct · Hct/100 = (100 - Hct)/100"),
                                        in -> in.get(VariantConversion.VALUE) * in.get("haematocrit") / 100),
                                new VariantConversion(
                                        "plasma-share",
                                        "plasma-to-cell-ratio",
                                        "x · 100/Hct",
                                        List.of(haematocrit),
                                        Citation.derived("(100 - Hct)/100 · 100/Hct = (100 - Hct)/Hct"),
                                        in -> in.get(VariantConversion.VALUE) * 100 / in.get("haematocrit")))));
        return Flowing.on(card, Influence.UNKNOWN, Map.of(), "")
                .decides(Conditions.SPECIES, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.HAEMATOCRIT, Tolerance.within("3 percentage points"), Influence.UNKNOWN)
                .decides(Conditions.DURATION, Tolerance.percent("10 %"), Influence.UNKNOWN)
                .qualifies(Conditions.LOOP_VOLUME, Tolerance.percent("10 %"), Influence.UNKNOWN)
                .qualifies(Conditions.PUMP, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .confusedWith("plasma-free-haemoglobin")
                .cites(ASTM)
                .worked(new WorkedValue(
                        Map.of(
                                "free-haemoglobin-start", "0.05 g/L",
                                "free-haemoglobin-end", "0.25 g/L",
                                "loop-volume", "0.450 L",
                                "haematocrit", "30 %",
                                "blood-flow", "5 L/min",
                                "duration", "360 min"),
                        Definition.NONE,
                        Printed.of("3.5 mg/100 L"),
                        Citation.derived("0.20 × 0.450 × 0.70 × 100 / (5 × 360) = 0.0035 g/100 L")))
                .build();
    }
}
