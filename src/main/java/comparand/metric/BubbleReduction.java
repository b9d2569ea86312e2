package comparand.metric;

import java.util.List;
import java.util.Map;

/**
 * The share of gaseous microemboli that does not leave the device, by number or by volume:
 * {@code reduction = 100 · (1 - X_down / X_up)}, or the decimal logarithm of X_up / X_down.
 *
 * <p>Number and volume are two quantities: the volume sits in the few largest bubbles, so on the same run it falls more.
 * They stand here together because all but the letter X is alike.
 */
final class BubbleReduction {

    static final String AGGREGATION = "aggregation";
    private static final String TABLE =
            "bins 10-20: 6000 to 2400, 20-40: 3000 to 600, 40-100: 900 to 45, 100-200: 100 to 1,"
                    + " 200-500 µm: 10 to 0, bubbles at bin middles";
    private static final Gathering RUN = new Gathering.Sums(Gathering.Over.MEMBER);
    private static final Citation CHANNELS = Citation.commonPractice("both channels over the same time");

    private BubbleReduction() {}

    static Metric count() {
        return reduction("count", "number", Bubbles.count("upstream"), Bubbles.count("downstream"))
                .worked(WorkedValue.of(
                        "69.57 %",
                        Citation.derived(TABLE),
                        "bubble-count-upstream=10010 {count}",
                        "bubble-count-downstream=3046 {count}"))
                .worked(WorkedValue.of(
                                "89.626 %",
                                Citation.derived("4440 after of 42 800 before, three runs"),
                                "bubble-count-upstream=12000; 800; 30000",
                                "bubble-count-downstream=1800; 240; 2400")
                        .under(AGGREGATION, "pooled"))
                .build();
    }

    static Metric volume() {
        return reduction("volume", "volume", Bubbles.volume("upstream"), Bubbles.volume("downstream"))
                .aspect(Bubbles.rule(Role.QUALIFIES))
                .worked(WorkedValue.of(
                        "96.335 %",
                        Citation.derived(TABLE),
                        "bubble-volume-upstream=0.61586 µL",
                        "bubble-volume-downstream=0.022572 µL"))
                .build();
    }

    static Metric countLogarithm() {
        return logarithm("count", "number", Bubbles.count("upstream"), Bubbles.count("downstream"))
                .worked(WorkedValue.of(
                        "2",
                        Citation.derived("10 000 to 100"),
                        "bubble-count-upstream=10000",
                        "bubble-count-downstream=100"))
                .build();
    }

    static Metric volumeLogarithm() {
        return logarithm("volume", "volume", Bubbles.volume("upstream"), Bubbles.volume("downstream"))
                .aspect(Bubbles.rule(Role.QUALIFIES))
                .worked(WorkedValue.of(
                        "1.4359",
                        Citation.derived("log10(0.61586 / 0.022572)"),
                        "bubble-volume-upstream=0.61586 µL",
                        "bubble-volume-downstream=0.022572 µL"))
                .build();
    }

    private static Metric.Builder reduction(String what, String words, Input up, Input down) {
        return card(
                Metric.named("bubble-" + what + "-reduction", "bubble " + what + " reduction")
                        .symbol(what.equals("count") ? "ΔN/N" : "ΔV/V")
                        .meaning("The share of gas bubbles, by " + words
                                + ", that enters the device and does not leave it")
                        .unit("%")
                        .plausible(-50, 100)
                        .possible(-10_000, 100)
                        .confusedWith(what.equals("count") ? "bubble-volume-reduction" : "bubble-count-reduction"),
                Derivation.of(
                        "100 · (1 - %s / %s)".formatted(down.symbol(), up.symbol()),
                        CHANNELS,
                        in -> 100 * (1 - in.of(down) / in.of(up)),
                        up,
                        down));
    }

    private static Metric.Builder logarithm(String what, String words, Input up, Input down) {
        return card(
                Metric.named("bubble-" + what + "-log-reduction", "bubble " + what + " reduction in powers of ten")
                        .symbol("LR " + (what.equals("count") ? "N" : "V"))
                        .meaning("The power of ten by which gas bubbles become fewer, by " + words + ", in the device")
                        .unit("1")
                        .plausible(-0.2, 4)
                        .possible(-2, 9)
                        .confusedWith("bubble-" + what + "-reduction"),
                Derivation.of(
                        "log₁₀(%s / %s)".formatted(up.symbol(), down.symbol()),
                        CHANNELS,
                        in -> Math.log10(in.of(up) / in.of(down)),
                        up,
                        down));
    }

    private static Metric.Builder card(Metric.Builder metric, Derivation ratio) {
        var card = metric.better(Better.MORE)
                .derived(ratio.gathered(RUN).giving(AGGREGATION, "per-run-then-mean"))
                .derived(ratio.gathered(new Gathering.Median(RUN)).giving(AGGREGATION, "median"))
                .derived(
                        ratio.gathered(new Gathering.Sums(Gathering.Over.GROUP)).giving(AGGREGATION, "pooled"))
                .aspect(new Aspect.Parts("parts between the two detectors", Role.DECIDES, DevicePart.OXYGENATOR, false))
                .aspect(new Aspect.Choice(
                        AGGREGATION,
                        "way runs are put together",
                        "put together",
                        Role.DECIDES,
                        "per-run-then-mean",
                        List.of(
                                new Variant("per-run-then-mean", "one reduction per run, then their mean"),
                                new Variant("median", "one reduction per run, then their median"),
                                new Variant("pooled", "all bubbles after over all bubbles before")),
                        List.of()));
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
                .cites(Citation.read("Riley, J Extra Corpor Technol 2008;40:21-26", "bolus challenge of ten filters"));
    }
}
