package comparand.write.html;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What the program brings for a page. */
final class Resources {

    private static final String FOLDER = "/comparand/write/html/";

    private Resources() {}

    /** Text with line feeds alone, as a browser reads it before it works out its hash. */
    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    static byte[] bytes(String name) {
        try (var in = Resources.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
