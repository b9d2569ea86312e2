package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.support.Specs;
import comparand.write.json.ResultJson;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the specifications in {@code spec/pairs} from records to results: each edits the blank library and says, by paths
 * into {@code results.json}, what then holds of a pair or of a value.
 *
 * <p>A number is right if it rounds to the digits the specification gives. In a path, the part after a list is the
 * {@code id} or the {@code kind} of one of its elements; a list that ends a path is given by its length.
 */
class PairSpecTest {

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicNode> whatHoldsOfPairsAndValues() {
        return Specs.of("pairs").stream().map(spec -> {
            var cases = new ArrayList<DynamicNode>();
            spec.get("cases").forEach(c -> cases.add(dynamicTest(c.get("id").asText(), () -> holds(c))));
            return dynamicContainer(spec.get("law").asText(), cases);
        });
    }

    private void holds(JsonNode c) throws IOException {
        var library = Specs.edited(
                Path.of("templates/blank"),
                c.path("edits"),
                folder.resolve(c.get("id").asText()));
        var results = results(library);

        if (c.has("pair")) {
            says(c.get("says"), pair(results, c.get("pair")));
        }
        if (c.has("no-pair")) {
            assertThat(pair(results, c.get("no-pair")).isMissingNode()).isTrue();
        }
        if (c.has("value")) {
            says(c.get("is"), element(results.get("comparands"), c.get("value").asText()));
        }
        if (c.has("together")) {
            says(c.get("says"), together(results, c.get("together").asText()));
        }
        if (c.has("no-together")) {
            assertThat(together(results, c.get("no-together").asText()).isMissingNode())
                    .isTrue();
        }
        if (c.has("scenario")) {
            says(
                    c.get("says"),
                    all(results.get("scenarios")).stream()
                            .filter(s -> s.get("suppose")
                                    .asText()
                                    .equals(c.get("scenario").asText()))
                            .findFirst()
                            .orElseThrow());
        }
        assertThat(Stream.of("pair", "no-pair", "value", "together", "no-together", "scenario")
                        .anyMatch(c::has))
                .isTrue();
    }

    private static JsonNode results(Path library) {
        return DossierFile.of(library.resolve("dossiers/example.yaml"))
                .then(file -> Pipeline.published(
                        file, library.resolve("templates"), new Commission(Set.of(), Optional.empty())))
                .fold(
                        (publication, findings) -> {
                            var out = new ByteArrayOutputStream();
                            try {
                                ResultJson.write(publication.results(), out);
                                return new ObjectMapper().readTree(out.toByteArray());
                            } catch (IOException e) {
                                throw new AssertionError(e);
                            }
                        },
                        findings -> {
                            throw new AssertionError(
                                    findings.stream().map(Diagnostic::toString).toList());
                        });
    }

    private static JsonNode pair(JsonNode results, JsonNode sides) {
        return all(results.get("pairs")).stream()
                .filter(p -> p.get("ours").asText().endsWith(sides.get(0).asText())
                        && p.get("theirs").asText().endsWith(sides.get(1).asText()))
                .findFirst()
                .orElse(MissingNode.getInstance());
    }

    private static JsonNode together(JsonNode results, String ours) {
        return all(results.get("together")).stream()
                .filter(t -> t.get("ours").asText().endsWith(ours))
                .findFirst()
                .orElse(MissingNode.getInstance());
    }

    private static void says(JsonNode expected, JsonNode actual) {
        assertThat(actual.isMissingNode()).as("is there").isFalse();
        expected.properties().forEach(e -> {
            var found = at(actual, e.getKey());
            var wanted = e.getValue().asText();
            if (found.isNumber()) {
                var decimals = Math.max(0, new BigDecimal(wanted).scale());
                assertThat(found.decimalValue().setScale(decimals, RoundingMode.HALF_UP))
                        .as(e.getKey())
                        .isEqualByComparingTo(wanted);
            } else if (wanted.startsWith("... ")) {
                assertThat(found.asText()).as(e.getKey()).contains(wanted.substring(4));
            } else {
                assertThat(found.isArray() ? String.valueOf(found.size()) : found.asText("absent"))
                        .as(e.getKey())
                        .isEqualTo(wanted);
            }
        });
    }

    private static JsonNode at(JsonNode from, String path) {
        var found = from;
        for (var part : path.split("/", -1)) {
            found = !found.isArray()
                    ? found.path(part)
                    : part.matches("\\d+") ? found.path(Integer.parseInt(part)) : element(found, part);
        }
        return found.isMissingNode() ? new ObjectMapper().valueToTree("absent") : found;
    }

    private static JsonNode element(JsonNode list, String name) {
        return all(list).stream()
                .filter(n -> n.path("id").asText().endsWith(name)
                        || n.path("kind").asText().equals(name)
                        || n.path("condition").asText().equals(name))
                .findFirst()
                .orElse(MissingNode.getInstance());
    }

    private static List<JsonNode> all(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).toList();
    }
}
