package comparand.manual;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
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

    /** Writes a folder of the program and all below it to a folder of its own. */
    static void unpack(String name, Path target) {
        try {
            var uri = Objects.requireNonNull(Resources.class.getResource(FOLDER + name), name)
                    .toURI();
            if (uri.getScheme().equals("jar")) {
                try (var jar = opened(uri)) {
                    copy(jar.getPath(FOLDER + name), target);
                }
            } else {
                copy(Path.of(uri), target);
            }
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FileSystem opened(URI uri) throws IOException {
        return FileSystems.newFileSystem(uri, Map.of());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(Objects.requireNonNull(target.getParent()));
                Files.copy(file, target);
            }
        }
    }
}
