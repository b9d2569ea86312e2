package comparand.metric;

import java.util.List;

/**
 * Flows that describe the capacity of a device. The largest flow allowed, the flow up to which standard blood still
 * exchanges a fixed amount of gas per litre, and the flow up to which it leaves nearly saturated are three figures.
 */
public final class LabelledFlow {

    /** The largest flow, or the range of flows, that is allowed. */
    public static final String LIMITS = "labelled-blood-flow";

    /** The flow found in a gas exchange test by gas per litre. */
    public static final String REFERENCE = "reference-blood-flow";

    /** The flow found in a gas exchange test by the saturation at the outlet. */
    public static final String RATED = "rated-blood-flow";

    private static final String CRITERION = "criterion";
    private static final Input Q = Letters.BLOOD_FLOW;
    private static final Input OXYGEN = Letters.OXYGEN_PER_LITRE;
    private static final Input CARBON_DIOXIDE = Letters.CARBON_DIOXIDE_PER_LITRE;
    private static final Citation AMOUNTS = Citation.fromMemory(
            "AAMI, blood gas exchangers", "45 mL of oxygen gained, 38 mL of carbon dioxide lost per litre");
    private static final Citation SATURATED =
            Citation.read("Concentric-flow membrane lung, PMC5578883", "rated flow: outlet saturation of 95 %");

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
                .confusedWith(REFERENCE, RATED)
                .cites(Citation.commonPractice("limits of use from the instructions for use"))
                .build();
    }

    static Metric reference() {
        var oxygen = new Gathering.Crossing(Q.id(), OXYGEN.id(), 45);
        var carbonDioxide = new Gathering.Crossing(Q.id(), CARBON_DIOXIDE.id(), 38);
        var card = Metric.named(REFERENCE, "reference blood flow")
                .symbol("Q ref")
                .meaning(
                        "The flow up to which standard venous blood still gains or loses a fixed amount of gas per litre; not a limit of use")
                .unit("L/min")
                .nature(Nature.STATED)
                .plausible(0.3, 8)
                .possible(0.05, 12)
                .derived(Derivation.found(
                                "lower of Q at VO₂/Q = 45 mL/L and Q at VCO₂/Q = 38 mL/L, linear between flows",
                                AMOUNTS,
                                new Gathering.Lowest(List.of(oxygen, carbonDioxide)),
                                Q,
                                OXYGEN,
                                CARBON_DIOXIDE)
                        .giving(CRITERION, "gas-per-litre"))
                .derived(Derivation.found("Q at VO₂/Q = 45 mL/L, linear between flows", AMOUNTS, oxygen, Q, OXYGEN)
                        .giving(CRITERION, "oxygen-per-litre"))
                .derived(Derivation.found(
                                "Q at VCO₂/Q = 38 mL/L, linear between flows",
                                AMOUNTS,
                                carbonDioxide,
                                Q,
                                CARBON_DIOXIDE)
                        .giving(CRITERION, "carbon-dioxide-per-litre"))
                .aspect(new Aspect.Choice(
                        CRITERION,
                        "criterion the flow is found by",
                        "criterion",
                        Role.DECIDES,
                        "gas-per-litre",
                        List.of(
                                new Variant(
                                        "gas-per-litre", "45 mL oxygen gained and 38 mL carbon dioxide lost per litre"),
                                new Variant("oxygen-per-litre", "45 mL oxygen gained per litre"),
                                new Variant("carbon-dioxide-per-litre", "38 mL carbon dioxide lost per litre")),
                        List.of()));
        card = OxygenTransfer.choices(card)
                .aspect(CarbonDioxideTransfer.SIDE_QUALIFIES)
                .aspect(CarbonDioxideContent.model(Role.QUALIFIES))
                .aspect(CarbonDioxideContent.MOLAR_VOLUME);
        return card.qualifies(Conditions.INLET_BLOOD, Tolerance.EQUAL, Influence.UNKNOWN)
                .confusedWith(LIMITS, RATED)
                .cites(Sources.REFERENCE_FLOW)
                .cites(AMOUNTS)
                .worked(WorkedValue.of(
                                "2.2632 L/min",
                                Citation.derived("54, 50, 47 and 43.2 mL/L: 2.0 + 0.5 × 2 / 3.8"),
                                "blood-flow=1.0 L/min; 1.5 L/min; 2.0 L/min; 2.5 L/min",
                                "oxygen-transfer-per-litre=54 mL/L; 50 mL/L; 47 mL/L; 43.2 mL/L")
                        .under(CRITERION, "oxygen-per-litre"))
                .worked(WorkedValue.of(
                        "1.75 L/min",
                        Citation.derived("carbon dioxide is met first: 39 to 37 mL/L from 1.5 to 2.0 L/min"),
                        "blood-flow=1.0 L/min; 1.5 L/min; 2.0 L/min; 2.5 L/min",
                        "oxygen-transfer-per-litre=54 mL/L; 50 mL/L; 47 mL/L; 43.2 mL/L",
                        "carbon-dioxide-transfer-per-litre=44 mL/L; 39 mL/L; 37 mL/L; 34 mL/L"))
                .worked(WorkedValue.of(
                                "1.75 L/min",
                                Citation.derived("39 to 37 mL/L from 1.5 to 2.0 L/min"),
                                "blood-flow=1.0 L/min; 1.5 L/min; 2.0 L/min; 2.5 L/min",
                                "carbon-dioxide-transfer-per-litre=44 mL/L; 39 mL/L; 37 mL/L; 34 mL/L")
                        .under(CRITERION, "carbon-dioxide-per-litre"))
                .build();
    }

    static Metric rated() {
        var saturation = Side.OUTLET.saturation();
        return Metric.named(RATED, "rated blood flow")
                .symbol("Q 95")
                .meaning(
                        "The flow up to which standard venous blood leaves the device at 95 % saturation; not a limit of use")
                .unit("L/min")
                .nature(Nature.STATED)
                .plausible(0.3, 8)
                .possible(0.05, 12)
                .derived(Derivation.found(
                        "Q at S_out = 0.95, linear between flows",
                        SATURATED,
                        new Gathering.Crossing(Q.id(), saturation.id(), 0.95),
                        Q,
                        saturation))
                .aspect(OxygenSaturation.ASPECT)
                .qualifies(Conditions.INLET_BLOOD, Tolerance.EQUAL, Influence.UNKNOWN)
                .confusedWith(LIMITS, REFERENCE)
                .cites(SATURATED)
                .worked(WorkedValue.of(
                        "4.5 L/min",
                        Citation.derived("midway between 96 % at 4 and 94 % at 5 L/min"),
                        "blood-flow=3 L/min; 4 L/min; 5 L/min",
                        "outlet-saturation=98 %; 96 %; 94 %"))
                .build();
    }
}
