package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.Specs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs the specifications in {@code spec/raw-data}: what is found in raw files and in their mapping. */
class RawDataSpecTest {

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicNode> whatIsFoundInRawFiles() {
        return Specs.of("raw-data").stream().map(spec -> {
            var cases = new ArrayList<DynamicNode>();
            spec.get("cases").forEach(c -> cases.add(dynamicTest(c.get("id").asText(), () -> finds(c))));
            return dynamicContainer(spec.get("law").asText(), cases);
        });
    }

    private void finds(JsonNode c) throws IOException {
        var library = Specs.edited(
                Path.of("templates/blank"),
                c.get("edits"),
                folder.resolve(c.get("id").asText()));
        var wanted = c.get("finds");

        var found =
                DossierFile.of(library.resolve("dossiers/example.yaml")).then(Pipeline::evidence).findings().stream()
                        .filter(f -> f.code().equals(wanted.get("code").asText()))
                        .toList();

        assertThat(found).isNotEmpty();
        if (wanted.has("times")) {
            assertThat(found).hasSize(wanted.get("times").asInt());
        }
        var first = found.get(0);
        assertThat(first.span().toString()).isEqualTo(wanted.get("at").asText());
        assertThat(first.message()).contains(wanted.path("says").asText());
        assertThat(first.fix()).contains(wanted.path("fix").asText());
    }
}
