package comparand.metric;

/**
 * Oxygen transfer per square metre of membrane, {@code VO₂ / A_m}: efficiency of the device. Never to be mixed with
 * uptake per square metre of body surface, which is physiology of the patient.
 */
final class OxygenTransferPerMembraneArea {

    private OxygenTransferPerMembraneArea() {}

    static Metric metric() {
        var card = Metric.named("oxygen-transfer-per-membrane-area", "oxygen transfer per membrane area")
                .symbol("VO₂/Am")
                .meaning("Oxygen transfer of the device divided by its membrane area")
                .unit("mL/min/m²")
                .better(Better.MORE)
                .plausible(20, 400)
                .possible(-10, 600)
                .derived(Derivation.of(
                        "VO₂ / A_m",
                        Citation.commonPractice("per square metre of membrane"),
                        in -> in.of(Letters.OXYGEN_TRANSFER) / in.of(Letters.MEMBRANE_AREA),
                        Letters.OXYGEN_TRANSFER,
                        Letters.MEMBRANE_AREA))
                .aspect(MembraneArea.SURFACE)
                .confusedWith("oxygen-transfer", "oxygen-transfer-per-body-surface");
        return OxygenTransfer.conditions(OxygenTransfer.choices(card))
                .cites(Citation.read(
                        "Concentric-flow membrane lung, PMC5578883",
                        "100 to 200 mL/min/m² at rated flow for usual devices"))
                .worked(WorkedValue.of(
                        "65.90 mL/min/m²",
                        Citation.derived("52.718 / 0.80"),
                        "oxygen-transfer=52.718 mL/min",
                        "membrane-area=0.80 m²"))
                .build();
    }
}
