package comparand.metric;

import java.util.List;

/** The gas exchange surface of the device, as its maker states it. */
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
                .aspect(SURFACE)
                .cites(Citation.commonPractice("nominal area from the instructions for use"))
                .build();
    }
}
