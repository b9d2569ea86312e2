package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

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
                .derived(new Derivation(
                        "VO₂ / A_m",
                        List.of(
                                Input.of("oxygen-transfer", "VO₂", "oxygen transfer", "mL/min"),
                                Input.of("membrane-area", "A_m", "membrane area", "m²")),
                        Definition.NONE,
                        Citation.commonPractice("per square metre of membrane"),
                        in -> in.get("oxygen-transfer") / in.get("membrane-area")))
                .aspect(OxygenContent.HUFNER)
                .aspect(OxygenContent.SOLUBILITY)
                .aspect(MembraneArea.SURFACE)
                .confusedWith("oxygen-transfer");
        return OxygenTransfer.conditions(card)
                .cites(Citation.read(
                        "Concentric-flow membrane lung, PMC5578883",
                        "100 to 200 mL/min/m² at rated flow for usual devices"))
                .worked(new WorkedValue(
                        Map.of("oxygen-transfer", "52.718 mL/min", "membrane-area", "0.80 m²"),
                        Definition.NONE,
                        Printed.of("65.90 mL/min/m²"),
                        Citation.derived("52.718 / 0.80")))
                .build();
    }
}
