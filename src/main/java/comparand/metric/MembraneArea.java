package comparand.metric;

import java.util.List;

/**
 * The gas exchange surface of the device: as its maker states it, or of all fibres, {@code π · d · L · n}, by the outer or
 * the inner diameter.
 */
final class MembraneArea {

    static final Aspect SURFACE = new Aspect.Choice(
            "surface",
            "surface that is counted",
            "surface",
            Role.DECIDES,
            "nominal",
            List.of(
                    new Variant("nominal", "as stated in the instructions for use"),
                    new Variant("effective", "outer fibre surface in contact with blood"),
                    new Variant("inner", "inner fibre surface")),
            List.of());

    private MembraneArea() {}

    static Metric metric() {
        return Metric.named("membrane-area", "membrane area")
                .symbol("Am")
                .meaning("The surface of the membrane across which gas is exchanged")
                .unit("m²")
                .nature(Nature.STATED)
                .better(Better.NEITHER)
                .plausible(0.05, 3.0)
                .possible(0.01, 6)
                .derived(fibres(Letters.FIBRE_OUTER_DIAMETER).giving("surface", "effective"))
                .derived(fibres(Letters.FIBRE_INNER_DIAMETER).giving("surface", "inner"))
                .aspect(SURFACE)
                .cites(Citation.commonPractice("nominal area from the instructions for use"))
                .worked(worked("0.9425 m²", "fibre-outer-diameter=300 µm").under("surface", "effective"))
                .worked(worked("0.6283 m²", "fibre-inner-diameter=200 µm").under("surface", "inner"))
                .build();
    }

    private static Derivation fibres(Input diameter) {
        return Derivation.of(
                "π · %s · L_f · n_f".formatted(diameter.symbol()),
                Citation.derived("surface of so many cylinders"),
                in -> Math.PI * in.of(diameter) * 1e-6 * in.of(Letters.FIBRE_LENGTH) / 100 * in.of(Letters.FIBRE_COUNT),
                diameter,
                Letters.FIBRE_LENGTH,
                Letters.FIBRE_COUNT);
    }

    private static WorkedValue worked(String result, String diameter) {
        return WorkedValue.of(
                result,
                Citation.derived("10 000 fibres of 10 cm"),
                diameter,
                "fibre-length=10 cm",
                "fibre-count=10000");
    }
}
