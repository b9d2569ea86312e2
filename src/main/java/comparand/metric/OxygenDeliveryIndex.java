package comparand.metric;

import java.util.List;
import java.util.Map;

/**
 * Oxygen that leaves the device per square metre of body surface: {@code 10 · CI · C_out}, or the short form from
 * haemoglobin alone. A figure of the patient's perfusion, not of the device, and nothing to be aimed at from here.
 */
final class OxygenDeliveryIndex {

    private static final String FORM = "delivery-form";

    private OxygenDeliveryIndex() {}

    static Metric metric() {
        var ci = Letters.FLOW_INDEX;
        var content = Side.OUTLET.oxygenContent();
        var hb = Letters.HAEMOGLOBIN;
        var card = Metric.named("oxygen-delivery-index", "oxygen delivery per body surface")
                .symbol("DO₂i")
                .meaning("Oxygen in the blood that leaves the device, per minute and body surface")
                .unit("mL/min/m²")
                .plausible(120, 600)
                .possible(0, 1200)
                .derived(Derivation.of(
                                "DO₂i = 10 · CI · C_out",
                                Sources.RANUCCI,
                                in -> 10 * in.of(ci) * in.of(content),
                                ci,
                                content)
                        .giving(FORM, "content"))
                .derived(Derivation.of(
                                "DO₂i = 10 · k · Hb · CI",
                                Sources.KARDIOTECHNIK,
                                in -> 10 * in.constant(OxygenContent.HUFNER.id()) * in.of(hb) * in.of(ci),
                                ci,
                                hb)
                        .giving(FORM, "haemoglobin-only"));
        return OxygenContent.choices(card)
                .aspect(BodySurfaceArea.FORMULA)
                .aspect(new Aspect.Choice(
                        FORM,
                        "oxygen that is counted",
                        "delivery",
                        Role.DECIDES,
                        "content",
                        List.of(
                                new Variant("content", "oxygen content at the outlet"),
                                new Variant("haemoglobin-only", "what haemoglobin could carry, k · Hb")),
                        List.of()))
                .decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.instead(Map.of(), ""))
                .decides(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .qualifies(Conditions.PHASE, Tolerance.EQUAL, Influence.UNKNOWN)
                .confusedWith("oxygen-transfer-per-body-surface")
                .cites(Sources.RANUCCI)
                .cites(Sources.KARDIOTECHNIK)
                .worked(WorkedValue.of(
                        "361.17 mL/min/m²",
                        Citation.derived("26 × 13.891"),
                        "flow-index=2.6 L/min/m²",
                        "outlet-oxygen-content=13.891 mL/dL"))
                .worked(WorkedValue.of(
                                "353.6 mL/min/m²",
                                Citation.derived("10 × 1.36 × 10 × 2.6"),
                                "flow-index=2.6 L/min/m²",
                                "haemoglobin=10 g/dL")
                        .under(FORM, "haemoglobin-only")
                        .under(OxygenContent.HUFNER.id(), "1.36"))
                .build();
    }
}
