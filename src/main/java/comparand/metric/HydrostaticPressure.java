package comparand.metric;

/** The pressure of a column of blood, which a transducer that is not levelled adds: {@code ρ · g · h}. */
final class HydrostaticPressure {

    private HydrostaticPressure() {}

    static Metric metric() {
        return Metric.named("hydrostatic-pressure", "hydrostatic pressure between the transducers")
                .symbol("Ph")
                .meaning("The pressure of the blood column by which the outlet transducer stands above the inlet's")
                .unit("mmHg")
                .plausible(-50, 50)
                .possible(-200, 200)
                .derived(Derivation.of(
                        "P_h = 1055 kg/m³ · 9.80665 m/s² · h",
                        Citation.fromMemory("Properties of blood", "density 1055 kg/m³"),
                        in -> Blood.DENSITY * Blood.GRAVITY * in.of(Letters.TRANSDUCER_HEIGHT) / 100 / Blood.MMHG,
                        Letters.TRANSDUCER_HEIGHT))
                .cites(Citation.derived("weight of the column per area"))
                .worked(WorkedValue.of(
                        "7.760 mmHg",
                        Citation.derived("10 cm: 1055 × 9.80665 × 0.1 = 1034.6 Pa"),
                        "transducer-height-difference=10 cm"))
                .build();
    }
}
