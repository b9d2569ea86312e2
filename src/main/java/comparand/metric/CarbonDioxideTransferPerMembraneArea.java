package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/** Carbon dioxide transfer per square metre of membrane: {@code VCO₂ / A_m}. */
final class CarbonDioxideTransferPerMembraneArea {

    private CarbonDioxideTransferPerMembraneArea() {}

    static Metric metric() {
        var card = Metric.named(
                        "carbon-dioxide-transfer-per-membrane-area", "carbon dioxide transfer per membrane area")
                .symbol("VCO₂/Am")
                .meaning("Carbon dioxide transfer of the device divided by its membrane area")
                .unit("mL/min/m²")
                .better(Better.MORE)
                .plausible(15, 300)
                .possible(-40, 600)
                .derived(new Derivation(
                        "VCO₂ / A_m",
                        List.of(
                                Input.of("carbon-dioxide-transfer", "VCO₂", "carbon dioxide transfer", "mL/min"),
                                Input.of("membrane-area", "A_m", "membrane area", "m²")),
                        Definition.NONE,
                        Citation.commonPractice("per square metre of membrane"),
                        in -> in.get("carbon-dioxide-transfer") / in.get("membrane-area")))
                .aspect(CarbonDioxideTransfer.SIDE)
                .aspect(MembraneArea.SURFACE)
                .confusedWith("carbon-dioxide-transfer");
        return CarbonDioxideTransfer.conditions(card)
                .cites(Citation.commonPractice("per square metre of membrane"))
                .worked(new WorkedValue(
                        Map.of("carbon-dioxide-transfer", "34.476 mL/min", "membrane-area", "0.50 m²"),
                        Definition.NONE,
                        Printed.of("68.95 mL/min/m²"),
                        Citation.derived("34.476 / 0.50")))
                .build();
    }
}
