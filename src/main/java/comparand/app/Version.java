package comparand.app;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Name and version of the tool, as printed on every output. */
final class Version implements IVersionProvider {

    static String tool() {
        var properties = new Properties();
        try (var in = Version.class.getResourceAsStream("/comparand/version.properties")) {
            if (in != null) {
                properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return "Comparand " + properties.getProperty("version", "of unknown version");
    }

    @Override
    public String[] getVersion() {
        return new String[] {tool()};
    }
}
