package comparand.metric;

/** Blood flow against the size of the patient or of the device. States of a case, not properties of a device. */
final class FlowIndices {

    private static final Input Q = Letters.BLOOD_FLOW;

    private FlowIndices() {}

    static Metric perBodySurface() {
        return Metric.named("flow-index", "blood flow per body surface")
                .symbol("CI")
                .meaning("Blood flow divided by the body surface of the patient")
                .unit("L/min/m²")
                .plausible(1.0, 4.0)
                .possible(0, 8)
                .derived(Derivation.of(
                        "CI = Q / BSA",
                        Citation.commonPractice("pump flow index"),
                        in -> in.of(Q) / in.of(Letters.BODY_SURFACE),
                        Q,
                        Letters.BODY_SURFACE))
                .aspect(BodySurfaceArea.FORMULA)
                .cites(Citation.commonPractice("pump flow index"))
                .worked(WorkedValue.of(
                        "2.4119 L/min/m²",
                        Citation.derived("0.55 / 0.22804"),
                        "blood-flow=0.55 L/min",
                        "body-surface-area=0.228035 m²"))
                .build();
    }

    static Metric perBodyWeight() {
        return Metric.named("flow-per-body-weight", "blood flow per body weight")
                .symbol("Q/W")
                .meaning("Blood flow divided by the body weight of the patient")
                .unit("mL/kg/min")
                .plausible(50, 250)
                .possible(0, 500)
                .derived(Derivation.of(
                        "Q / W",
                        Citation.commonPractice("flow of newborns and infants"),
                        in -> 1000 * in.of(Q) / in.of(Letters.WEIGHT),
                        Q,
                        Letters.WEIGHT))
                .cites(Citation.commonPractice("flow of newborns and infants"))
                .worked(WorkedValue.of(
                        "152.8 mL/kg/min",
                        Citation.derived("550 / 3.6"),
                        "blood-flow=0.55 L/min",
                        "patient-weight=3.6 kg"))
                .build();
    }

    static Metric utilisation() {
        return Metric.named("flow-utilisation", "share of the labelled flow in use")
                .symbol("Q/Qmax")
                .meaning("Blood flow divided by the largest flow the instructions for use of the device allow")
                .unit("1")
                .plausible(0.15, 1.0)
                .possible(0, 1.5)
                .derived(Derivation.of(
                        "Q / Q_max",
                        Citation.commonPractice("flow across sizes of device"),
                        in -> in.of(Q) / in.of(Letters.LABELLED_FLOW),
                        Q,
                        Letters.LABELLED_FLOW))
                .cites(Citation.commonPractice("flow across sizes of device"))
                .worked(WorkedValue.of(
                        "0.8", Citation.derived("1.2 / 1.5"), "blood-flow=1.2 L/min", "labelled-blood-flow=1.5 L/min"))
                .build();
    }

    static Metric gasToBlood() {
        return Metric.named("gas-blood-ratio", "gas-to-blood flow ratio")
                .symbol("Qg/Q")
                .meaning("Sweep gas flow divided by blood flow")
                .unit("1")
                .plausible(0.3, 2.5)
                .possible(0, 20)
                .derived(Derivation.of(
                        "Qg_in / Q",
                        Citation.commonPractice("1 to 1 on the bench"),
                        in -> in.of(Letters.SWEEP_FLOW) / in.of(Q),
                        Letters.SWEEP_FLOW,
                        Q))
                .cites(Citation.commonPractice("1 to 1 on the bench"))
                .worked(WorkedValue.of(
                        "0.5", Citation.derived("0.6 / 1.2"), "sweep-gas-flow=0.6 L/min", "blood-flow=1.2 L/min"))
                .build();
    }

    static Metric haemoglobin() {
        return Metric.named("haemoglobin-flow", "haemoglobin flow")
                .symbol("Q·Hb")
                .meaning("Mass of haemoglobin that passes the device per minute")
                .unit("g/min")
                .plausible(20, 900)
                .possible(0, 3000)
                .derived(Derivation.of(
                        "10 · Q · Hb",
                        Citation.read(
                                "Hendrix et al., Artif Organs 2018",
                                "excerpt: covariate of gas transfer (journal and year from memory)"),
                        in -> 10 * in.of(Q) * in.of(Letters.HAEMOGLOBIN),
                        Q,
                        Letters.HAEMOGLOBIN))
                .cites(Citation.read(
                        "Hendrix et al., Artif Organs 2018",
                        "excerpt: covariate of gas transfer (journal and year from memory)"))
                .worked(WorkedValue.of(
                        "120 g/min", Citation.derived("10 × 1.2 × 10"), "blood-flow=1.2 L/min", "haemoglobin=10 g/dL"))
                .build();
    }
}
