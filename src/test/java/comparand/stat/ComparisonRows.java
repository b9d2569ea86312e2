package comparand.stat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Rows on differences, ratios and margins. */
final class ComparisonRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("onesample-wafer", in -> {
            var m = Moments.of(in.numbers("data"));
            return Computed.of("mean", m.mean())
                    .and("sd", m.sd())
                    .and("t", MeanDifference.from(m.estimate(), in.d("point")).t());
        });
        ROWS.put("welch-auto83b", in -> {
            var w = welch(in);
            // the t of one common spread is, up to its sign, the root of F between the two groups
            var common = OneWay.ofMoments(List.of(in.moments(1), in.moments(2)));
            return Computed.of("t_welch", w.t())
                    .and("df", w.df())
                    .and("t_pooled", Math.signum(w.value()) * Math.sqrt(common.f()));
        });
        ROWS.put("welch-ehandbook-731", in -> {
            var a = Moments.of(in.numbers("a"));
            var b = Moments.of(in.numbers("b"));
            var w = MeanDifference.welch(a.estimate(), b.estimate());
            return Computed.of("t", w.t())
                    .and("df", w.df())
                    .and("m1", a.mean())
                    .and("sd1", a.sd())
                    .and("m2", b.mean())
                    .and("sd2", b.sd());
        });
        ROWS.put("welch-ci", in -> {
            var w = welch(in);
            return Computed.of("diff", w.value())
                    .and("se", w.se())
                    .and("df", w.df())
                    .and("t", w.t())
                    .and("p", w.p())
                    .and("lo", "hi", w.interval(0.95));
        });
        ROWS.put("ratio-of-means", in -> {
            var r = RatioOfMeans.of(in.moments(1).estimate(), in.moments(2).estimate())
                    .orElseThrow();
            return Computed.of("ratio", r.value())
                    .and("se_log", r.logarithm().se())
                    .and("df", r.logarithm().df())
                    .and("lo", "hi", r.interval(0.95));
        });
        ROWS.put("hedges-g", in -> {
            var g = HedgesG.of(in.moments(1), in.moments(2)).orElseThrow();
            return Computed.of("sp", g.pooledSd())
                    .and("d", g.d())
                    .and("se_d", g.seOfD())
                    .and("J", g.correction())
                    .and("g", g.g())
                    .and("se_g", g.seOfG());
        });
        ROWS.put("hedges-g-exactJ", in -> {
            var g = HedgesG.of(in.moments(1), in.moments(2)).orElseThrow();
            double printed = HedgesG.approximateCorrection(in.i("n1") + in.i("n2") - 2);
            return Computed.of("sp", g.pooledSd())
                    .and("d", g.d())
                    .and("J", printed)
                    .and("Jexact", g.correction())
                    .and("g", printed * g.d())
                    .and("se_d", g.seOfD())
                    .and("se_g", printed * g.seOfD());
        });
        ROWS.put("tost-welch", in -> {
            var w = welch(in);
            var t = TwoOneSided.of(w, margins(in), in.d("alpha"));
            return Computed.of("p_lower", t.pLower())
                    .and("p_upper", t.pUpper())
                    .and("p", t.p())
                    .and("ci90_lo", "ci90_hi", t.interval())
                    .and("df", w.df());
        });
        ROWS.put("tost-raw", in -> {
            var w = MeanDifference.welch(
                    Moments.of(in.numbers("a")).estimate(),
                    Moments.of(in.numbers("b")).estimate());
            var t = TwoOneSided.of(w, margins(in), 0.05);
            return Computed.of("p", t.p())
                    .and("t_lower", t.tLower())
                    .and("p_lower", t.pLower())
                    .and("t_upper", t.tUpper())
                    .and("p_upper", t.pUpper());
        });
        ROWS.put("tost-onesample", in -> {
            var d = MeanDifference.from(Moments.of(in.numbers("data")).estimate(), in.d("point"));
            var t = TwoOneSided.of(d, margins(in), 0.05);
            return Computed.of("p_lower", t.pLower())
                    .and("p_upper", t.pUpper())
                    .and("p", t.p())
                    .and("ci90_lo", "ci90_hi", t.interval());
        });
        ROWS.put("holm", in -> {
            var adjusted = Holm.adjust(DoubleStream.of(in.numbers("p")).boxed().toList());
            var computed = new Computed();
            IntStream.range(0, adjusted.size()).forEach(k -> computed.and(String.valueOf(k), adjusted.get(k)));
            return computed;
        });
    }

    private ComparisonRows() {}

    private static MeanDifference welch(Row in) {
        return MeanDifference.welch(in.moments(1).estimate(), in.moments(2).estimate());
    }

    private static Interval margins(Row in) {
        return new Interval(in.d("margin_lo"), in.d("margin_hi"));
    }
}
