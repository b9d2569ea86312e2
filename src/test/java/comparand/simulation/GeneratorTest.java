package comparand.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is drawn is what is said to be true of it. */
class GeneratorTest {

    private static final double MMHG_IN_KPA = 7.50062;
    private static final List<SimulatedLibrary> LIBRARIES =
            IntStream.rangeClosed(1, 800).mapToObj(SimulatedLibrary::of).toList();

    @TempDir
    Path folder;

    /** The law once more, in one expression: ratios of viscosities instead of viscosities. */
    @Test
    void theMeanBehindEveryValueIsThatOfItsConditionsLessTheDifference() {
        for (var library : LIBRARIES) {
            var law = library.world().law();
            for (var p : library.published()) {
                var at = p.at();
                double ratio = at.water()
                        ? 0.69 / Math.exp(-5.64 + 1800.0 / 310 + 2.31 * 0.36)
                        : Math.exp(
                                1800 * (1 / (at.temperature() + 273) - 1.0 / 310) + 0.0693 * (at.haemoglobin() - 12));
                double linear = (at.filter() ? law.laminar() + law.filter() : law.laminar()) * ratio;
                double drop = at.flow() * (linear + law.inertial() * at.flow());
                assertThat(p.mean()).isCloseTo(drop - p.difference(), within(1e-9));
                assertThat(p.local()).isCloseTo(drop, within(1e-9));
            }
        }
    }

    /** Student's interval from what is printed holds the true mean in 95 %, up to four standard errors of the count. */
    @Test
    void whatIsPrintedIsASampleAroundTheTrueMean() throws IOException {
        int held = 0;
        int all = 0;
        var yaml = new YAMLMapper();
        for (var library : LIBRARIES) {
            for (var p : library.published()) {
                if (p.print() == Print.SD) {
                    var value = yaml.readTree(String.join("\n", p.form().record()));
                    int n = Integer.parseInt(value.get("n").asText().split(" ", -1)[0]);
                    double se = mmHg(value.get("spread").get("of")) / Math.sqrt(n);
                    double t = Math.abs(mmHg(value.get("mean")) - p.mean()) / se;
                    held += t <= TDistribution.of(n - 1).inverseCumulativeProbability(0.975) ? 1 : 0;
                    all++;
                }
            }
        }
        assertThat(all).isGreaterThan(1000);
        assertThat((double) held / all).isCloseTo(0.95, within(4 * Math.sqrt(0.95 * 0.05 / all)));
    }

    /** The same of the units of a step and the cases of a hospital, one number each. */
    @Test
    void whatIsMeasuredAtHomeIsASampleAroundTheLaw() {
        var t = new ArrayList<Boolean>();
        for (var library : LIBRARIES) {
            if (library.local().hospitals() <= 1) {
                double step = library.local().steps().isEmpty() ? 5 : 6;
                var own = members(library, r -> !r.present() && (library.world().clinical() || r.at().flow() == step));
                double truth =
                        library.world().law().drop(library.world().usual().atFlow(step));
                double mean = own.stream().mapToDouble(d -> d).average().orElseThrow();
                double squares =
                        own.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
                double se = Math.sqrt(squares / (own.size() - 1) / own.size());
                t.add(Math.abs(mean - truth) / se
                        <= TDistribution.of(own.size() - 1).inverseCumulativeProbability(0.975));
            }
        }
        assertThat(t).hasSizeGreaterThan(400);
        assertThat(t.stream().filter(x -> x).count() / (double) t.size())
                .isCloseTo(0.95, within(4 * Math.sqrt(0.95 * 0.05 / t.size())));
    }

    /** Hospitals and devices: deviations from the truth are none on average, up to four standard errors. */
    @Test
    void hospitalsAddNothingOnAverageAndDevicesDifferAsTheyShould() {
        var hospitals = new ArrayList<Double>();
        var devices = new ArrayList<Double>();
        for (var library : LIBRARIES) {
            var local = library.local();
            double own = mean(members(library, r -> !r.present()));
            if (local.hospitals() >= 3) {
                hospitals.add(own - library.world().law().drop(library.world().usual()));
            }
            if (local.hospitals() <= 1 && local.againstPresent().isPresent()) {
                devices.add(own
                        - mean(members(library, LocalRow::present))
                        - local.againstPresent().getAsDouble());
            }
        }
        for (var deviations : List.of(hospitals, devices)) {
            double mean = mean(deviations);
            double squares = deviations.stream()
                    .mapToDouble(d -> (d - mean) * (d - mean))
                    .sum();
            assertThat(deviations).hasSizeGreaterThan(100);
            assertThat(mean).isCloseTo(0, within(4 * Math.sqrt(squares) / deviations.size()));
        }
    }

    /** The conditions printed are the true ones, or are said to be missing. */
    @Test
    void theFilesSayWhatIsTrue() throws IOException {
        for (var library : LIBRARIES.subList(0, 40)) {
            var root = folder.resolve(String.valueOf(library.number()));
            library.write(root);
            for (var p : library.published()) {
                var source =
                        new YAMLMapper().readTree(Files.readString(root.resolve("sources/" + p.source() + ".yaml")));
                var value = value(source, p.id());
                says(value.get("conditions").get("blood-flow"), p.silence() == Silence.FLOW, p.at().flow());
                var conditions = source.get("conditions");
                says(conditions.get("haemoglobin"), p.silence() == Silence.HAEMOGLOBIN, p.at().haemoglobin());
                says(conditions.get("temperature"), false, p.at().temperature());
                assertThat(conditions.get("test-model").asText().equals("bench-water"))
                        .isEqualTo(p.at().water());
                var parts = value.get("definition").get("parts");
                assertThat(parts.isArray()).isEqualTo(p.silence() != Silence.PARTS);
                assertThat(parts.toString().contains("filter"))
                        .isEqualTo(p.at().filter() && p.silence() != Silence.PARTS);
            }
        }
    }

    private static JsonNode value(JsonNode source, String id) {
        for (var value : source.get("values")) {
            if (value.get("id").asText().equals(id)) {
                return value;
            }
        }
        throw new AssertionError(id);
    }

    private static void says(JsonNode printed, boolean silent, double truth) {
        if (silent) {
            assertThat(printed.asText()).isEqualTo("not reported");
        } else {
            assertThat(Double.parseDouble(printed.asText().split(" ", -1)[0])).isEqualTo(truth);
        }
    }

    /** One number a unit or case: the mean of its rows. */
    private static List<Double> members(SimulatedLibrary library, Predicate<LocalRow> of) {
        var drops = new TreeMap<String, List<Double>>();
        library.local().rows().stream()
                .filter(of)
                .forEach(r -> drops.computeIfAbsent(r.member(), m -> new ArrayList<>())
                        .add(r.drop()));
        return drops.values().stream().map(GeneratorTest::mean).toList();
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }

    private static double mmHg(JsonNode printed) {
        double amount = Double.parseDouble(printed.asText().split(" ", -1)[0]);
        return printed.asText().endsWith("kPa") ? amount * MMHG_IN_KPA : amount;
    }
}
