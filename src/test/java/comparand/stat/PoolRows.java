package comparand.stat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Rows on sources pooled. */
final class PoolRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("pool-bcg-dl-rr", in -> {
            var random = random(in, BetweenVariance.DERSIMONIAN_LAIRD);
            return Computed.of("rr", Math.exp(random.mean()))
                    .and("lo", "hi", random.normal().interval(0.95).map(Math::exp));
        });
        ROWS.put("pool-bcg-fixed", in -> {
            var common = CommonEffect.of(effects(in));
            return Computed.of("mean", common.mean())
                    .and("se", common.se())
                    .and("Q", common.q())
                    .and("df", common.df())
                    .and("I2_percent", 100 * common.i2())
                    .and("H2", common.h2())
                    .and("p_Q", common.pOfQ());
        });
        ROWS.put("pool-bcg-dl", in -> mean(random(in, BetweenVariance.DERSIMONIAN_LAIRD)));
        ROWS.put("pool-bcg-pm", in -> mean(random(in, BetweenVariance.PAULE_MANDEL)));
        ROWS.put("pool-bcg-reml", in -> mean(random(in, BetweenVariance.RESTRICTED_LIKELIHOOD)));
        ROWS.put("pool-bcg-hk", in -> {
            var random = random(in, BetweenVariance.RESTRICTED_LIKELIHOOD);
            var hk = random.hartungKnapp();
            return Computed.of("q", random.q())
                    .and("se_hk", hk.se())
                    .and("df", hk.df())
                    .and("lo", "hi", hk.interval(0.95));
        });
        ROWS.put("pool-bcg-pi", in -> {
            var random = random(in, BetweenVariance.RESTRICTED_LIKELIHOOD);
            return Computed.interval(
                            "k2_lo", "k2_hi", random.furtherSource(0.95).orElseThrow())
                    .and(
                            "k1hk_lo",
                            "k1hk_hi",
                            random.furtherSourceHartungKnapp(0.95).orElseThrow());
        });
        ROWS.put("pool-bcg-qprofile", in -> Computed.interval("lo", "hi", QProfile.of(effects(in), 0.95)));
        ROWS.put("pool-bcg-loo", in -> {
            var sources = effects(in).each().stream()
                    .map(e -> new MeanEstimate(e.value(), Math.sqrt(e.variance()), Double.POSITIVE_INFINITY))
                    .toList();
            var means = several(sources).leaveOneOut().stream()
                    .mapToDouble(RandomEffects::mean)
                    .toArray();
            return new Computed()
                    .and("means", means)
                    .and("min", Arrays.stream(means).min().orElseThrow())
                    .and("max", Arrays.stream(means).max().orElseThrow());
        });
        ROWS.put("pool-bcg-lor", in -> {
            var common = CommonEffect.of(effects(in));
            var random = random(in, BetweenVariance.MAXIMUM_LIKELIHOOD);
            return Computed.of("fe_mean", common.mean())
                    .and("fe_se", common.se())
                    .and("ml_mean", random.mean())
                    .and("ml_se", random.se())
                    .and("ml_tau2", random.tau2());
        });
        ROWS.put("pool-means-k4", in -> {
            var sources = in.moments().stream().map(Moments::estimate).toList();
            var pool = several(sources);
            return Computed.of("Q", pool.common().q())
                    .and("tau2_DL", tau2(pool, BetweenVariance.DERSIMONIAN_LAIRD))
                    .and("tau2_PM", tau2(pool, BetweenVariance.PAULE_MANDEL))
                    .and("tau2_REML", tau2(pool, BetweenVariance.RESTRICTED_LIKELIHOOD))
                    .and("mean_REML", pool.random().mean())
                    .and("se", pool.random().se())
                    .and("hk_q", pool.random().q())
                    .and("hk_lo", "hk_hi", pool.random().hartungKnapp().interval(0.95))
                    .and("pi_lo", "pi_hi", pool.furtherSource(0.95))
                    .and("v", sources.stream().mapToDouble(s -> s.se() * s.se()).toArray());
        });
        ROWS.put("pool-hk-too-narrow", in -> {
            var random = random(in, BetweenVariance.RESTRICTED_LIKELIHOOD);
            return Computed.of("tau2_REML", random.tau2())
                    .and("q", random.q())
                    .and("hk_lo", "hk_hi", random.hartungKnapp().interval(0.95))
                    .and("mod_lo", "mod_hi", random.modifiedHartungKnapp().interval(0.95));
        });
        ROWS.put("pool-k2", in -> {
            var common = CommonEffect.of(effects(in));
            var random = random(in, BetweenVariance.DERSIMONIAN_LAIRD);
            return Computed.of("fe_mean", common.mean())
                    .and("fe_se", common.se())
                    .and("Q", common.q())
                    .and("tau2", random.tau2())
                    .and("re_mean", random.mean())
                    .and("re_se", random.se())
                    .and("hk_lo", "hk_hi", random.hartungKnapp().interval(0.95));
        });
        ROWS.put("local-vs-pooled", in -> {
            var pool = pool(in.at("sources"));
            var d = MeanDifference.welch(local(in), pool.mean());
            return Computed.of("pooled_mean", pool.mean().mean())
                    .and("se_pooled", pool.mean().se())
                    .and("diff", d.value())
                    .and("se", d.se())
                    .and("df", d.df())
                    .and("lo", "hi", d.interval(0.95));
        });
        ROWS.put("local-vs-pooled-predictive", in -> {
            var interval = pool(in.at("sources")).furtherObservedMean(local(in), 0.95);
            return Computed.interval("lo", "hi", interval)
                    .and("inside", interval.contains(local(in).mean()) ? 1 : 0);
        });
    }

    private PoolRows() {}

    private static Effects effects(Row in) {
        return Effects.of(in.numbers("y"), in.numbers("v"));
    }

    private static RandomEffects random(Row in, BetweenVariance method) {
        return RandomEffects.of(effects(in), method);
    }

    private static Computed mean(RandomEffects random) {
        return Computed.of("tau2", random.tau2()).and("mean", random.mean()).and("se", random.se());
    }

    private static double tau2(Pool.Several pool, BetweenVariance method) {
        return pool.tau2().getOrDefault(method, Double.NaN);
    }

    private static Pool.Several pool(Row sources) {
        return several(sources.moments().stream().map(Moments::estimate).toList());
    }

    private static Pool.Several several(List<MeanEstimate> sources) {
        return (Pool.Several) Pool.of(sources).orElseThrow();
    }

    private static MeanEstimate local(Row in) {
        var local = in.at("local");
        return new Moments(local.d("mean"), local.d("sd"), local.i("n")).estimate();
    }
}
