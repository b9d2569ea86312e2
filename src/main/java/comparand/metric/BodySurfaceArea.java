package comparand.metric;

import java.util.List;

/** Body surface area from height and weight, in three formulas that differ by 5 to 7 per cent in the newborn. */
final class BodySurfaceArea {

    static final String ID = "body-surface-formula";
    static final Aspect FORMULA = new Aspect.Choice(
            ID,
            "formula of body surface",
            "BSA",
            Role.DECIDES,
            "mosteller",
            List.of(
                    new Variant("du-bois", "0.007184 · H^0.725 · W^0.425, 1916"),
                    new Variant("mosteller", "√(H · W / 3600), 1987"),
                    new Variant("haycock", "0.024265 · H^0.3964 · W^0.5378, 1978")),
            List.of());
    private static final Input H = Letters.HEIGHT;
    private static final Input W = Letters.WEIGHT;
    private static final Citation DU_BOIS =
            Citation.read("Du Bois and Du Bois, Arch Intern Med 1916;17:863-871", "formula, as on open pages");
    private static final Citation MOSTELLER =
            Citation.read("Mosteller, N Engl J Med 1987;317:1098", "formula, as on open pages");
    private static final Citation HAYCOCK =
            Citation.read("Haycock et al., J Pediatr 1978;93:62-66", "formula, as on open pages");

    private BodySurfaceArea() {}

    static Metric metric() {
        return Metric.named("body-surface-area", "body surface area")
                .symbol("BSA")
                .meaning("The surface of the body, estimated from height and weight")
                .unit("m²")
                .plausible(0.15, 2.6)
                .possible(0.08, 3.5)
                .derived(Derivation.of(
                                "BSA = √(H · W / 3600)", MOSTELLER, in -> Math.sqrt(in.of(H) * in.of(W) / 3600), H, W)
                        .giving(ID, "mosteller"))
                .derived(power(DU_BOIS, 0.007184, 0.725, 0.425).giving(ID, "du-bois"))
                .derived(power(HAYCOCK, 0.024265, 0.3964, 0.5378).giving(ID, "haycock"))
                .aspect(FORMULA)
                .confusedWith("membrane-area")
                .cites(DU_BOIS)
                .cites(MOSTELLER)
                .cites(HAYCOCK)
                .worked(worked("2.00 m²", Citation.read("Open calculator page", "180 cm and 80 kg"), 180, 80))
                .worked(worked("1.9964 m²", Citation.derived("180^0.725 and 80^0.425"), 180, 80)
                        .under(ID, "du-bois"))
                .worked(worked("0.74007 m²", Citation.derived("110^0.3964 and 18^0.5378"), 110, 18)
                        .under(ID, "haycock"))
                .build();
    }

    private static Derivation power(Citation source, double factor, double ofHeight, double ofWeight) {
        return Derivation.of(
                "BSA = %s · H^%s · W^%s".formatted(factor, ofHeight, ofWeight),
                source,
                in -> factor * Math.pow(in.of(H), ofHeight) * Math.pow(in.of(W), ofWeight),
                H,
                W);
    }

    private static WorkedValue worked(String result, Citation source, int height, int weight) {
        return WorkedValue.of(
                result, source, "patient-height=%d cm".formatted(height), "patient-weight=%d kg".formatted(weight));
    }
}
