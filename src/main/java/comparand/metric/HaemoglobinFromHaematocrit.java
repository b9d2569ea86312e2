package comparand.metric;

/**
 * Haemoglobin estimated from haematocrit. A quantity of its own, so that it is never taken for a measured haemoglobin: the
 * content of the cells varies from 32 to 36 g/dL, which is about 1 g/dL either way.
 */
final class HaemoglobinFromHaematocrit {

    private static final Citation RULE = Citation.commonPractice("33.3 g of haemoglobin per dL of red cells, 32 to 36");

    private HaemoglobinFromHaematocrit() {}

    static Metric metric() {
        return Metric.named("haemoglobin-from-haematocrit", "haemoglobin estimated from haematocrit")
                .symbol("Hb est")
                .meaning("Haemoglobin the blood would have at the usual content of its red cells; not measured")
                .unit("g/dL")
                .plausible(4, 20)
                .possible(0, 30)
                .derived(Derivation.of(
                        "33.3 g/dL · Hct / 100",
                        RULE,
                        in -> 33.3 * in.of(Letters.HAEMATOCRIT) / 100,
                        Letters.HAEMATOCRIT))
                .confusedWith("haemoglobin")
                .cites(RULE)
                .worked(WorkedValue.of("9.99 g/dL", Citation.derived("33.3 × 0.30"), "haematocrit=30 %"))
                .build();
    }
}
