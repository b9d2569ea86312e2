package comparand.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A program started in an environment of which every variable is given, and none besides. */
record Started(int code, String said) {

    static Started run(Path folder, Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        var said = Files.createTempFile("said", ".txt");
        var builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        var process = builder.start();
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        var text = Files.readString(said, StandardCharsets.UTF_8);
        Files.delete(said);
        return new Started(process.exitValue(), text);
    }
}
