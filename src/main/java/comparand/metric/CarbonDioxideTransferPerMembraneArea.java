package comparand.metric;

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
                .derived(Derivation.of(
                        "VCO₂ / A_m",
                        Citation.commonPractice("per square metre of membrane"),
                        in -> in.of(Letters.CARBON_DIOXIDE_TRANSFER) / in.of(Letters.MEMBRANE_AREA),
                        Letters.CARBON_DIOXIDE_TRANSFER,
                        Letters.MEMBRANE_AREA))
                .aspect(MembraneArea.SURFACE)
                .confusedWith("carbon-dioxide-transfer");
        return CarbonDioxideTransfer.conditions(CarbonDioxideTransfer.choices(card))
                .cites(Citation.commonPractice("per square metre of membrane"))
                .worked(WorkedValue.of(
                        "68.95 mL/min/m²",
                        Citation.derived("34.476 / 0.50"),
                        "carbon-dioxide-transfer=34.476 mL/min",
                        "membrane-area=0.50 m²"))
                .build();
    }
}
