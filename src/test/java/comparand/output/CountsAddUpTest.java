package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Built;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows by hospital, device and step are the rows that were kept: none is lost between the two, none counted twice. */
class CountsAddUpTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the rows of all devices and hospitals are those the files kept")
    void rowsOfDevicesAreTheRowsKept(Built built) {
        var log = built.results().get("row-log");
        var kept = sums(Built.all(log.get("files")), "kept");

        assertThat(kept).isNotEmpty();
        assertThat(sums(counts(log, true), "rows")).isEqualTo(kept);
    }

    @Test
    @DisplayName("on a bench where every file has steps, the rows at the steps are all rows of a device")
    void rowsAtStepsAreTheRowsOfTheDevice() {
        var log = Built.demo().results().get("row-log");
        var bench = sums(counts(log, false), "rows");

        assertThat(bench).isNotEmpty();
        assertThat(sums(counts(log, true), "rows")).containsAllEntriesOf(bench);
    }

    private static List<JsonNode> counts(JsonNode log, boolean allSteps) {
        return Built.all(log.get("counts")).stream()
                .filter(c -> c.get("step").asText().isEmpty() == allSteps)
                .toList();
    }

    private static Map<String, Integer> sums(List<JsonNode> nodes, String of) {
        return nodes.stream()
                .collect(Collectors.groupingBy(
                        n -> n.get("study").asText(),
                        Collectors.summingInt(n -> n.get(of).asInt())));
    }
}
