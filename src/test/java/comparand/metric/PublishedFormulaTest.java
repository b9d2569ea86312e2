package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import comparand.unit.Printed;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rows of {@code published/formulas.yaml}, each computed through the catalogue; and constants beside them. */
class PublishedFormulaTest {

    private static final Path ROWS = Path.of("src/test/resources/published/formulas.yaml");

    private static Stream<JsonNode> rows() throws IOException {
        return StreamSupport.stream(new YAMLMapper().readTree(ROWS.toFile()).spliterator(), false);
    }

    @TestFactory
    Stream<DynamicTest> everyRowComesOut() throws IOException {
        return rows().map(row -> dynamicTest(
                "%s: %s is %s (%s; %s)"
                        .formatted(
                                row.get("id").asText(),
                                row.get("metric").asText(),
                                row.get("result").asText(),
                                row.get("obtained").asText(),
                                row.get("source").asText()),
                () -> comesOut(row)));
    }

    private static void comesOut(JsonNode row) {
        var metric = Computed.metric(row.get("metric").asText());
        var computed = Computed.from();
        row.get("from").forEach(q -> computed.with(q.asText()));
        row.path("under")
                .properties()
                .forEach(e -> computed.under(e.getKey(), e.getValue().asText()));
        row.path("where")
                .properties()
                .forEach(e -> computed.where(
                        Catalogue.shipped().condition(e.getKey()).orElseThrow(),
                        e.getValue().asText()));
        var printed = Printed.of(row.get("result").asText());
        double allowed = row.has("within")
                ? Printed.of(row.get("within").asText()).asDifferenceIn(metric.unit())
                : printed.halfUnitIn(metric.unit()) * (1 + 1e-6);

        assertThat(computed.value(metric.id())).isCloseTo(printed.in(metric.unit()), within(allowed));
    }

    @Test
    void theRowsAreManyAndEachSaysWhereItIsFrom() throws IOException {
        assertThat(rows()).hasSizeGreaterThan(100).allSatisfy(row -> {
            assertThat(row.get("obtained").asText()).isIn("published", "computed");
            assertThat(row.get("source").asText()).isNotBlank();
        });
        assertThat(rows().map(r -> r.get("id").asText())).doesNotHaveDuplicates();
        assertThat(rows().filter(r -> r.get("obtained").asText().equals("published")))
                .hasSizeGreaterThan(20);
    }

    @Test
    @DisplayName("theoretical Hüfner constant: 4 × 22 391 mL / 64 458 g = 1.3895 mL/g, 1.3909 with an ideal gas"
            + " (published as 1.39; Gorelov, Anaesthesia 2004;59:97, from memory)")
    void theoreticalHufnerConstant() {
        assertThat(4 * 22391.0 / 64458).isCloseTo(1.3895, within(0.00005));
        assertThat(4 * 22414.0 / 64458).isCloseTo(1.3909, within(0.00005));
        assertThat(OxygenContent.HUFNER.words()).contains("1.39");
    }

    @Test
    @DisplayName("mean of three reductions, 85, 70 and 92 %: 82.333 %; the ratio of sums is 89.626 % (computed)")
    void meanOfReductionsIsNotTheRatioOfSums() {
        var runs = Stream.of("12000;1800", "800;240", "30000;2400")
                .map(r -> r.split(";", -1))
                .mapToDouble(r -> Computed.from("bubble-count-upstream=" + r[0], "bubble-count-downstream=" + r[1])
                        .value("bubble-count-reduction"));

        assertThat(runs.average().orElseThrow()).isCloseTo(82.333, within(0.0005));
    }

    @Test
    @DisplayName("viscosity of 28 °C and 25 % over 37 °C and 36 %: 0.92267 (computed, Mockros and Leonard from memory)")
    void viscosityRatio() {
        double cold = Computed.from("temperature=28 °C", "haematocrit=25 %").value("blood-viscosity");
        double warm = Computed.from("temperature=37 °C", "haematocrit=36 %").value("blood-viscosity");

        assertThat(cold / warm).isCloseTo(0.92267, within(0.000005));
    }

    @Test
    @DisplayName("shear rate of 2.3569 Pa at 2.0 mPa·s: 1178.5 1/s (computed)")
    void shearRate() {
        double stress = Computed.from(
                        "blood-viscosity=2.0 mPa·s",
                        "pressure-drop=50 mmHg",
                        "blood-flow=1.0 L/min",
                        "priming-volume=40 mL")
                .value("average-shear-stress");

        assertThat(stress / 0.002).isCloseTo(1178.5, within(0.05));
    }

    @Test
    @DisplayName("carbon dioxide pressure over 863: 760 × 310.15 / 273.15 = 862.95 (computed)")
    void theConstant863() {
        assertThat(760 / GasFlowAtStandardState.dry(37, 760)).isCloseTo(862.95, within(0.005));
    }

    @Test
    @DisplayName("published line VO₂ = 284.34 · FiO₂ (Perfusion 2026, abstract): 142.17 at 0.50, 200 mL/min at 0.70338")
    void publishedUptakeLine() {
        var line = new Line(284.34, 0);

        assertThat(line.at(0.50)).isCloseTo(142.17, within(0.005));
        assertThat(line.inverse(200)).isCloseTo(0.70338, within(0.000005));
    }

    @Test
    @DisplayName("printed factors of temperature correction, 29 to 40 °C (clpmag.com, published)")
    void printedFactors() {
        var rows = new double[][] {
            {29, 0.120, 0.720, 0.560},
            {30, 0.105, 0.750, 0.600},
            {32, 0.075, 0.815, 0.700},
            {34, 0.045, 0.885, 0.805},
            {36, 0.015, 0.960, 0.930},
            {38, -0.015, 1.040, 1.070},
            {40, -0.045, 1.125, 1.225}
        };
        for (var row : rows) {
            var blood = Computed.from(
                            "temperature=%d °C".formatted((int) row[0]), "outlet-pco2=100 mmHg", "outlet-po2=100 mmHg")
                    .under("pco2-temperature-rule", "printed-table")
                    .under("po2-temperature-rule", "printed-table");

            assertThat(blood.value("outlet-pco2-at-blood-temperature")).isCloseTo(100 * row[2], within(1e-9));
            assertThat(blood.value("outlet-po2-at-blood-temperature")).isCloseTo(100 * row[3], within(1e-9));
            assertThat(blood.with("outlet-ph=7.40 [pH]")
                            .under("ph-temperature-rule", "fixed")
                            .value("outlet-ph-at-blood-temperature"))
                    .isCloseTo(7.40 + row[1], within(1e-9));
        }
    }
}
