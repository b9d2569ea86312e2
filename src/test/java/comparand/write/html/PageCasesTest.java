package comparand.write.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import comparand.metric.Tolerance;
import comparand.model.Margin;
import comparand.model.MarginRange;
import comparand.model.Verdict;
import comparand.stat.Holm;
import comparand.stat.Interval;
import comparand.unit.Printed;
import comparand.unit.Rounding;
import comparand.unit.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the scripts of the page judge by is what the stages judge by: the tables of {@code spec/page} that both can answer are
 * answered here by the stages. A browser answers all of them with the scripts.
 */
class PageCasesTest {

    private static final Path TABLES = Path.of("src/test/resources/spec/page");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODES = JSON.getNodeFactory();

    /** The last bits of a product of doubles. */
    private static final double BITS = 1e-12;

    /** The stages' answer to what is given, by the table's file. */
    private static final Map<String, Function<JsonNode, JsonNode>> ANSWERS = Map.of(
            "rounding.json",
            given -> NODES.textNode(
                    Rounding.halfUp(given.get(0).asDouble(), given.get(1).asInt())
                            .toPlainString()),
            "rounding-decimals.json",
            given -> NODES.numberNode(
                    Rounding.decimalsFor(given.get(0).asDouble(), given.get(1).asInt())),
            "verdict.json",
            given -> NODES.textNode(
                    Verdict.of(interval(given.get(0)), margin(given.get(1))).name()),
            "margin-range.json",
            given -> range(MarginRange.of(Verdict.valueOf(given.get(0).asText()), interval(given.get(1)))),
            "tolerance.json",
            given -> NODES.booleanNode(same(given)),
            "holm.json",
            given -> JSON.valueToTree(Holm.adjust(numbers(given.get(0)))));

    static Stream<Arguments> cases() {
        return ANSWERS.keySet().stream().sorted().flatMap(file -> {
            var table = table(file);
            assertThat(table.required("source").asText()).as(file).isNotBlank();
            assertThat(table.required("cases")).as(file).isNotEmpty();
            return StreamSupport.stream(table.required("cases").spliterator(), false)
                    .map(c -> Arguments.of(file, c.required("given"), c.required("gives")));
        });
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("cases")
    @DisplayName("the stages answer every case of a table as it stands there")
    void answers(String file, JsonNode given, JsonNode gives) {
        assertSame(ANSWERS.getOrDefault(file, g -> g).apply(given), gives);
    }

    private static void assertSame(JsonNode actual, JsonNode expected) {
        if (expected.isNumber()) {
            assertThat(actual.asDouble()).isCloseTo(expected.asDouble(), within(BITS));
        } else if (expected.isArray() || expected.isObject()) {
            assertThat(actual.size()).isEqualTo(expected.size());
            expected.properties().forEach(e -> assertSame(actual.required(e.getKey()), e.getValue()));
            for (int i = 0; expected.isArray() && i < expected.size(); i++) {
                assertSame(actual.get(i), expected.get(i));
            }
        } else {
            assertThat(actual).isEqualTo(expected);
        }
    }

    private static JsonNode table(String file) {
        try {
            return JSON.readTree(TABLES.resolve(file).toFile());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Interval interval(JsonNode d) {
        return new Interval(d.required("low").asDouble(), d.required("high").asDouble());
    }

    private static Optional<Margin> margin(JsonNode number) {
        return number.isNull() ? Optional.empty() : Optional.of(new Margin(number.asDouble(), "", ""));
    }

    private static JsonNode range(MarginRange range) {
        var node = NODES.objectNode().put("above", range.above());
        return Double.isInfinite(range.below()) ? node.putNull("below") : node.put("below", range.below());
    }

    /** Kind, amount, what makes it a number of the unit, ours, theirs: here the unit is the amount's own. */
    private static boolean same(JsonNode given) {
        var amount = given.get(1).asText();
        Tolerance tolerance = switch (given.get(0).asText()) {
            case "absolute" -> new Tolerance.Absolute(Printed.of(amount + " g/dL"));
            case "relative" -> new Tolerance.Relative(Printed.of(amount + " %"));
            default -> Tolerance.EQUAL;
        };
        return tolerance.same(given.get(3).asDouble(), given.get(4).asDouble(), Unit.of("g/dL"));
    }

    private static List<Double> numbers(JsonNode array) {
        var numbers = new ArrayList<Double>();
        array.forEach(n -> numbers.add(n.asDouble()));
        return numbers;
    }
}
