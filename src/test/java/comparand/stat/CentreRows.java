package comparand.stat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Rows on values in groups. */
final class CentreRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("anova-sirstv", CentreRows::analysis);
        ROWS.put("anova-atmwtag", CentreRows::analysis);
        ROWS.put("anova-ehandbook", CentreRows::analysis);
        ROWS.put("icc1-shrout-fleiss", in -> {
            var a = OneWay.of(in.groups("groups"));
            return Computed.of("icc1", a.icc())
                    .and("msb", a.meanSquareBetween())
                    .and("msw", a.meanSquareWithin());
        });
        ROWS.put("icc1-ci", in -> {
            var a = OneWay.of(in.groups("groups"));
            return Computed.of("icc", a.icc()).and("lo", "hi", a.iccInterval(in.d("level")));
        });
        ROWS.put("reml-dyestuff", in -> {
            var fit = RandomCentres.of(in.groups("groups"));
            return Computed.of("between_var", fit.varianceBetween())
                    .and("within_var", fit.varianceWithin())
                    .and("mean", fit.mean());
        });
        ROWS.put("centre-mean-balanced", in -> {
            var local = LocalMean.of(in.groups("groups"), 0.95).orElseThrow();
            return Computed.of("mean", local.estimate().mean())
                    .and("se", local.estimate().se())
                    .and("df", local.estimate().df())
                    .and("lo", "hi", local.interval(0.95));
        });
        ROWS.put("centre-unbalanced-anova", in -> {
            var a = OneWay.of(in.groups("groups"));
            return Computed.of("msb", a.meanSquareBetween())
                    .and("msw", a.meanSquareWithin())
                    .and("n0", a.n0())
                    .and("between_var", a.varianceBetween())
                    .and("icc", a.icc());
        });
        ROWS.put("centre-unbalanced-reml", in -> {
            var fit = RandomCentres.of(in.groups("groups"));
            return Computed.of("mean", fit.mean())
                    .and("se", fit.se())
                    .and("between_var", fit.varianceBetween())
                    .and("within_var", fit.varianceWithin());
        });
        ROWS.put("centre-two-stage-hk", in -> {
            var local = LocalMean.of(in.groups("groups"), 0.95).orElseThrow();
            var spread = local.spread().orElseThrow();
            var hk = spread.twoStage().hartungKnapp();
            double within = spread.components().meanSquareWithin();
            return Computed.of("tau2", spread.twoStage().tau2())
                    .and("mean", hk.mean())
                    .and("se_hk", hk.se())
                    .and("lo", "hi", hk.interval(0.95))
                    .and(
                            "centre_means",
                            local.centres().stream().mapToDouble(Moments::mean).toArray())
                    .and(
                            "v",
                            local.centres().stream()
                                    .mapToDouble(m -> within / m.n())
                                    .toArray());
        });
        ROWS.put("centre-hk-floor", in -> {
            var local = LocalMean.of(in.groups("groups"), 0.95).orElseThrow();
            var twoStage = local.spread().orElseThrow().twoStage();
            return Computed.of("tau2", twoStage.tau2())
                    .and("mean", twoStage.mean())
                    .and("q", twoStage.q())
                    .and("hk_half", twoStage.hartungKnapp().interval(0.95).halfWidth())
                    .and("naive_half", local.interval(0.95).halfWidth())
                    .and("reported_lo", "reported_hi", local.interval(0.95));
        });
        ROWS.put("deff", in -> {
            var effect = DesignEffect.of(in.d("m_per_cluster"), in.d("icc"));
            return Computed.of("deff", effect.factor()).and("n_eff", effect.effective(in.d("n_total")));
        });
        ROWS.put("nested-gum-h5", in -> {
            double[] means = in.numbers("day_means_V");
            double[] sds = in.numbers("day_sd_uV");
            int repeats = in.i("repeats");
            var days = OneWay.ofMoments(IntStream.range(0, means.length)
                    .mapToObj(k -> new Moments(means[k], sds[k] * 1e-6, repeats))
                    .toList());
            double ofMeans = 1e6 * Math.sqrt(days.meanSquareBetween() / repeats);
            return Computed.of("grand_mean_V", days.grandMean())
                    .and("s_of_day_means_uV", ofMeans)
                    .and("s_within_uV", 1e6 * Math.sqrt(days.meanSquareWithin()))
                    .and("s_between_uV", 1e6 * Math.sqrt(days.varianceBetween()))
                    .and("u_mean_uV", 1e6 * Moments.of(means).se());
        });
    }

    private CentreRows() {}

    private static Computed analysis(Row in) {
        var a = OneWay.of(in.groups("groups"));
        return Computed.of("ss_between", a.squaresBetween())
                .and("ss_within", a.squaresWithin())
                .and("F", a.f());
    }
}
