package comparand.metric;

/**
 * The standard uncertainty of the performance factor from that of the thermometers, by the law of propagation:
 * {@code u(R) = u · √(1 + (1 - R)² + R²) / |T_w,in - T_b,in|}. It grows without bound as water and blood meet.
 */
final class PerformanceFactorUncertainty {

    private static final Input SENSOR =
            Input.of("temperature-uncertainty", "u", "standard uncertainty of each thermometer, as a difference", "K");

    private PerformanceFactorUncertainty() {}

    static Metric metric() {
        var from = PerformanceFactor.BLOOD_IN;
        var to = PerformanceFactor.BLOOD_OUT;
        var water = PerformanceFactor.WATER_IN;
        return Metric.named("performance-factor-uncertainty", "standard uncertainty of the performance factor")
                .symbol("u(R)")
                .meaning("How far the performance factor may be off because each thermometer may be off")
                .unit("1")
                .plausible(0, 0.1)
                .possible(0, 10)
                .derived(Derivation.of(
                        "u(R) = u · √(1 + (1 - R)² + R²) / |T_w_in - T_b_in|, R = (T_b_out - T_b_in) / (T_w_in - T_b_in)",
                        Citation.derived("propagation of independent, equal uncertainties of the three thermometers"),
                        in -> {
                            double r = PerformanceFactor.share(in, from, to);
                            return in.of(SENSOR)
                                    * Math.sqrt(1 + (1 - r) * (1 - r) + r * r)
                                    / Math.abs(in.of(water) - in.of(from));
                        },
                        from,
                        to,
                        water,
                        SENSOR))
                .confusedWith("performance-factor")
                .cites(Citation.derived("partial derivatives of the performance factor"))
                .worked(WorkedValue.of(
                        "0.012329",
                        Citation.derived("0.1 · √(1 + 0.16 + 0.36) / 10"),
                        "inlet-blood-temperature=30.0 °C",
                        "outlet-blood-temperature=36.0 °C",
                        "inlet-water-temperature=40.0 °C",
                        "temperature-uncertainty=0.1 K"))
                .build();
    }
}
