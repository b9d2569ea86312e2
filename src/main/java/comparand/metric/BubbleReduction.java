package comparand.metric;

import comparand.unit.Printed;
import java.util.List;
import java.util.Map;

/**
 * The share of gaseous microemboli that does not leave the device, by number or by volume:
 * {@code reduction = 100 · (1 - X_down / X_up)}.
 *
 * <p>Number and volume are two quantities: the volume sits in the few largest bubbles, so on the same run it falls more.
 * Both stand here because all but the letter X is alike.
 */
final class BubbleReduction {

    private static final String TABLE =
            "bins 10-20: 6000 to 2400, 20-40: 3000 to 600, 40-100: 900 to 45, 100-200: 100 to 1,"
                    + " 200-500 µm: 10 to 0, bubbles at bin middles";

    private BubbleReduction() {}

    static Metric count() {
        return reduction(
                "count",
                "number",
                "{count}",
                new WorkedValue(
                        Map.of("bubble-count-upstream", "10010 {count}", "bubble-count-downstream", "3046 {count}"),
                        Definition.NONE,
                        Printed.of("69.57 %"),
                        Citation.derived(TABLE)));
    }

    static Metric volume() {
        return reduction(
                "volume",
                "volume",
                "µL",
                new WorkedValue(
                        Map.of("bubble-volume-upstream", "0.61586 µL", "bubble-volume-downstream", "0.022572 µL"),
                        Definition.NONE,
                        Printed.of("96.335 %"),
                        Citation.derived(TABLE)));
    }

    private static Metric reduction(String what, String words, String unit, WorkedValue worked) {
        var up = "bubble-" + what + "-upstream";
        var down = "bubble-" + what + "-downstream";
        var card = Metric.named("bubble-" + what + "-reduction", "bubble " + what + " reduction")
                .symbol(what.equals("count") ? "ΔN/N" : "ΔV/V")
                .meaning("The share of gas bubbles, by " + words + ", that enters the device and does not leave it")
                .unit("%")
                .better(Better.MORE)
                .plausible(-50, 100)
                .possible(-10_000, 100)
                .derived(new Derivation(
                        "100 · (1 - X_down / X_up)",
                        List.of(
                                Input.of(up, "X_up", "bubbles before the device, by " + words, unit),
                                Input.of(down, "X_down", "bubbles after the device, by " + words, unit)),
                        Definition.NONE,
                        Citation.commonPractice("both channels over the same time"),
                        in -> 100 * (1 - in.get(down) / in.get(up))))
                .aspect(new Aspect.Parts("parts between the two detectors", Role.DECIDES, DevicePart.OXYGENATOR, false))
                .aspect(new Aspect.Choice(
                        "aggregation",
                        "way runs are put together",
                        "put together",
                        Role.QUALIFIES,
                        "per-run-then-mean",
                        List.of(
                                new Variant("per-run-then-mean", "one reduction per run, then their mean"),
                                new Variant("median", "one reduction per run, then their median"),
                                new Variant("pooled", "all bubbles after over all bubbles before")),
                        List.of()))
                .confusedWith(what.equals("count") ? "bubble-volume-reduction" : "bubble-count-reduction");
        return Flowing.on(
                        card,
                        Influence.more(Effect.LOWERS, "bubbles have less time to rise and to be caught"),
                        Map.of(),
                        "")
                .decides(Conditions.BUBBLE_CHALLENGE, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(
                        Conditions.BUBBLE_SIZE_FROM,
                        Tolerance.EQUAL,
                        Influence.more(Effect.RAISES, "large bubbles are held back more easily than small ones"))
                .decides(Conditions.BUBBLE_DETECTOR, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.TEMPERATURE, Flowing.TEMPERATURE, Influence.UNKNOWN)
                .cites(Citation.read("Riley, J Extra Corpor Technol 2008;40:21-26", "bolus challenge of ten filters"))
                .worked(worked)
                .build();
    }
}
