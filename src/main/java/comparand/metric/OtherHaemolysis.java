package comparand.metric;

import java.util.Map;

/**
 * Haemolysis by other measures than the normalised index: relative to the haemoglobin pumped, above a paired control
 * circuit, and as the rise of plasma free haemoglobin per hour of bypass.
 */
final class OtherHaemolysis {

    private OtherHaemolysis() {}

    static Metric modified() {
        var hb = Letters.HAEMOGLOBIN;
        return NormalisedIndexOfHaemolysis.conditions(Metric.named(
                                "modified-index-of-haemolysis", "modified index of haemolysis")
                        .symbol("MIH")
                        .meaning(
                                "Haemoglobin set free into plasma as millionths of the haemoglobin pumped, corrected for the plasma share")
                        .unit("1")
                        .better(Better.LESS)
                        .plausible(0, 10)
                        .possible(-5, 500)
                        .derived(Derivation.of(
                                "MIH = (fHb_end - fHb_start) · V · (100 - Hct)/100 · 10⁶ / (Q · T_d · 10 Hb)",
                                Sources.ASTM_F1841,
                                in -> 1e6
                                        * NormalisedIndexOfHaemolysis.freedPerLitre(in)
                                        * (100 - in.of(Letters.HAEMATOCRIT))
                                        / 100
                                        / (10 * in.of(hb)),
                                Letters.FREE_HAEMOGLOBIN_START,
                                Letters.FREE_HAEMOGLOBIN_END,
                                Letters.LOOP_VOLUME,
                                Letters.HAEMATOCRIT,
                                Letters.BLOOD_FLOW,
                                Letters.DURATION,
                                hb)))
                .confusedWith("normalised-index-of-haemolysis")
                .cites(Sources.ASTM_F1841)
                .worked(NormalisedIndexOfHaemolysis.worked(
                        "0.35", "0.20 × 0.450 × 0.70 × 10⁶ / (5 × 360 × 100)", "haemoglobin=100 g/L"))
                .build();
    }

    static Metric aboveControl() {
        var device = Letters.HAEMOLYSIS_INDEX;
        var control = Letters.CONTROL_INDEX;
        return NormalisedIndexOfHaemolysis.conditions(
                        Metric.named("haemolysis-above-control", "index of haemolysis above its control")
                                .symbol("ΔNIH")
                                .meaning(
                                        "The normalised index of haemolysis of a circuit with the device minus that of its paired control")
                                .unit("mg/100 L")
                                .better(Better.LESS)
                                .plausible(-5, 50)
                                .possible(-500, 5000)
                                .derived(Derivation.of(
                                        "NIH - NIH_c",
                                        Citation.fromMemory("ISO 7199", "blood cell damage against a paired circuit"),
                                        in -> in.of(device) - in.of(control),
                                        device,
                                        control))
                                .aspect(NormalisedIndexOfHaemolysis.factor()))
                .confusedWith("normalised-index-of-haemolysis")
                .cites(Citation.fromMemory("ISO 7199", "blood cell damage against a paired circuit"))
                .worked(WorkedValue.of(
                        "1.2 mg/100 L",
                        Citation.derived("3.5 - 2.3"),
                        "normalised-index-of-haemolysis=3.5 mg/100 L",
                        "control-index-of-haemolysis=2.3 mg/100 L"))
                .build();
    }

    static Metric rate() {
        var start = Letters.FREE_HAEMOGLOBIN_START;
        var end = Letters.FREE_HAEMOGLOBIN_END;
        var duration = Letters.DURATION;
        return Metric.named("free-haemoglobin-rate", "rise of plasma free haemoglobin per hour")
                .symbol("ΔfHb/t")
                .meaning("Plasma free haemoglobin at the end minus at the start, per hour")
                .unit("mg/L/h")
                .better(Better.LESS)
                .plausible(-50, 500)
                .possible(-500, 5000)
                .derived(Derivation.of(
                        "60 000 · (fHb_end - fHb_start) / T_d",
                        Citation.commonPractice("clinical haemolysis"),
                        in -> 60_000 * (in.of(end) - in.of(start)) / in.of(duration),
                        start,
                        end,
                        duration))
                .decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.instead(Map.of(), ""))
                .decides(Conditions.DURATION, Tolerance.percent("15 %"), Influence.UNKNOWN)
                .qualifies(Conditions.BLOOD_FLOW, Flowing.FLOW, Influence.UNKNOWN)
                .confusedWith("normalised-index-of-haemolysis")
                .cites(Citation.commonPractice("clinical haemolysis"))
                .worked(WorkedValue.of(
                        "100 mg/L/h",
                        Citation.derived("200 mg/L in 2 h"),
                        "free-haemoglobin-start=50 mg/L",
                        "free-haemoglobin-end=250 mg/L",
                        "duration=120 min"))
                .build();
    }
}
