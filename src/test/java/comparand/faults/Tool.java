package comparand.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The packaged tool, started as a user starts it. */
final class Tool {

    static final Path HOME = Path.of("target/comparand").toAbsolutePath();
    static final Path LAUNCHER = HOME.resolve("bin/comparand");

    private Tool() {}

    /** What a run said on both streams, and its exit code. */
    record Run(int code, String said) {}

    /** The words of a command of the tool. */
    static List<String> command(String... arguments) {
        return Stream.concat(Stream.of(LAUNCHER.toString()), Stream.of(arguments))
                .toList();
    }

    static Process start(List<String> command, Path folder) throws IOException {
        var builder = new ProcessBuilder(new ArrayList<>(command))
                .directory(folder.toFile())
                .redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        return builder.start();
    }

    /** What a process says until it ends; through a pipe, so that limits on files do not touch it. */
    static Run end(Process process) {
        try (var said = process.getInputStream()) {
            var text = new String(said.readAllBytes(), StandardCharsets.UTF_8);
            return new Run(process.waitFor(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    static Run run(Path folder, List<String> command) throws IOException {
        return end(start(command, folder));
    }
}
