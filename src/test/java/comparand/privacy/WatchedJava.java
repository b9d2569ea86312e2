package comparand.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Another Java with the watch in it, on the class path of the tests. */
final class WatchedJava {

    private WatchedJava() {}

    /** What the watch noted while a class ran, and what was printed. */
    record Watched(int code, List<String> noted, String said) {}

    static Watched run(Path folder, Class<?> main, List<String> arguments) throws IOException, InterruptedException {
        return run(folder, List.of("-Djava.security.manager=" + NetworkWatch.class.getName()), main, arguments);
    }

    /** The same without the watch: Java starts otherwise with one in it. */
    static Watched unwatched(Path folder, Class<?> main, List<String> arguments)
            throws IOException, InterruptedException {
        return run(folder, List.of(), main, arguments);
    }

    private static Watched run(Path folder, List<String> options, Class<?> main, List<String> arguments)
            throws IOException, InterruptedException {
        var notes = folder.resolve("noted.txt");
        var said = folder.resolve("said.txt");
        Files.deleteIfExists(notes);
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dcomparand.watch=" + notes,
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                main.getName()));
        command.addAll(1, options);
        command.addAll(arguments);
        var process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        return new Watched(
                process.exitValue(),
                Files.exists(notes) ? Files.readAllLines(notes) : List.of(),
                Files.readString(said, StandardCharsets.UTF_8));
    }
}
