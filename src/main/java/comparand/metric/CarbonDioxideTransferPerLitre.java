package comparand.metric;

/** Carbon dioxide that each litre of blood loses in the device, {@code VCO₂ / Q}. */
final class CarbonDioxideTransferPerLitre {

    private CarbonDioxideTransferPerLitre() {}

    static Metric metric() {
        var card = Metric.named("carbon-dioxide-transfer-per-litre", "carbon dioxide transfer per litre of blood")
                .symbol("VCO₂/Q")
                .meaning("Carbon dioxide given off in the device by each litre of blood")
                .unit("mL/L")
                .better(Better.MORE)
                .plausible(10, 75)
                .possible(-10, 150)
                .derived(Derivation.of(
                        "VCO₂/Q = VCO₂ / Q",
                        Citation.derived("transfer per flow"),
                        in -> in.of(Letters.CARBON_DIOXIDE_TRANSFER) / in.of(Letters.BLOOD_FLOW),
                        Letters.CARBON_DIOXIDE_TRANSFER,
                        Letters.BLOOD_FLOW));
        return CarbonDioxideTransfer.conditions(CarbonDioxideTransfer.choices(card))
                .confusedWith("carbon-dioxide-transfer")
                .cites(Citation.commonPractice("loss per litre, as for the reference blood flow"))
                .worked(WorkedValue.of(
                        "38 mL/L",
                        Citation.derived("95 / 2.5"),
                        "carbon-dioxide-transfer=95 mL/min",
                        "blood-flow=2.5 L/min"))
                .build();
    }
}
