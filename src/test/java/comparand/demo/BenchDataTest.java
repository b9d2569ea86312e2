package comparand.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The committed raw bench files are those of the generator, and the tool's summaries of them are the scenario's. */
class BenchDataTest {

    private static final Map<String, String> DEVICES =
            Map.of("Q", "quillane-15", "M", "mirrowen-12", "S", "skarrow-kid");

    @Test
    void theCommittedFilesAreThoseOfTheGenerator() throws IOException {
        for (var file : BenchData.files().entrySet()) {
            var committed = Files.readString(
                    Path.of("evidence/studies/bench-norrisgate").resolve(file.getKey()));
            assertThat(committed)
                    .as(file.getKey() + ": run comparand.demo.BenchData")
                    .isEqualTo(file.getValue());
        }
    }

    @TestFactory
    Stream<DynamicTest> theSummariesEqualTheScenarioToThePrintedDigit() {
        var flow = BenchData.FLOW_STEPS.stream()
                .flatMap(s -> Stream.of(
                        summary("pressure-drop", s.device(), s.flow() + " L/min", s.pressure()),
                        summary("oxygen-transfer", s.device(), s.flow() + " L/min", s.oxygen()),
                        summary("carbon-dioxide-transfer", s.device(), s.flow() + " L/min", s.carbonDioxide())));
        var exchanger = BenchData.PERFORMANCE_FACTOR.entrySet().stream()
                .map(e -> summary("performance-factor", e.getKey(), "1.0 L/min", e.getValue()));
        var haemolysis = BenchData.HAEMOLYSIS.entrySet().stream()
                .map(e -> summary("normalised-index-of-haemolysis", e.getKey(), "1.0 L/min", e.getValue()));
        var bubbles = BenchData.BUBBLE_VOLUME.entrySet().stream().map(e -> {
            var device = e.getKey().substring(0, 1);
            var parts = e.getKey().endsWith("OEF") ? "oxygenator + exchanger + filter, " : "oxygenator + exchanger, ";
            return summary(
                    "bubble-volume-reduction", device, (device.equals("M") ? parts : "") + "1.0 L/min", e.getValue());
        });
        return Stream.of(flow, exchanger, haemolysis, bubbles).flatMap(s -> s);
    }

    private static DynamicTest summary(String metric, String device, String group, Target target) {
        var id = "bench-norrisgate/" + metric + "/" + DEVICES.getOrDefault(device, device) + "/" + group;
        return dynamicTest(id + ": " + target.mean() + " (" + target.sd() + ")", () -> {
            JsonNode summary = Built.demo().comparand(id).get("summary");
            assertThat(like(summary.get("value").asDouble(), target.mean())).isEqualTo(target.mean());
            assertThat(like(summary.get("sd").asDouble(), target.sd())).isEqualTo(target.sd());
            assertThat(summary.get("n").asInt()).isEqualTo(6);
        });
    }

    @Test
    void aUnitTestedTwiceCountsOnce() {
        var sizes =
                Built.demo().comparand("pressure-drop/quillane-15/1.0 L/min").get("sizes");

        assertThat(sizes.get("units").asInt()).isEqualTo(6);
        assertThat(sizes.get("runs").asInt()).isEqualTo(7);
    }

    private static String like(double value, String printed) {
        int decimals = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
