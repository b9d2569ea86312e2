package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The records from which the reference takes its example lines: those of a new library first, then those of the demo. */
final class ReadRecords {

    private static final String TEMPLATES = "/comparand/templates/";

    private static final List<String> BLANK = List.of(
            "devices/example-device.yaml",
            "sources/example-ifu.yaml",
            "sources/example-paper.yaml",
            "metrics/example-metric.yaml",
            "studies/example-bench/study.yaml",
            "screening/example.yaml",
            "dossiers/example.yaml");

    private static final List<String> REPORTS = List.of("talk.yaml", "committee.yaml", "manuscript.yaml", "page.yaml");

    /** Records that use the keys which the others do without. */
    private static final List<String> MORE = List.of(
            "devices/reference-device.yaml",
            "sources/reference-ifu.yaml",
            "sources/reference-paper.yaml",
            "metrics/reference-metric.yaml",
            "studies/reference-cases/study.yaml",
            "screening/reference.yaml",
            "dossiers/reference.yaml",
            "templates/talk.yaml",
            "templates/committee.yaml",
            "templates/manuscript.yaml",
            "templates/page.yaml");

    private final Map<String, JsonNode> schemas;
    private final RecordExamples examples = new RecordExamples();

    private ReadRecords(Map<String, JsonNode> schemas) {
        this.schemas = schemas;
    }

    /**
     * Lines of the records there are.
     *
     * @param demo the library of the demo
     */
    static RecordExamples of(Map<String, JsonNode> schemas, Path demo) {
        var these = new ReadRecords(schemas);
        BLANK.forEach(
                f -> these.read(f, new String(Resources.bytes(TEMPLATES + "blank/" + f), StandardCharsets.UTF_8)));
        REPORTS.forEach(
                f -> these.read("templates/" + f, new String(Resources.bytes(TEMPLATES + f), StandardCharsets.UTF_8)));
        these.folder(demo);
        MORE.forEach(f -> these.read(f, Resources.text("library/" + f)));
        return these.examples;
    }

    private void folder(Path folder) {
        try (var files = Files.walk(folder)) {
            for (var file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                read(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(String file, String text) {
        var folder = file.substring(0, file.indexOf('/'));
        var kind = switch (folder) {
            case "devices" -> "device";
            case "sources" -> "source";
            case "metrics" -> "metric";
            case "screening" -> "screening";
            case "dossiers" -> "dossier";
            case "studies" -> "study";
            default -> file.substring(file.indexOf('/') + 1).replace(".yaml", "");
        };
        var schema = schemas.get(kind + ".schema.json");
        if (schema != null) {
            examples.read(schema, text, file);
        }
    }
}
