package comparand.metric;

/** Priming volume against what the device offers for it: per membrane area, and per largest labelled flow. */
final class PrimeRatios {

    private PrimeRatios() {}

    static Metric perArea() {
        return card("priming-volume-per-membrane-area", "priming volume per membrane area", "Vp/Am", "mL/m²")
                .meaning("The priming volume divided by the membrane area")
                .plausible(50, 500)
                .possible(5, 5000)
                .derived(Derivation.of(
                        "V_p / A_m",
                        Citation.derived("ratio of two stated figures"),
                        in -> in.of(Letters.PRIMING_VOLUME) / in.of(Letters.MEMBRANE_AREA),
                        Letters.PRIMING_VOLUME,
                        Letters.MEMBRANE_AREA))
                .aspect(MembraneArea.SURFACE)
                .worked(WorkedValue.of(
                        "76 mL/m²", Citation.derived("38 / 0.5"), "priming-volume=38 mL", "membrane-area=0.5 m²"))
                .build();
    }

    static Metric perFlow() {
        return card("priming-volume-per-labelled-flow", "priming volume per labelled flow", "Vp/Qmax", "mL/(L/min)")
                .meaning("The priming volume divided by the largest blood flow the instructions for use allow")
                .plausible(10, 200)
                .possible(1, 2000)
                .derived(Derivation.of(
                        "V_p / Q_max",
                        Citation.derived("ratio of two stated figures"),
                        in -> in.of(Letters.PRIMING_VOLUME) / in.of(Letters.LABELLED_FLOW),
                        Letters.PRIMING_VOLUME,
                        Letters.LABELLED_FLOW))
                .worked(WorkedValue.of(
                        "25.3 mL/(L/min)",
                        Citation.derived("38 / 1.5"),
                        "priming-volume=38 mL",
                        "labelled-blood-flow=1.5 L/min"))
                .build();
    }

    private static Metric.Builder card(String id, String name, String symbol, String unit) {
        return Metric.named(id, name)
                .symbol(symbol)
                .unit(unit)
                .nature(Nature.STATED)
                .better(Better.LESS)
                .aspect(new Aspect.Parts("parts filled", Role.DECIDES, DevicePart.OXYGENATOR, false))
                .aspect(PrimingVolume.STATE)
                .confusedWith("priming-volume")
                .cites(Citation.commonPractice("geometry of the device"));
    }
}
