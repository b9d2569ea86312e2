package comparand.metric;

import java.util.List;

/** The liquid needed to fill the blood path of the device. Which parts that path includes differs from print to print. */
final class PrimingVolume {

    static final Aspect STATE = new Aspect.Choice(
            "state",
            "state in which it is measured",
            "state",
            Role.DECIDES,
            "static",
            List.of(
                    new Variant("static", "filled at rest"),
                    new Variant("dynamic", "filled at flow"),
                    new Variant("residual", "recoverable after use")),
            List.of());

    private PrimingVolume() {}

    static Metric metric() {
        return Metric.named("priming-volume", "priming volume")
                .symbol("Vp")
                .meaning("The volume that fills the blood path of the parts named")
                .unit("mL")
                .nature(Nature.STATED)
                .better(Better.LESS)
                .plausible(20, 400)
                .possible(1, 2000)
                .aspect(new Aspect.Parts("parts filled", Role.DECIDES, DevicePart.OXYGENATOR, true))
                .aspect(STATE)
                .cites(Citation.commonPractice("static priming volume from the instructions for use"))
                .build();
    }
}
