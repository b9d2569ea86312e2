package comparand.stat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rows of {@code published/statistics.yaml}: each has its source, and a tolerance that the print allows. */
class PublishedStatisticsTest {

    private static final Path ROWS = Path.of("src/test/resources/published/statistics.yaml");

    private static final Map<String, Function<Row, Computed>> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.putAll(SummaryRows.ROWS);
        COMPUTED.putAll(CentreRows.ROWS);
        COMPUTED.putAll(PairedAndLineRows.ROWS);
        COMPUTED.putAll(ComparisonRows.ROWS);
        COMPUTED.putAll(UncertaintyRows.ROWS);
        COMPUTED.putAll(PoolRows.ROWS);
        COMPUTED.putAll(PlanRows.ROWS);
    }

    @Test
    void everyRowIsComputedAndEveryComputationHasItsRow() {
        assertThat(rows().map(r -> r.get()[0])).hasSize(97).containsExactlyInAnyOrderElementsOf(COMPUTED.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void everyNumberOfARowComesOutWithinItsTolerance(String id, JsonNode row) {
        assertThat(row.required("source").asText()).isNotBlank();
        assertThat(row.required("obtained").asText()).isNotBlank();

        var computed = computed(id, row);

        var expected = row.required("expected");
        assertThat(expected.size()).isPositive();
        assertThat(computed.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        expected.properties().stream().map(Map.Entry::getKey).toList());
        expected.properties()
                .forEach(e -> assertThat(computed.getOrDefault(e.getKey(), Double.NaN))
                        .as("%s of %s", e.getKey(), row.required("source").asText())
                        .isCloseTo(e.getValue().asDouble(), within(tolerance(row, e.getKey()))));
    }

    static Map<String, Double> computed(String id, JsonNode row) {
        return COMPUTED.getOrDefault(id, in -> new Computed())
                .apply(new Row(row.required("inputs")))
                .values();
    }

    private static double tolerance(JsonNode row, String name) {
        var tolerance = row.required("tolerance");
        return tolerance.isNumber()
                ? tolerance.asDouble()
                : tolerance.required(name).asDouble();
    }

    static Stream<Arguments> rows() {
        try {
            return StreamSupport.stream(new YAMLMapper().readTree(ROWS.toFile()).spliterator(), false)
                    .map(row -> Arguments.of(row.required("id").asText(), row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
