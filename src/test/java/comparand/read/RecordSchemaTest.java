package comparand.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import comparand.read.yaml.RecordSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The published JSON Schemas are those the record types give, accept every record of the demo and of the blank library, and
 * refuse what the binder refuses. A general-purpose schema validator (networknt) is the judge.
 */
class RecordSchemaTest {

    private static final Path PUBLISHED = Path.of("templates/schema");
    private static final ObjectMapper YAML = new YAMLMapper();

    @Test
    void thePublishedSchemasAreThoseOfTheTypes() throws IOException {
        for (var schema : RecordSchema.all().entrySet()) {
            assertThat(PUBLISHED.resolve(schema.getKey()))
                    .as("run comparand.read.WriteSchemas")
                    .hasContent(schema.getValue());
        }
    }

    @TestFactory
    Stream<DynamicTest> everyRecordIsValid() throws IOException {
        return Stream.of(
                        Path.of("evidence"),
                        Path.of("templates/blank"),
                        Path.of("src/test/resources/library-haemofilter"))
                .filter(Files::isDirectory)
                .flatMap(RecordSchemaTest::records)
                .map(file -> dynamicTest(
                        file.toString(),
                        () -> assertThat(errors(schemaFor(file), YAML.readTree(file.toFile())))
                                .isEmpty()));
    }

    private static Stream<Path> records(Path library) {
        try (var files = Files.walk(library)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatTheBinderRefusesTheSchemaRefuses() throws IOException {
        var paper = Files.readString(Path.of("templates/blank/sources/example-paper.yaml"));
        var edits = Map.of(
                "kind: bench-paper", "kind: bench paper",
                "funding: independent", "fundign: independent",
                "mean: 64.1 mmHg", "mean: 64.1 mmHg\n    median: 64 mmHg",
                "n: 6 units", "n: six units",
                "checked: 2026-11-01", "checked: 1.11.2026",
                "mean: 64.1", "mean: about 64.1");
        for (var edit : edits.entrySet()) {
            assertThat(paper).contains(edit.getKey());
            var broken = YAML.readTree(paper.replace(edit.getKey(), edit.getValue()));
            assertThat(errors(schema("source.schema.json"), broken))
                    .as(edit.getValue())
                    .isNotEmpty();
        }
    }

    private static Schema schemaFor(Path file) {
        var folder = file.getName(file.getNameCount() - 2).toString();
        return switch (folder) {
            case "devices" -> schema("device.schema.json");
            case "sources" -> schema("source.schema.json");
            case "metrics" -> schema("metric.schema.json");
            case "screening" -> schema("screening.schema.json");
            case "dossiers" -> schema("dossier.schema.json");
            default -> schema("study.schema.json");
        };
    }

    private static Schema schema(String name) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(RecordSchema.all().getOrDefault(name, ""), InputFormat.JSON);
    }

    private static List<?> errors(Schema schema, JsonNode node) {
        return schema.validate(node);
    }
}
