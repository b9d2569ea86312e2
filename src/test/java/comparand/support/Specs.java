package comparand.support;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Specifications as data: YAML files that a person of the trade can read, correct and add to. */
public final class Specs {

    private static final YAMLMapper MAPPER = new YAMLMapper();
    private static final Path FOLDER = Path.of("src/test/resources/spec");

    private Specs() {}

    /** The specifications of one topic, by file name. */
    public static List<JsonNode> of(String topic) {
        try (var files = Files.list(FOLDER.resolve(topic))) {
            var found = files.sorted().map(Specs::read).toList();
            assertThat(found).as("specifications in " + topic).isNotEmpty();
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode read(Path file) {
        try {
            return MAPPER.readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A copy of a library with the edits of a case: {@code {in, replace, by}} or {@code {in, write}}. */
    public static Path edited(Path library, JsonNode edits, Path copy) throws IOException {
        LibraryCopy.of(library, copy);
        for (var edit : edits) {
            var file = copy.resolve(edit.get("in").asText());
            if (edit.has("write")) {
                Files.createDirectories(file.resolveSibling("."));
                Files.writeString(file, edit.get("write").asText());
            } else {
                LibraryCopy.edit(
                        file, edit.get("replace").asText(), edit.get("by").asText());
            }
        }
        return copy;
    }
}
