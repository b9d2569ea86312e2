package comparand.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import comparand.support.Built;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** results.json and the schema written beside it. A general-purpose schema validator (networknt) is the judge. */
class ResultsSchemaTest {

    static Stream<Named<Built>> libraries() {
        return Libraries.both();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("the file is valid against the schema written beside it, and the schema refuses what is not in it")
    void isValid(Built built) throws IOException {
        var schema = schema(built);
        assertThat(errors(schema, built.results())).isEmpty();

        var more = built.results().deepCopy();
        ((ObjectNode) more.get("run")).put("score", 7);
        assertThat(errors(schema, more)).hasSize(1);
        var less = built.results().deepCopy();
        ((ObjectNode) less.get("pairs").get(0)).remove("standing");
        assertThat(errors(schema, less)).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("every property is described in one sentence")
    void everyPropertyIsDescribed(Built built) throws IOException {
        var properties = properties(built);

        assertThat(properties).hasSizeGreaterThan(80);
        assertThat(properties)
                .allSatisfy((name, property) -> assertThat(
                                property.path("description").asText())
                        .as(name)
                        .isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("a text is empty only where its description says that it may be")
    void emptyTextsAreAnnounced(Built built) throws IOException {
        var announced = properties(built).entrySet().stream()
                .filter(e -> e.getValue().path("description").asText().contains("empty"))
                .map(e -> e.getKey().replaceFirst(".*\\.", ""))
                .collect(Collectors.toSet());
        var empty = leaves("", built.results())
                .filter(l -> l.value().isTextual() && l.value().asText().isBlank())
                .map(Leaf::name)
                .collect(Collectors.toSet());

        assertThat(announced).containsAll(empty);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    @DisplayName("nothing is null, and no number is endless or not a number")
    void nothingIsNull(Built built) {
        var leaves = leaves("", built.results()).toList();

        assertThat(leaves).hasSizeGreaterThan(500);
        assertThat(leaves).allSatisfy(l -> {
            assertThat(l.value().isNull()).as(l.name()).isFalse();
            assertThat(l.value().asText()).as(l.name()).doesNotMatch("-?(NaN|Infinity)|null");
        });
    }

    private record Leaf(String name, JsonNode value) {}

    /** Every value of the file, under the last key that leads to it. */
    private static Stream<Leaf> leaves(String name, JsonNode node) {
        if (node.isObject()) {
            return node.properties().stream().flatMap(e -> leaves(e.getKey(), e.getValue()));
        }
        return node.isArray()
                ? Built.all(node).stream().flatMap(n -> leaves(name, n))
                : Stream.of(new Leaf(name, node));
    }

    private static Map<String, JsonNode> properties(Built built) throws IOException {
        var types = new ObjectMapper()
                .readTree(built.folder().resolve("results.schema.json").toFile())
                .get("$defs")
                .properties();
        return types.stream()
                .flatMap(t -> t.getValue().get("properties").properties().stream()
                        .map(p -> Map.entry(t.getKey() + "." + p.getKey(), p.getValue())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Schema schema(Built built) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(built.folder().resolve("results.schema.json")), InputFormat.JSON);
    }

    private static List<?> errors(Schema schema, JsonNode node) {
        return new ArrayList<>(schema.validate(node));
    }
}
