package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** What the program carries for the manual: texts, examples and the demo. */
final class Resources {

    private static final String FOLDER = "/comparand/manual/";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Resources() {}

    static String text(String name) {
        return new String(bytes(FOLDER + name), StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    /** A file of the program by its full name. */
    static byte[] bytes(String name) {
        try (var in = Resources.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode yaml(String name) {
        return tree(text(name));
    }

    /** A text in YAML as a tree of values. */
    static JsonNode tree(String yaml) {
        var load = new Load(LoadSettings.builder().setCodePointLimit(50_000_000).build());
        return MAPPER.valueToTree(Objects.requireNonNull(load.loadFromString(yaml), "an empty text"));
    }

    static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes the demo to a folder of its own. */
    static void unpackDemo(Path target) throws IOException {
        for (var name : text("demo.txt").lines().toList()) {
            var file = target.resolve(name);
            Files.createDirectories(Objects.requireNonNull(file.getParent()));
            Files.write(file, bytes(FOLDER + "demo/" + name));
        }
    }
}
