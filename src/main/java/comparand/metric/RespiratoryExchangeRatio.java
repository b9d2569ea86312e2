package comparand.metric;

/** Carbon dioxide given off over oxygen taken up: a check on both, not a property of the device. */
final class RespiratoryExchangeRatio {

    private RespiratoryExchangeRatio() {}

    static Metric metric() {
        var card = Metric.named("respiratory-exchange-ratio", "respiratory exchange ratio")
                .symbol("RER")
                .meaning("Carbon dioxide transfer divided by oxygen transfer; a check on the two")
                .unit("1")
                .plausible(0.6, 1.3)
                .possible(-0.2, 4)
                .derived(Derivation.of(
                        "RER = VCO₂ / VO₂",
                        Citation.commonPractice("ratio of the two transfers"),
                        in -> in.of(Letters.CARBON_DIOXIDE_TRANSFER) / in.of(Letters.OXYGEN_TRANSFER),
                        Letters.CARBON_DIOXIDE_TRANSFER,
                        Letters.OXYGEN_TRANSFER));
        return OxygenContent.choices(card)
                .aspect(OxygenTransfer.SIDE)
                .aspect(CarbonDioxideTransfer.SIDE)
                .aspect(CarbonDioxideContent.model(Role.QUALIFIES))
                .aspect(CarbonDioxideContent.MOLAR_VOLUME)
                .cites(Citation.commonPractice("0.6 to 1.3 in steady bypass"))
                .worked(WorkedValue.of(
                        "0.7516",
                        Citation.derived("39.622 / 52.718"),
                        "carbon-dioxide-transfer=39.622 mL/min",
                        "oxygen-transfer=52.718 mL/min"))
                .build();
    }
}
