package comparand.stat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Rows on pairs, resampling and regression. */
final class PairedAndLineRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("reduction-log", in -> {
            var r = pairs(in, "pre", "post").geometric(0.95).orElseThrow();
            return Computed.of("reduction", r.value()).and("lo", "hi", r.interval());
        });
        ROWS.put("reduction-ratio-of-sums", in -> {
            var pairs = pairs(in, "pre", "post");
            var r = pairs.ofSums(0.95).orElseThrow();
            return Computed.of("reduction_ratio_of_sums", r.value())
                    .and("se", pairs.ratioOfSums().se())
                    .and("lo", "hi", r.interval())
                    .and("mean_of_individual_reductions", pairs.meanOfEach(0.95).value());
        });
        ROWS.put("reduction-fieller", in -> {
            var pairs = pairs(in, "den", "num");
            return Computed.of("ratio", pairs.ratioOfSums().mean())
                    .and("lo", "hi", pairs.fieller(0.95).orElseThrow());
        });
        ROWS.put(
                "bca-exhaustive-ratio",
                in -> exhaustive(in.groups("pairs_pre_post").toArray(double[][]::new)));
        ROWS.put("bca-acceleration-spatial", in -> {
            double[] data = in.numbers("data");
            ToDoubleFunction<int[]> variance = cases -> {
                var drawn = Arrays.stream(cases).mapToDouble(c -> data[c]).toArray();
                var m = Moments.of(drawn);
                return m.sd() * m.sd() * (m.n() - 1) / m.n();
            };
            return Computed.of(
                            "theta",
                            variance.applyAsDouble(
                                    IntStream.range(0, data.length).toArray()))
                    .and("a", BcaBootstrap.acceleration(BcaBootstrap.leftOut(data.length, variance)));
        });
        ROWS.put(
                "ratio-city",
                in -> Computed.of("value", pairs(in, "u", "x").ratioOfSums().mean()));
        ROWS.put("paired-sleep", in -> {
            double[] a = in.numbers("a");
            double[] b = in.numbers("b");
            var differences =
                    IntStream.range(0, a.length).mapToDouble(k -> a[k] - b[k]).toArray();
            var d = MeanDifference.from(Moments.of(differences).estimate(), 0);
            return Computed.of("mean_diff", d.value()).and("t", d.t()).and("p", d.p());
        });
        ROWS.put("reg-norris", in -> {
            var line = StraightLine.through(in.numbers("x"), in.numbers("y"));
            return Computed.of("b0", line.at(0).mean())
                    .and("b1", line.slope())
                    .and("se_b0", line.at(0).se())
                    .and("se_b1", line.slopeSe())
                    .and("s", line.residualSd())
                    .and("r2", line.rSquared());
        });
        ROWS.put("reg-gum-h3", in -> {
            double t0 = in.d("t0");
            var line = StraightLine.through(
                    Arrays.stream(in.numbers("t")).map(t -> t - t0).toArray(), in.numbers("b"));
            var at = line.at(in.d("x_new") - t0);
            return Computed.of("y1", line.at(0).mean())
                    .and("s_y1", line.at(0).se())
                    .and("y2", line.slope())
                    .and("s_y2", line.slopeSe())
                    .and("r", line.correlationOfCoefficients())
                    .and("s", line.residualSd())
                    .and("b30", at.mean())
                    .and("u_b30", at.se());
        });
        ROWS.put("reg-cars-bands", in -> {
            var line = StraightLine.through(in.numbers("x"), in.numbers("y"));
            var at = line.supportedAt(in.d("x_new")).orElseThrow();
            return Computed.of("fit", at.mean())
                    .and("ci_lo", "ci_hi", at.interval(in.d("level")))
                    .and("pi_lo", "pi_hi", line.prediction(in.d("x_new"), 1, in.d("level")));
        });
        ROWS.put("reg-cars-inverse", in -> {
            var line = StraightLine.through(in.numbers("x"), in.numbers("y"));
            double y = in.d("y0");
            double level = in.d("level");
            return Computed.of("x_hat", InversePrediction.place(line, y))
                    .and(
                            "line_lo",
                            "line_hi",
                            InversePrediction.ofFixed(line, y, level).orElseThrow())
                    .and(
                            "newobs_lo",
                            "newobs_hi",
                            InversePrediction.ofMean(line, y, 1, level).orElseThrow());
        });
        ROWS.put("reg-adjust-flow", in -> {
            var line = StraightLine.through(in.numbers("flow"), in.numbers("y"));
            var at = line.supportedAt(in.d("benchmark_flow")).orElseThrow();
            return Computed.of("estimate", at.mean())
                    .and("se", at.se())
                    .and("df", at.df())
                    .and("lo", "hi", at.interval(in.d("level")))
                    .and("slope", line.slope())
                    .and("s", line.residualSd());
        });
    }

    private PairedAndLineRows() {}

    private static PairedReduction pairs(Row in, String pre, String post) {
        return new PairedReduction(in.numbers(pre), in.numbers(post));
    }

    /** All n^n ways to draw n of n pairs, in place of some. */
    private static Computed exhaustive(double[]... pairs) {
        int n = pairs.length;
        ToDoubleFunction<int[]> ratio =
                cases -> Arrays.stream(cases).mapToDouble(c -> pairs[c][1]).sum()
                        / Arrays.stream(cases).mapToDouble(c -> pairs[c][0]).sum();
        double[] all = new double[(int) Math.pow(n, n)];
        for (int k = 0; k < all.length; k++) {
            int[] drawn = new int[n];
            for (int i = 0, rest = k; i < n; i++, rest /= n) {
                drawn[i] = rest % n;
            }
            all[k] = ratio.applyAsDouble(drawn);
        }
        double estimate = ratio.applyAsDouble(IntStream.range(0, n).toArray());
        var limits = BcaBootstrap.limits(all, estimate, BcaBootstrap.leftOut(n, ratio), 0.95)
                .orElseThrow();
        return Computed.of("theta", estimate)
                .and("z0", limits.z0())
                .and("a", limits.a())
                .and("a1", limits.lowShare())
                .and("a2", limits.highShare())
                .and("lo", "hi", limits.interval());
    }
}
