package comparand.stat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Rows on moments and on the conversion of printed summaries. */
final class SummaryRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("desc-lottery", in -> moments(in.numbers("data")).and("n", in.numbers("data").length));
        ROWS.put("desc-michelson", in -> moments(in.numbers("data")));
        ROWS.put("desc-numacc4", in -> moments(numAcc(10000000.2, 10000000.1, 10000000.3, 500)));
        ROWS.put("ci-mean-zarr13", in -> {
            var m = new Moments(in.d("mean"), in.d("sd"), in.i("n"));
            return Computed.of("t", Quantiles.tTwoSided(in.d("level"), m.n() - 1))
                    .and("lo", "hi", m.estimate().interval(in.d("level")));
        });
        ROWS.put(
                "conv-ci-t-cochrane",
                in -> Computed.of("t_width", 2 * SpreadConversion.intervalQuantile(in.i("n"), in.d("level")))
                        .and("sd", interval(in, 0).moments().sd()));
        ROWS.put(
                "conv-ci-z",
                in -> Computed.of("sd", interval(in, 0).moments().sd())
                        .and("se", interval(in, 0).se()));
        ROWS.put("conv-ci-log", in -> {
            var limits = new Interval(in.d("ci_lo"), in.d("ci_hi"));
            var converted = IntervalConversion.of(in.d("gmean"), limits, in.i("n"), in.d("level"), 0)
                    .orElseThrow();
            return Computed.of("log_mean", converted.mean()).and("log_se", converted.se());
        });
        ROWS.put("conv-ci-rounding", in -> {
            double a = in.d("ulp_half_width");
            return Computed.of("se", interval(in, a).se())
                    .and("u_se", SpreadConversion.uncertaintyOfSeFromRoundedLimits(a, in.i("n"), 0.95))
                    .and("relative_percent", 100 * interval(in, a).relativeRounding());
        });
        ROWS.put("conv-p-cochrane", in -> {
            double se = DifferenceConversion.seFromP(in.d("md"), in.d("p_two_sided"), in.i("n1") + in.i("n2") - 2)
                    .orElseThrow();
            return Computed.of("se", se)
                    .and("t", in.d("md") / se)
                    .and("sd", DifferenceConversion.pooledSd(se, in.i("n1"), in.i("n2")));
        });
        ROWS.put("conv-paired-corr-cochrane", in -> {
            double difference = in.d("m1") - in.d("m2");
            double sd = PairedSpread.sdOfDifference(in.d("sd1"), in.d("sd2"), in.d("corr"));
            var d = PairedSpread.standardised(difference, in.d("sd1"), in.d("sd2"), in.d("corr"), in.i("n"));
            return Computed.of("md", difference)
                    .and("se_md", new Moments(difference, sd, in.i("n")).se())
                    .and("smd", d.value())
                    .and("se_smd", d.se());
        });
        ROWS.put(
                "conv-corr-from-change-cochrane",
                in -> Computed.of(
                                "corr_exp",
                                PairedSpread.correlation(in.d("sd_base"), in.d("sd_final"), in.d("sd_change")))
                        .and(
                                "corr_ctl",
                                PairedSpread.correlation(
                                        in.d("sd_base_ctl"), in.d("sd_final_ctl"), in.d("sd_change_ctl"))));
        ROWS.put("conv-wan-xi", in -> {
            var xi = new Computed();
            for (double n : in.numbers("n")) {
                xi.and(String.valueOf((int) n), SpreadConversion.expectedRange((int) n));
            }
            return xi;
        });
        ROWS.put("conv-wan-c3-iqr", in -> afterWan(quartiles(in)));
        ROWS.put("conv-wan-c1-range", in -> afterWan(range(in)));
        ROWS.put("conv-wan-c2-five", in -> afterWan(five(in)));
        ROWS.put("conv-luo-s1", in -> Computed.of("value", range(in).mean()));
        ROWS.put("conv-luo-s2", in -> Computed.of("value", quartiles(in).mean()));
        ROWS.put("conv-luo-s3", in -> Computed.of("value", five(in).mean()));
        ROWS.put("conv-shi-s3-sd", in -> Computed.of("value", five(in).sd()));
        ROWS.put("conv-combine-two", SummaryRows::together);
        ROWS.put("conv-combine-three", SummaryRows::together);
        ROWS.put("conv-se-to-sd", in -> {
            double sd = SpreadConversion.sdFromSe(in.d("se"), in.i("n"));
            return Computed.of("sd", sd)
                    .and(
                            "lo",
                            "hi",
                            new Moments(in.d("mean"), sd, in.i("n")).estimate().interval(in.d("level")));
        });
        ROWS.put("conv-proportion", in -> {
            var p = new Proportion(in.i("events"), in.i("n"));
            return Computed.of("p", p.share())
                    .and("se_wald", p.seForWeight())
                    .and("wilson_lo", "wilson_hi", ProportionInterval.WILSON.of(p.x(), p.n(), 0.95))
                    .and("cp_lo", "cp_hi", ProportionInterval.EXACT.of(p.x(), p.n(), 0.95));
        });
        ROWS.put("conv-proportion-zero", in -> {
            var intervals = new Proportion(in.i("events"), in.i("n")).intervals(0.95);
            var computed = new Computed();
            intervals.forEach(
                    (kind, i) -> computed.and(kind == ProportionInterval.EXACT ? "cp_hi" : "wilson_hi", i.high()));
            return computed;
        });
        ROWS.put("conv-raw-to-log", in -> {
            var logs = Lognormal.logarithms(new Moments(in.d("mean"), in.d("sd"), in.i("n")))
                    .orElseThrow();
            return Computed.of("mean_log", logs.mean()).and("sd_log", logs.sd());
        });
        ROWS.put("guard-sd-range", in -> {
            var computed = new Computed();
            var n = in.numbers("n");
            IntStream.range(0, n.length)
                    .forEach(k -> computed.and(
                            "lower." + k, "upper." + k, SpreadPlausibility.fromRange(in.d("range"), (int) n[k])));
            return computed;
        });
    }

    private SummaryRows() {}

    static Computed moments(double... data) {
        var m = Moments.of(data);
        return Computed.of("mean", m.mean()).and("sd", m.sd());
    }

    /** A first value, then pairs of a lower and a higher one. */
    static double[] numAcc(double first, double low, double high, int pairs) {
        var data = new double[1 + 2 * pairs];
        data[0] = first;
        for (int k = 0; k < pairs; k++) {
            data[1 + 2 * k] = low;
            data[2 + 2 * k] = high;
        }
        return data;
    }

    private static IntervalConversion.Converted interval(Row in, double rounding) {
        var limits = new Interval(in.d("ci_lo"), in.d("ci_hi"));
        double middle = (limits.low() + limits.high()) / 2;
        return IntervalConversion.of(middle, limits, in.i("n"), in.d("level", 0.95), rounding)
                .orElseThrow();
    }

    private static Computed together(Row in) {
        var all = Subgroups.together(List.copyOf(in.moments()));
        return Computed.of("n", all.n()).and("mean", all.mean()).and("sd", all.sd());
    }

    private static Computed afterWan(MedianSummary summary) {
        return Computed.of("mean", summary.meanAfterWan()).and("sd", summary.sdAfterWan());
    }

    private static MedianSummary range(Row in) {
        return new MedianAndRange(in.d("min"), in.d("median"), in.d("max"), in.i("n"));
    }

    private static MedianSummary quartiles(Row in) {
        return new MedianAndQuartiles(in.d("q1"), in.d("median"), in.d("q3"), in.i("n"));
    }

    private static MedianSummary five(Row in) {
        double median = in.d("median", (in.d("q1") + in.d("q3")) / 2);
        return new FiveNumbers(in.d("min"), in.d("q1"), median, in.d("q3"), in.d("max"), in.i("n"));
    }
}
