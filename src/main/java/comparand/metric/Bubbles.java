package comparand.metric;

import java.util.List;

/**
 * Gas bubbles of a run, counted by a detector in bins of size: their number and their volume, from a size on. One row is
 * one bin; a run is the sum of its bins. {@code V = n · π/6 · d³}, d standing for the bin.
 */
final class Bubbles {

    static final String RULE = "bubble-diameter-rule";
    private static final Input FROM = Letters.BIN_FROM;
    private static final Input TO = Letters.BIN_TO;
    private static final Input D = Letters.BUBBLE_DIAMETER;
    private static final Input LEAST = Letters.BUBBLE_SIZE_FROM;
    private static final Gathering SUM = new Gathering.Total();
    private static final Citation SPHERE = Citation.derived("volume of a sphere");

    private Bubbles() {}

    /** Before or after the device, along the stream. */
    static Input count(String where) {
        return Input.of(
                "bubble-count-" + where,
                where.equals("upstream") ? "N_up" : "N_down",
                "bubbles %s of the device, by number".formatted(where),
                "{count}");
    }

    static Input volume(String where) {
        return Input.of(
                "bubble-volume-" + where,
                where.equals("upstream") ? "V_up" : "V_down",
                "bubbles %s of the device, by volume".formatted(where),
                "µL");
    }

    private static Input binCount(String where) {
        return Input.of(
                "bubble-bin-count-" + where,
                where.equals("upstream") ? "n_up" : "n_down",
                "bubbles of one size bin %s of the device".formatted(where),
                "{count}");
    }

    /** It decides on volumes; of a reduction, where it stands above and below, it moves little. */
    static Aspect rule(Role role) {
        return new Aspect.Choice(
                RULE,
                "diameter that stands for a bin",
                "bin diameter",
                role,
                "midpoint",
                List.of(
                        new Variant("midpoint", "middle of the bin"),
                        new Variant("geometric-mean", "geometric mean of its edges"),
                        new Variant("uniform-cube", "of the mean volume, bubbles spread evenly over the bin"),
                        new Variant("detector", "as the detector reports")),
                List.of());
    }

    private static double counted(Inputs in, Input n) {
        return in.of(FROM) >= in.of(LEAST) ? in.of(n) : 0;
    }

    static Metric count(boolean upstream) {
        var where = upstream ? "upstream" : "downstream";
        var n = binCount(where);
        return conditions(Metric.named("bubble-count-" + where, "number of bubbles " + where)
                        .symbol(upstream ? "N up" : "N down")
                        .meaning("Gas bubbles of a run counted %s of the device, from a size on".formatted(where))
                        .unit("{count}")
                        .better(upstream ? Better.NEITHER : Better.LESS)
                        .plausible(0, 1e6)
                        .possible(0, 1e9)
                        .derived(Derivation.of(
                                        "%s = Σ %s over bins with d_lo ≥ d_min"
                                                .formatted(count(where).symbol(), n.symbol()),
                                        Citation.commonPractice("sum over the bins of a run"),
                                        in -> counted(in, n),
                                        n,
                                        FROM,
                                        LEAST)
                                .gathered(SUM)))
                .cites(Citation.commonPractice("both channels over the same time"))
                .worked(WorkedValue.of(
                        upstream ? "10010 {count}" : "3046 {count}",
                        Citation.derived("five bins from 10 µm"),
                        bins(n.id(), upstream, "10 µm")))
                .worked(WorkedValue.of(
                        upstream ? "1010 {count}" : "46 {count}",
                        Citation.derived("the same bins from 40 µm"),
                        bins(n.id(), upstream, "40 µm")))
                .build();
    }

    static Metric volume(boolean upstream) {
        var where = upstream ? "upstream" : "downstream";
        var n = binCount(where);
        return conditions(Metric.named("bubble-volume-" + where, "volume of bubbles " + where)
                        .symbol(upstream ? "V up" : "V down")
                        .meaning("Gas in the bubbles of a run %s of the device, from a size on".formatted(where))
                        .unit("µL")
                        .better(upstream ? Better.NEITHER : Better.LESS)
                        .plausible(0, 100)
                        .possible(0, 1e5)
                        .derived(Derivation.of(
                                        "%s = Σ %s · π/6 · d³ · 10⁻⁹ over bins with d_lo ≥ d_min"
                                                .formatted(volume(where).symbol(), n.symbol()),
                                        SPHERE,
                                        in -> counted(in, n) * Math.PI / 6 * Math.pow(in.of(D), 3) * 1e-9,
                                        n,
                                        D,
                                        FROM,
                                        LEAST)
                                .gathered(SUM))
                        .aspect(rule(Role.DECIDES)))
                .cites(SPHERE)
                .worked(WorkedValue.of(
                        upstream ? "0.61586 µL" : "0.022572 µL",
                        Citation.derived("five bins from 10 µm, bubbles at bin middles"),
                        bins(n.id(), upstream, "10 µm")))
                .build();
    }

    private static String[] bins(String count, boolean upstream, String least) {
        return new String[] {
            count + "=" + (upstream ? "6000; 3000; 900; 100; 10" : "2400; 600; 45; 1; 0"),
            "bubble-diameter=15 µm; 30 µm; 70 µm; 150 µm; 350 µm",
            "bubble-bin-from=10 µm; 20 µm; 40 µm; 100 µm; 200 µm",
            "bubble-size-from=%s; %s; %s; %s; %s".formatted(least, least, least, least, least)
        };
    }

    static Metric diameter() {
        return Metric.named("bubble-diameter", "diameter that stands for a bin of bubbles")
                .symbol("d")
                .meaning("The one diameter that the bubbles of a size bin are taken to have")
                .unit("µm")
                .plausible(1, 1000)
                .possible(0, 10_000)
                .derived(rule("d = (d_lo + d_hi) / 2", "midpoint", in -> (in.of(FROM) + in.of(TO)) / 2))
                .derived(rule("d = √(d_lo · d_hi)", "geometric-mean", in -> Math.sqrt(in.of(FROM) * in.of(TO))))
                .derived(rule("d = ((d_hi⁴ - d_lo⁴) / (4 (d_hi - d_lo)))^(1/3)", "uniform-cube", in -> {
                    double lo = in.of(FROM);
                    double hi = in.of(TO);
                    return Math.cbrt((hi * hi + lo * lo) * (hi + lo) / 4);
                }))
                .aspect(rule(Role.DECIDES))
                .cites(SPHERE)
                .worked(bin("15 µm"))
                .worked(bin("14.142 µm").under(RULE, "geometric-mean"))
                .worked(bin("15.536 µm").under(RULE, "uniform-cube"))
                .build();
    }

    private static Derivation rule(String formula, String variant, Computation computation) {
        return Derivation.of(formula, SPHERE, computation, FROM, TO).giving(RULE, variant);
    }

    private static WorkedValue bin(String result) {
        return WorkedValue.of(result, Citation.derived("10 to 20 µm"), "bubble-bin-from=10 µm", "bubble-bin-to=20 µm");
    }

    /** What counts of bubbles depend on. */
    static Metric.Builder conditions(Metric.Builder card) {
        return card.decides(Conditions.TEST_MODEL, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(Conditions.BUBBLE_CHALLENGE, Tolerance.EQUAL, Influence.UNKNOWN)
                .decides(
                        Conditions.BUBBLE_SIZE_FROM,
                        Tolerance.EQUAL,
                        Influence.more(Effect.LOWERS, "smaller bubbles are not counted"))
                .decides(Conditions.BUBBLE_DETECTOR, Tolerance.EQUAL, Influence.UNKNOWN)
                .qualifies(Conditions.DURATION, Tolerance.percent("10 %"), Influence.UNKNOWN);
    }
}
