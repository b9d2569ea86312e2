package comparand.metric;

/**
 * Oxygen that each litre of blood gains in the device, {@code 10 · (C_out - C_in)} or {@code VO₂ / Q}: the number behind
 * the reference blood flow.
 */
final class OxygenTransferPerLitre {

    private OxygenTransferPerLitre() {}

    static Metric metric() {
        var before = Side.INLET.oxygenContent();
        var after = Side.OUTLET.oxygenContent();
        var card = Metric.named("oxygen-transfer-per-litre", "oxygen transfer per litre of blood")
                .symbol("VO₂/Q")
                .meaning("Oxygen taken up in the device by each litre of blood")
                .unit("mL/L")
                .better(Better.MORE)
                .plausible(15, 75)
                .possible(-5, 130)
                .derived(Derivation.of(
                                "VO₂/Q = 10 · (C_out - C_in)",
                                Sources.FICK,
                                in -> 10 * (in.of(after) - in.of(before)),
                                before,
                                after)
                        .giving(OxygenTransfer.SIDE_ID, "blood-side"))
                .derived(Derivation.of(
                        "VO₂/Q = VO₂ / Q",
                        Citation.derived("transfer per flow"),
                        in -> in.of(Letters.OXYGEN_TRANSFER) / in.of(Letters.BLOOD_FLOW),
                        Letters.OXYGEN_TRANSFER,
                        Letters.BLOOD_FLOW));
        return OxygenTransfer.conditions(OxygenTransfer.choices(card))
                .confusedWith("oxygen-transfer")
                .cites(Sources.FICK)
                .worked(WorkedValue.of(
                        "43.94 mL/L",
                        Citation.derived("10 × 4.3935"),
                        "inlet-oxygen-content=9.4978 mL/dL",
                        "outlet-oxygen-content=13.8913 mL/dL"))
                .worked(WorkedValue.of(
                        "43.2 mL/L",
                        Citation.derived("108 / 2.5"),
                        "oxygen-transfer=108 mL/min",
                        "blood-flow=2.5 L/min"))
                .build();
    }
}
