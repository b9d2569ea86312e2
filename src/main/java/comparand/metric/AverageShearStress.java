package comparand.metric;

import java.util.List;

/**
 * The shear stress on blood in the device, on average. From the power lost per volume of blood,
 * {@code τ = √(μ · ΔP · Q / V)}, or from the force on the wall of the fibre bundle or of a tube.
 *
 * <p>Pressure drop alone says little of it: length and width enter. It is never taken for damage to blood.
 */
final class AverageShearStress {

    private static final String FORMULATION = "formulation";
    private static final Input MU = Letters.BLOOD_VISCOSITY;
    private static final Input DROP = Letters.PRESSURE_DROP;
    private static final Input Q = Letters.BLOOD_FLOW;
    private static final Input VOLUME = Letters.PRIMING_VOLUME;
    private static final Input D_H = Letters.HYDRAULIC_DIAMETER;
    private static final Input LENGTH = Letters.FLOW_PATH;
    private static final Input RADIUS = Letters.TUBE_RADIUS;
    private static final Citation DE_SOMER = Citation.fromMemory(
            "De Somer, Perfusion 2013;28:280-285", "shear stress from the dimensions of the device");
    private static final Citation NOT_PRESSURE = Citation.read(
            "De Somer et al., J Cardiothorac Vasc Anesth 1996;10:884-889",
            "abstract: pressure drop does not tell shear stress without the dimensions");

    private AverageShearStress() {}

    private static double dissipated(Inputs in) {
        double viscosity = in.of(MU) / 1000;
        double power = in.of(DROP) * Blood.MMHG * in.of(Q) / 60_000;
        return Math.sqrt(viscosity * power / (in.of(VOLUME) * 1e-6));
    }

    static Metric metric() {
        var card = Metric.named("average-shear-stress", "average shear stress")
                .symbol("τ")
                .meaning("Shear stress on the blood, averaged over the blood path of the device")
                .unit("Pa")
                .better(Better.LESS)
                .plausible(0.5, 15)
                .possible(0, 200)
                .derived(Derivation.of(
                                "τ = √(μ · ΔP · Q / V_p)",
                                DE_SOMER,
                                AverageShearStress::dissipated,
                                MU,
                                DROP,
                                Q,
                                VOLUME)
                        .giving(FORMULATION, "energy-dissipation"))
                .derived(Derivation.of(
                                "τ = ΔP · d_h / (4 · L)",
                                Citation.derived("balance of forces on the liquid between the fibres"),
                                in -> in.of(DROP) * Blood.MMHG * in.of(D_H) / 1000 / (4 * in.of(LENGTH)),
                                DROP,
                                D_H,
                                LENGTH)
                        .giving(FORMULATION, "bundle-wall"))
                .derived(Derivation.of(
                                "τ = ΔP · r / (2 · L)",
                                Citation.derived("balance of forces on the liquid in a tube"),
                                in -> in.of(DROP) * Blood.MMHG * in.of(RADIUS) / (2 * in.of(LENGTH)),
                                DROP,
                                RADIUS,
                                LENGTH)
                        .giving(FORMULATION, "tube-wall"))
                .aspect(new Aspect.Choice(
                        FORMULATION,
                        "formulation",
                        "formulation",
                        Role.DECIDES,
                        "energy-dissipation",
                        List.of(
                                new Variant("energy-dissipation", "from power lost per volume of blood"),
                                new Variant("bundle-wall", "force on the wall of the fibre bundle"),
                                new Variant("tube-wall", "force on the wall of a tube")),
                        List.of()))
                .aspect(BloodViscosity.ASPECT)
                .aspect(PressureDrop.PARTS)
                .confusedWith("pressure-drop");
        return PressureDrop.conditions(card, Influence.more(Effect.RAISES, "faster blood is sheared more"))
                .cites(DE_SOMER)
                .cites(NOT_PRESSURE)
                .worked(WorkedValue.of(
                        "2.3569 Pa",
                        Citation.derived("√(0.002 × 6666.1 × 1.6667e-5 / 4e-5)"),
                        "blood-viscosity=2.0 mPa·s",
                        "pressure-drop=50 mmHg",
                        "blood-flow=1.0 L/min",
                        "priming-volume=40 mL"))
                .worked(WorkedValue.of(
                                "6.944 Pa",
                                Citation.derived("6666.1 × 0.25 / 240"),
                                "pressure-drop=50 mmHg",
                                "hydraulic-diameter=0.25 mm",
                                "flow-path-length=60 mm")
                        .under(FORMULATION, "bundle-wall"))
                .worked(WorkedValue.of(
                                "111.1 Pa",
                                Citation.derived("6666.1 × 2 / 120"),
                                "pressure-drop=50 mmHg",
                                "tube-radius=2 mm",
                                "flow-path-length=60 mm")
                        .under(FORMULATION, "tube-wall"))
                .build();
    }
}
