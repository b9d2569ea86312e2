package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.BookRows;
import comparand.support.Built;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The way back from a number: every step in the workbook, in order, and nothing in it that had no part. */
class TrailsTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the trail sheet holds every step of every value, numbered from 1")
    void everyStep(Built built) {
        var rows = BookRows.tables(built.folder().resolve(Libraries.WORKBOOK)).stream()
                .filter(r -> r.table().equals("Trail"))
                .collect(Collectors.groupingBy(r -> r.text("Id")));
        var values = Built.all(built.results().get("comparands"));

        assertThat(rows).hasSameSizeAs(values);
        assertThat(values).allSatisfy(value -> {
            var steps = Built.all(value.get("steps"));
            var own = rows.getOrDefault(value.get("id").asText(), List.of());
            assertThat(own.stream().map(r -> r.text("What was done")))
                    .containsExactlyElementsOf(steps.stream()
                            .map(s -> s.get("text").asText().replace('\u00a0', ' '))
                            .toList());
            for (int i = 0; i < own.size(); i++) {
                assertThat(own.get(i).text("Step")).isEqualTo(String.valueOf(i + 1));
            }
        });
    }

    @ParameterizedTest
    @CsvSource({
        "pressure-drop/quillane-15/1.0 L/min, p_in_mmhg p_out_mmhg",
        "bubble-volume-reduction/quillane-15/1.0 L/min, volume_down_nl volume_up_nl"
    })
    @DisplayName("a computed value names the columns that its formula uses, and no others")
    void columns(String value, String columns) {
        var computed = step(Built.demo().comparand(value), "computed");

        assertThat(computed.get("facts").get("columns").asText().split(", "))
                .containsExactlyInAnyOrder(columns.split(" "));
    }

    @Test
    @DisplayName("a step that changes the number names what comes out of it")
    void results() {
        assertThat(step(Built.demo().comparand("B13"), "unit").get("text").asText())
                .contains("69.7559");
        assertThat(step(Built.demo().comparand("B24"), "variant").get("text").asText())
                .contains("9.3");
        assertThat(step(Built.demo().comparand("B11"), "parts").get("text").asText())
                .contains("53");
    }

    private static JsonNode step(JsonNode value, String kind) {
        return Built.all(value.get("steps")).stream()
                .filter(s -> s.get("kind").asText().equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step " + kind));
    }
}
