package comparand.metric;

/**
 * Pressure on the gas side: at the gas inlet, and its drop along the gas path. A measured number and no more: whether it is
 * safe against the blood pressure is for the instructions for use.
 */
final class GasPressure {

    private GasPressure() {}

    static Metric inlet() {
        return conditions(Metric.named("gas-inlet-pressure", "gas pressure at the inlet")
                        .symbol("Pg in")
                        .meaning("Pressure of the sweep gas where it enters the device, above that of the room")
                        .plausible(0, 30)
                        .possible(-5, 200))
                .confusedWith("gas-pressure-drop", "pressure-drop")
                .build();
    }

    static Metric drop() {
        var in = Letters.GAS_INLET_PRESSURE;
        var out = Letters.GAS_OUTLET_PRESSURE;
        return conditions(Metric.named("gas-pressure-drop", "pressure drop of the gas path")
                        .symbol("ΔPg")
                        .meaning("Gas pressure at the gas inlet of the device minus that at its gas outlet")
                        .plausible(0, 30)
                        .possible(-5, 200)
                        .derived(Derivation.of(
                                "P_g,in - P_g,out",
                                Citation.commonPractice("difference over the gas path"),
                                x -> x.of(in) - x.of(out),
                                in,
                                out)))
                .confusedWith("gas-inlet-pressure", "pressure-drop")
                .worked(WorkedValue.of(
                        "4 mmHg", Citation.derived("6 - 2"), "gas-inlet-pressure=6 mmHg", "gas-outlet-pressure=2 mmHg"))
                .build();
    }

    private static Metric.Builder conditions(Metric.Builder card) {
        return card.unit("mmHg")
                .better(Better.LESS)
                .decides(
                        Conditions.GAS_FLOW,
                        Tolerance.percent("10 %"),
                        Influence.more(Effect.RAISES, "the gas path resists the gas"))
                .qualifies(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.UNKNOWN)
                .cites(Citation.commonPractice("gas side pressure, in mmHg or cmH₂O"));
    }
}
