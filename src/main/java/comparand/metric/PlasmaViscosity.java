package comparand.metric;

/** Viscosity of plasma at a temperature: {@code μ_p = exp(-5.64 + 1800 / (T + 273))} mPa·s, 1.18 at 37 °C. */
final class PlasmaViscosity {

    private PlasmaViscosity() {}

    static Metric metric() {
        return Metric.named("plasma-viscosity", "plasma viscosity, estimated")
                .symbol("μp")
                .meaning("Viscosity of plasma estimated from its temperature")
                .unit("mPa·s")
                .plausible(0.8, 2.5)
                .possible(0.5, 5)
                .derived(Derivation.of(
                        "μ_p = exp(-5.64 + 1800 / (T + 273))",
                        Sources.MOCKROS,
                        in -> Math.exp(-5.64 + 1800 / (in.of(Letters.TEMPERATURE) + 273)),
                        Letters.TEMPERATURE))
                .cites(Sources.MOCKROS)
                .worked(WorkedValue.of(
                        "1.1811 mPa·s", Citation.derived("exp(-5.64 + 1800 / 310)"), "temperature=37 °C"))
                .build();
    }
}
