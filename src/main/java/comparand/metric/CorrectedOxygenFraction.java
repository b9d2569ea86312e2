package comparand.metric;

/**
 * The oxygen fraction that would have been needed for about 150 mmHg at the outlet:
 * {@code cF_O₂ = F_O₂ - PO₂_out / (PB - PH₂O) + 0.21}. It makes settings with other outlet pressures comparable.
 */
final class CorrectedOxygenFraction {

    private CorrectedOxygenFraction() {}

    static Metric metric() {
        var f = Letters.OXYGEN_FRACTION;
        var pb = Letters.BAROMETRIC_PRESSURE;
        var vapour = Letters.VAPOUR_PRESSURE;
        var po2 = Side.OUTLET.po2();
        return Metric.named("corrected-oxygen-fraction", "oxygen fraction corrected to 150 mmHg")
                .symbol("cFO₂")
                .meaning("Oxygen fraction of the sweep gas less the share the blood reached, plus 0.21")
                .unit("1")
                .plausible(0.2, 1.0)
                .possible(0, 1.3)
                .derived(Derivation.of(
                        "cF_O₂ = F_O₂ - PO₂_out / (PB - PH₂O) + 0.21",
                        Sources.KARDIOTECHNIK,
                        in -> in.of(f) - in.of(po2) / (in.of(pb) - in.of(vapour)) + 0.21,
                        f,
                        po2,
                        pb,
                        vapour))
                .cites(Sources.KARDIOTECHNIK)
                .worked(WorkedValue.of(
                        "0.5295",
                        Citation.derived("0.60 - 200 / 713 + 0.21"),
                        "oxygen-fraction=0.60",
                        "outlet-po2=200 mmHg",
                        "barometric-pressure=760 mmHg",
                        "water-vapour-pressure=47 mmHg"))
                .build();
    }
}
