package comparand.metric;

/** Four times the blood volume of a fibre bundle over its wetted surface: {@code d_h = ε · d_f / (1 - ε)}. */
final class HydraulicDiameter {

    private HydraulicDiameter() {}

    static Metric metric() {
        return Metric.named("hydraulic-diameter", "hydraulic diameter of the fibre bundle")
                .symbol("dh")
                .meaning("Diameter of the tube that has the ratio of volume to surface of the space between the fibres")
                .unit("µm")
                .nature(Nature.STATED)
                .plausible(50, 1000)
                .possible(5, 10_000)
                .derived(Derivation.of(
                        "d_h = ε · d_f / (1 - ε)",
                        Citation.derived("4 · ε / (wetted surface per volume 4 (1 - ε) / d_f)"),
                        in -> in.of(Letters.VOID_FRACTION)
                                * in.of(Letters.FIBRE_OUTER_DIAMETER)
                                / (1 - in.of(Letters.VOID_FRACTION)),
                        Letters.VOID_FRACTION,
                        Letters.FIBRE_OUTER_DIAMETER))
                .cites(Citation.derived("hydraulic diameter of a bundle of parallel cylinders"))
                .worked(WorkedValue.of(
                        "300 µm",
                        Citation.derived("0.5 × 300 / 0.5"),
                        "void-fraction=0.50",
                        "fibre-outer-diameter=300 µm"))
                .build();
    }
}
