package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rows of {@code published/statistics.yaml}: each has its source, and a tolerance that the print allows. */
class PublishedStatisticsTest {

    private static final Path ROWS = Path.of("src/test/resources/published/statistics.yaml");

    private static final Map<String, Function<JsonNode, Map<String, Double>>> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("desc-lottery", in -> moments(numbers(in.get("data"))));
        COMPUTED.put("desc-michelson", in -> moments(numbers(in.get("data"))));
        COMPUTED.put("desc-numacc4", in -> moments(numAcc4()));
        COMPUTED.put("ci-mean-zarr13", in -> {
            var m = new Moments(d(in, "mean"), d(in, "sd"), i(in, "n"));
            var ci = m.estimate().interval(d(in, "level"));
            return Map.of("t", Quantiles.tTwoSided(d(in, "level"), m.n() - 1), "lo", ci.low(), "hi", ci.high());
        });
        COMPUTED.put("onesample-wafer", in -> {
            var m = Moments.of(numbers(in.get("data")));
            return Map.of(
                    "mean",
                    m.mean(),
                    "sd",
                    m.sd(),
                    "t",
                    MeanDifference.from(m.estimate(), d(in, "point")).t());
        });
        COMPUTED.put(
                "conv-ci-t-cochrane",
                in -> Map.of("t_width", 2 * Quantiles.tTwoSided(d(in, "level"), i(in, "n") - 1), "sd", sdFromCi(in)));
        COMPUTED.put("conv-ci-z", in -> Map.of("sd", sdFromCi(in), "se", sdFromCi(in) / Math.sqrt(i(in, "n"))));
        COMPUTED.put("conv-wan-xi", in -> {
            var xi = new LinkedHashMap<String, Double>();
            in.get("n").forEach(n -> xi.put(n.asText(), SpreadConversion.expectedRange(n.asInt())));
            return xi;
        });
        COMPUTED.put(
                "conv-wan-c3-iqr",
                in -> Map.of("sd", SpreadConversion.sdFromQuartiles(d(in, "q1"), d(in, "q3"), i(in, "n"))));
        COMPUTED.put(
                "conv-luo-s1",
                in -> Map.of(
                        "value",
                        SpreadConversion.meanFromRange(d(in, "min"), d(in, "median"), d(in, "max"), i(in, "n"))));
        COMPUTED.put(
                "conv-luo-s2",
                in -> Map.of(
                        "value",
                        SpreadConversion.meanFromQuartiles(d(in, "q1"), d(in, "median"), d(in, "q3"), i(in, "n"))));
        COMPUTED.put("conv-se-to-sd", in -> {
            double sd = SpreadConversion.sdFromSe(d(in, "se"), i(in, "n"));
            var ci = new Moments(d(in, "mean"), sd, i(in, "n")).estimate().interval(d(in, "level"));
            return Map.of("sd", sd, "lo", ci.low(), "hi", ci.high());
        });
        COMPUTED.put("conv-proportion", PublishedStatisticsTest::proportion);
        COMPUTED.put("conv-proportion-zero", PublishedStatisticsTest::proportion);
        COMPUTED.put("conv-ci-rounding", in -> {
            double se = sdFromCi(in) / Math.sqrt(i(in, "n"));
            double u = SpreadConversion.uncertaintyOfSeFromRoundedLimits(d(in, "ulp_half_width"), i(in, "n"), 0.95);
            return Map.of("se", se, "u_se", u, "relative_percent", 100 * u / se);
        });
        COMPUTED.put("welch-auto83b", in -> {
            var w = welch(in);
            return Map.of("t_welch", w.t(), "df", w.df());
        });
        COMPUTED.put("welch-ehandbook-731", in -> {
            var a = Moments.of(numbers(in.get("a")));
            var b = Moments.of(numbers(in.get("b")));
            var w = MeanDifference.of(a.estimate(), b.estimate());
            return Map.of("t", w.t(), "df", w.df(), "m1", a.mean(), "sd1", a.sd(), "m2", b.mean(), "sd2", b.sd());
        });
        COMPUTED.put("welch-ci", in -> {
            var w = welch(in);
            var ci = w.interval(0.95);
            return Map.of(
                    "diff", w.value(), "se", w.se(), "df", w.df(), "t", w.t(), "p", w.p(), "lo", ci.low(), "hi",
                    ci.high());
        });
        COMPUTED.put("point-with-rounding", in -> {
            var local = new Moments(d(in, "local_mean"), d(in, "local_sd"), i(in, "local_n")).estimate();
            var wide = MeanDifference.from(
                    local.widenedBy(d(in, "half_width")),
                    Double.parseDouble(in.get("figure").asText()));
            var ci = wide.interval(0.95);
            return Map.of(
                    "diff", wide.value(),
                    "u_figure", d(in, "half_width") / Math.sqrt(3),
                    "u_c", wide.se(),
                    "veff", wide.df(),
                    "lo", ci.low(),
                    "hi", ci.high());
        });
        COMPUTED.put(
                "gum-rect",
                in -> Map.of(
                        "u",
                        new MeanEstimate(0.58, 0, Double.POSITIVE_INFINITY)
                                .widenedBy(d(in, "half_width"))
                                .se()));
        COMPUTED.put("three-intervals", in -> {
            var m = new Moments(d(in, "mean"), d(in, "sd"), i(in, "n"));
            return Map.of(
                    "ci_half", m.estimate().interval(d(in, "level")).halfWidth(),
                    "pi_half", m.predictionForOneMore(d(in, "level")).halfWidth());
        });
        COMPUTED.put("holm", in -> {
            var p = StreamSupport.stream(in.get("p").spliterator(), false)
                    .map(JsonNode::asDouble)
                    .toList();
            var adjusted = new LinkedHashMap<String, Double>();
            var values = Holm.adjust(p);
            IntStream.range(0, values.size()).forEach(k -> adjusted.put(String.valueOf(k), values.get(k)));
            return adjusted;
        });
    }

    @Test
    void everyRowIsComputedAndEveryComputationHasItsRow() throws IOException {
        assertThat(rows().map(r -> r.get("id").asText()).toList())
                .containsExactlyInAnyOrderElementsOf(COMPUTED.keySet());
    }

    @TestFactory
    Stream<DynamicTest> everyRowComesOutWithinItsTolerance() throws IOException {
        return rows().map(row ->
                dynamicTest(row.get("id").asText() + " (" + row.get("source").asText() + ")", () -> {
                    assertThat(row.get("obtained").asText()).isNotBlank();
                    var computed = COMPUTED.getOrDefault(row.get("id").asText(), in -> Map.of())
                            .apply(row.get("inputs"));
                    var expected = row.get("expected");
                    var names = expected.isArray()
                            ? IntStream.range(0, expected.size())
                                    .mapToObj(String::valueOf)
                                    .toList()
                            : fieldNames(expected);
                    assertThat(names).isNotEmpty();
                    for (var name : names) {
                        double value = expected.isArray()
                                ? expected.get(Integer.parseInt(name)).asDouble()
                                : expected.get(name).asDouble();
                        assertThat(computed).containsKey(name);
                        assertThat(computed.getOrDefault(name, Double.NaN))
                                .as(name)
                                .isCloseTo(value, within(tolerance(row, name)));
                    }
                }));
    }

    private static double tolerance(JsonNode row, String name) {
        var tolerance = row.get("tolerance");
        return tolerance.isNumber() ? tolerance.asDouble() : tolerance.get(name).asDouble();
    }

    private static List<String> fieldNames(JsonNode node) {
        return node.properties().stream().map(Map.Entry::getKey).toList();
    }

    private static Stream<JsonNode> rows() throws IOException {
        return StreamSupport.stream(new YAMLMapper().readTree(ROWS.toFile()).spliterator(), false);
    }

    private static Map<String, Double> moments(double... data) {
        var m = Moments.of(data);
        return Map.of("n", (double) m.n(), "mean", m.mean(), "sd", m.sd());
    }

    private static double[] numAcc4() {
        var data = new double[1001];
        data[0] = 10000000.2;
        for (int k = 0; k < 500; k++) {
            data[1 + 2 * k] = 10000000.1;
            data[2 + 2 * k] = 10000000.3;
        }
        return data;
    }

    private static double sdFromCi(JsonNode in) {
        return SpreadConversion.sdFromInterval(
                new Interval(d(in, "ci_lo"), d(in, "ci_hi")),
                i(in, "n"),
                in.path("level").asDouble(0.95));
    }

    private static Map<String, Double> proportion(JsonNode in) {
        var wilson = ProportionInterval.WILSON.of(i(in, "events"), i(in, "n"), 0.95);
        var exact = ProportionInterval.EXACT.of(i(in, "events"), i(in, "n"), 0.95);
        return Map.of(
                "wilson_lo", wilson.low(), "wilson_hi", wilson.high(), "cp_lo", exact.low(), "cp_hi", exact.high());
    }

    private static MeanDifference welch(JsonNode in) {
        return MeanDifference.of(
                new Moments(d(in, "m1"), d(in, "sd1"), i(in, "n1")).estimate(),
                new Moments(d(in, "m2"), d(in, "sd2"), i(in, "n2")).estimate());
    }

    private static double[] numbers(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    private static double d(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    private static int i(JsonNode in, String name) {
        return in.get(name).asInt();
    }
}
