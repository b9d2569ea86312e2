package comparand.metric;

/** The pressure of saturated water vapour at blood temperature: 47 mmHg at 37 °C, half of that at 25 °C. */
final class WaterVapourPressure {

    private static final Citation TABLE =
            Citation.read("Instrument manual, table of saturated water vapour", "20 to 40 °C; straight lines between");

    private WaterVapourPressure() {}

    static Metric metric() {
        return Metric.named("water-vapour-pressure", "water vapour pressure")
                .symbol("PH₂O")
                .meaning("Pressure of saturated water vapour at blood temperature, 20 to 40 °C")
                .unit("mmHg")
                .plausible(15, 56)
                .possible(4, 100)
                .derived(Derivation.of(
                        "PH₂O at T, from the table",
                        TABLE,
                        in -> SaturatedVapour.at(in.of(Letters.TEMPERATURE)),
                        Letters.TEMPERATURE))
                .cites(TABLE)
                .worked(WorkedValue.of("47.067 mmHg", TABLE, "temperature=37 °C"))
                .worked(WorkedValue.of("30.087 mmHg", Citation.derived("midway: 28.349, 31.824"), "temperature=29 °C"))
                .build();
    }
}
