package comparand.metric;

/**
 * Gas flow at STPD (0 °C, 760 mmHg, dry) from a flow as it was metered: dry at room temperature, saturated at room
 * temperature, or at 37 °C and saturated. The state is known from which column the flow stands in; "standard litres" of a
 * flowmeter without a temperature are none of these.
 */
final class GasFlowAtStandardState {

    private static final double ZERO = 273.15;

    private GasFlowAtStandardState() {}

    static double dry(double celsius, double barometric) {
        return barometric / 760 * ZERO / (ZERO + celsius);
    }

    static Metric sweep() {
        return card("sweep-gas-flow-stpd", "sweep gas flow at STPD", "Qg in", "The flow of gas into the device")
                .derived(dry(Letters.SWEEP_FLOW_STPD, Letters.SWEEP_FLOW))
                .worked(metered("sweep-gas-flow"))
                .build();
    }

    static Metric exhaust() {
        var flow = Letters.EXHAUST_FLOW_SATURATED;
        var warm = Letters.EXHAUST_FLOW_BTPS;
        var t = Letters.GAS_TEMPERATURE;
        var pb = Letters.BAROMETRIC_PRESSURE;
        return card("exhaust-gas-flow-stpd", "exhaust gas flow at STPD", "Qg out", "The flow of gas out of the device")
                .derived(dry(Letters.EXHAUST_FLOW_STPD, Letters.EXHAUST_FLOW))
                .derived(Derivation.of(
                        "Qg_out,STPD = Qg_out,s · (PB - PH₂O(t)) / 760 · 273.15 / (273.15 + t)",
                        Sources.GAS_LAW,
                        in -> in.of(flow) * dry(in.of(t), in.of(pb) - SaturatedVapour.at(in.of(t))),
                        flow,
                        pb,
                        t))
                .derived(Derivation.of(
                        "Qg_out,STPD = Qg_out,BTPS · (PB - 47.067) / 760 · 273.15 / 310.15",
                        Sources.GAS_LAW,
                        in -> in.of(warm) * dry(37, in.of(pb) - SaturatedVapour.at(37)),
                        warm,
                        pb))
                .worked(metered("exhaust-gas-flow"))
                .worked(WorkedValue.of(
                        "0.89523 L/min",
                        Citation.derived("(755 - 19.827) / 760 × 273.15 / 295.15"),
                        "exhaust-gas-flow-saturated=1 L/min",
                        "gas-temperature=22 °C",
                        "barometric-pressure=755 mmHg"))
                .worked(WorkedValue.of(
                        "0.82616 L/min",
                        Citation.derived("(760 - 47.067) / 760 × 273.15 / 310.15"),
                        "exhaust-gas-flow-btps=1 L/min",
                        "barometric-pressure=760 mmHg"))
                .build();
    }

    private static Metric.Builder card(String id, String name, String symbol, String meaning) {
        return Metric.named(id, name)
                .symbol(symbol)
                .meaning(meaning + ", as dry gas at 0 °C and 760 mmHg")
                .unit("L/min")
                .plausible(0.05, 12)
                .possible(0, 30)
                .cites(Sources.GAS_LAW);
    }

    private static Derivation dry(Input standard, Input metered) {
        return Derivation.of(
                "%s = %s · PB / 760 · 273.15 / (273.15 + t)".formatted(standard.symbol(), metered.symbol()),
                Sources.GAS_LAW,
                in -> in.of(metered) * dry(in.of(Letters.GAS_TEMPERATURE), in.of(Letters.BAROMETRIC_PRESSURE)),
                metered,
                Letters.BAROMETRIC_PRESSURE,
                Letters.GAS_TEMPERATURE);
    }

    private static WorkedValue metered(String flow) {
        return WorkedValue.of(
                "0.91937 L/min",
                Citation.derived("755 / 760 × 273.15 / 295.15"),
                flow + "=1 L/min",
                "gas-temperature=22 °C",
                "barometric-pressure=755 mmHg");
    }
}
