package comparand.metric;

import java.util.Map;

/**
 * Oxygen uptake per square metre of body surface, {@code VO₂ / BSA}: physiology of the patient. Never to be mixed with
 * transfer per square metre of membrane, which is efficiency of the device, though both come in mL/min/m².
 */
final class OxygenTransferPerBodySurface {

    private OxygenTransferPerBodySurface() {}

    static Metric metric() {
        var card = Metric.named("oxygen-transfer-per-body-surface", "oxygen uptake per body surface")
                .symbol("VO₂i")
                .meaning("Oxygen taken up in the device divided by the body surface of the patient")
                .unit("mL/min/m²")
                .plausible(30, 200)
                .possible(0, 400)
                .derived(Derivation.of(
                        "VO₂ / BSA",
                        Citation.commonPractice("per square metre of body surface"),
                        in -> in.of(Letters.OXYGEN_TRANSFER) / in.of(Letters.BODY_SURFACE),
                        Letters.OXYGEN_TRANSFER,
                        Letters.BODY_SURFACE));
        return OxygenTransfer.choices(card)
                .aspect(BodySurfaceArea.FORMULA)
                .decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.instead(Map.of(), ""))
                .decides(
                        Conditions.TEMPERATURE,
                        Flowing.TEMPERATURE,
                        Influence.more(Effect.RAISES, "a warmer body takes up more oxygen"))
                .decides(Conditions.PHASE, Tolerance.EQUAL, Influence.UNKNOWN)
                .confusedWith("oxygen-transfer-per-membrane-area", "oxygen-transfer")
                .cites(Citation.commonPractice("uptake index of the patient on bypass"))
                .worked(WorkedValue.of(
                        "95.85 mL/min/m²",
                        Citation.derived("52.718 / 0.55"),
                        "oxygen-transfer=52.718 mL/min",
                        "body-surface-area=0.55 m²"))
                .build();
    }
}
