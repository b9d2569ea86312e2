package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.diag.Diagnostic;
import comparand.model.RowLog;
import comparand.study.LocalStudies;
import comparand.support.Specs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
            spec.get("cases")
                    .forEach(c -> cases.add(dynamicTest(c.get("id").asText(), () -> finds(spec.path("given"), c))));
            return dynamicContainer(spec.get("law").asText(), cases);
        });
    }

    /**
     * A case: {@code finds} is the first finding of a code, {@code never} are codes that nothing is found under; a case with
     * {@code never} alone must run through.
     *
     * @param given edits that stand before those of every case of a file
     */
    private void finds(JsonNode given, JsonNode c) throws IOException {
        var start = folder.resolve(c.get("id").asText() + "-given");
        var library = Specs.edited(
                Specs.edited(Path.of("templates/blank"), given, start),
                c.get("edits"),
                folder.resolve(c.get("id").asText()));
        var all = DossierFile.of(library.resolve("dossiers/example.yaml"))
                .then(Pipeline::evidence)
                .findings();

        c.path("never").forEach(code -> assertThat(all).noneMatch(f -> f.code().equals(code.asText())));
        if (c.has("finds")) {
            finds(all, c.get("finds"));
        } else {
            assertThat(c.path("never")).isNotEmpty();
            assertThat(all).noneMatch(Diagnostic::stops);
        }
        if (c.has("logs")) {
            logs(library, c.get("logs"));
        }
    }

    private static void logs(Path library, JsonNode wanted) {
        var log = DossierFile.of(library.resolve("dossiers/example.yaml"))
                .then(Pipeline::checked)
                .then(LocalStudies::compute)
                .<RowLog>fold((local, findings) -> local.log(), findings -> {
                    throw new AssertionError(findings.toString());
                });
        var file = log.files().stream()
                .filter(f -> f.file().equals(wanted.get("file").asText()))
                .findFirst()
                .orElseThrow();

        assertThat(file.rows()).isEqualTo(wanted.get("rows").asInt());
        assertThat(file.kept()).isEqualTo(wanted.get("kept").asInt());
        assertThat(file.held()).isEqualTo(wanted.get("held").asInt());
        if (wanted.has("note")) {
            var note = wanted.get("note");
            assertThat(file.notes())
                    .anyMatch(n -> n.line() == note.get("line").asInt()
                            && n.fate().name().equalsIgnoreCase(note.get("fate").asText())
                            && n.code().equals(note.get("code").asText())
                            && n.reason().contains(note.get("says").asText()));
        }
    }

    private static void finds(List<Diagnostic> all, JsonNode wanted) {
        var found = all.stream()
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
        if (wanted.has("severity")) {
            assertThat(first.severity().name())
                    .isEqualToIgnoringCase(wanted.get("severity").asText());
        }
    }
}
