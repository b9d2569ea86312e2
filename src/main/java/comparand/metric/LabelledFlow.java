package comparand.metric;

import java.util.List;

/** Flows that a label states. The largest flow allowed and the reference flow are two different figures. */
public final class LabelledFlow {

    /** The largest flow, or the range of flows, that is allowed. */
    public static final String LIMITS = "labelled-blood-flow";

    /** The flow found in a gas exchange test. */
    public static final String REFERENCE = "reference-blood-flow";

    private LabelledFlow() {}

    static Metric limits() {
        return Metric.named(LIMITS, "labelled blood flow")
                .symbol("Q label")
                .meaning("The blood flow, or range of flows, the instructions for use allow")
                .unit("L/min")
                .nature(Nature.STATED)
                .plausible(0.05, 8)
                .possible(0.01, 12)
                .limits(Conditions.BLOOD_FLOW)
                .confusedWith(REFERENCE)
                .cites(Citation.commonPractice("limits of use from the instructions for use"))
                .build();
    }

    static Metric reference() {
        return Metric.named(REFERENCE, "reference blood flow")
                .symbol("Q ref")
                .meaning(
                        "The flow up to which standard venous blood still gains or loses a fixed amount of gas per litre; not a limit of use")
                .unit("L/min")
                .nature(Nature.STATED)
                .plausible(0.3, 8)
                .possible(0.05, 12)
                .aspect(new Aspect.Choice(
                        "criterion",
                        "criterion the flow is found by",
                        "criterion",
                        Role.DECIDES,
                        "gas-per-litre",
                        List.of(
                                new Variant(
                                        "gas-per-litre", "45 mL oxygen gained and 38 mL carbon dioxide lost per litre"),
                                new Variant("outlet-saturation-95", "blood leaves at 95 % saturation")),
                        List.of()))
                .confusedWith(LIMITS)
                .cites(Citation.read(
                        "Myers, J Extra Corpor Technol 2014;46:192-196",
                        "reference blood flow is not the maximum flow"))
                .build();
    }
}
