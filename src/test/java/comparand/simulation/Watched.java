package comparand.simulation;

import comparand.model.Step;
import comparand.simulation.Judged.Kind;
import java.util.List;
import java.util.function.Predicate;

/**
 * Pairs that have one thing in common which may mislead, and why it does where it does.
 *
 * @param reason printed where a direction is found in more than 5 % of those without a true difference
 */
record Watched(String words, Predicate<Judged> holds, String reason) {

    static List<Watched> all() {
        return List.of(
                new Watched(
                        "nothing wrong",
                        p -> p.is(Cause.NOTHING) || p.is(Cause.REPEATED),
                        "the interval is a little too narrow: Welch's with few degrees of freedom on either side, and a standard"
                                + " deviation estimated from quartiles counted as if it were computed from all results."),
                new Watched(
                        "flow off by 2 to 4.5 %, within the tolerance",
                        p -> p.is(Cause.TOLERATED) && isOffFlow(p),
                        "pressure drop rises with flow to the power of about 1.5, so 5 % of flow are 7 % of the drop, as"
                                + " much as a margin at 100 mmHg; nothing brings the two to one flow once the tolerance"
                                + " is met."),
                new Watched(
                        "haemoglobin off by 0.5 to 0.9 g/dL, within the tolerance",
                        p -> p.is(Cause.TOLERATED) && !isOffFlow(p),
                        "1 g/dL moves the viscosity by 7 %; the interval knows nothing of it."),
                new Watched(
                        "temperature 28 to 33 °C in place of 36 or 37 °C",
                        p -> p.is(Cause.TEMPERATURE),
                        "temperature qualifies and does not decide, so the pair is compared and the difference only named;"
                                + " 4 °C move the viscosity as much as the tolerance of haemoglobin does."),
                new Watched(
                        "cases chosen within the tolerance of the published flow",
                        p -> p.is(Cause.FLOW_BETWEEN) && made(p, Step.Kind.SELECTED),
                        "the chosen lie on that side of the published flow where the others are; their mean flow is off by"
                                + " up to the tolerance, and what remains is not corrected."),
                new Watched(
                        "the line through the cases, one or two hospitals",
                        p -> p.is(Cause.FLOW_BETWEEN)
                                && made(p, Step.Kind.REGRESSED)
                                && p.local().hospitals() <= 2,
                        "a straight line follows a curve."),
                new Watched(
                        "each unit read off between steps 1 L/min apart",
                        p -> p.is(Cause.FLOW_BETWEEN) && p.local().steps().size() == 3,
                        "a chord lies above a curve that bends upwards."),
                new Watched(
                        "each unit read off between steps 2 L/min apart",
                        p -> p.is(Cause.FLOW_BETWEEN) && p.local().steps().size() == 2,
                        "a chord lies above a curve that bends upwards: by b h²/4 in the middle of steps h apart, 1.5 to 3"
                                + " mmHg here, all of one sign."),
                new Watched(
                        "± unexplained",
                        p -> p.is(Cause.UNEXPLAINED),
                        "a standard error was read as a standard deviation, or the other way round."),
                new Watched(
                        "a figure without spread or n, read as a mean",
                        p -> p.is(Cause.FIGURE) || p.is(Cause.WITHOUT_NUMBER),
                        "the figure is a mean of few results itself, and its own error is not known. The sentence says that"
                                + " it takes the figure as exact and that the difference of two means cannot be tested."),
                new Watched(
                        "read off between two published values",
                        p -> p.is(Kind.READ_OFF),
                        "taken as exact, as a bare figure is, and said so; the spread of both neighbours is known and not"
                                + " used."),
                new Watched(
                        "three or four hospitals, SD between up to a quarter of that within",
                        p -> hospitals(p) && p.local().between() < 0.5,
                        "cases of one hospital resemble each other, and do not count as independent for all hospitals."),
                new Watched(
                        "three or four hospitals, SD between from half of that within",
                        p -> hospitals(p) && p.local().between() >= 0.5,
                        "cases of one hospital resemble each other, and do not count as independent for all hospitals."),
                new Watched(
                        "two devices in hospitals that use both alike",
                        p -> p.is(Kind.PRESENT)
                                && p.local().severalHospitals()
                                && p.local().alikeUse(),
                        "hospitals that used both still weigh differently."),
                new Watched(
                        "two devices in hospitals that use one more than the other",
                        p -> p.is(Kind.PRESENT) && !p.local().alikeUse(),
                        "what sets the hospitals apart is mixed into the difference of the devices: all cases of one are set"
                                + " against all cases of the other. Within one hospital it is not."),
                new Watched("two devices within one hospital", p -> p.is(Kind.WITHIN_HOSPITAL), "few cases of each."));
    }

    List<Judged> of(List<Judged> pairs) {
        return pairs.stream().filter(holds).toList();
    }

    /** How often the tool finds a direction where there is none. */
    Rate falseDirection(List<Judged> pairs) {
        return Reader.TOOL.rate(of(pairs).stream().filter(Judged::isNull).toList(), Truth::wrongDirection);
    }

    /** Over 5 % by more than two standard errors. */
    boolean fallsShort(List<Judged> pairs) {
        var rate = falseDirection(pairs);
        return rate.percent() - 2 * rate.error() > 5;
    }

    /** Over 5 % by less than that. */
    boolean isOpen(List<Judged> pairs) {
        return falseDirection(pairs).percent() > 5 && !fallsShort(pairs);
    }

    private static boolean made(Judged pair, Step.Kind kind) {
        return pair.made().filter(k -> k == kind).isPresent();
    }

    private static boolean hospitals(Judged pair) {
        return pair.isSound() && pair.local().hospitals() >= 3;
    }

    private static boolean isOffFlow(Judged pair) {
        return pair.published()
                .filter(p -> Math.rint(p.at().flow()) != p.at().flow())
                .isPresent();
    }
}
