package comparand.app;

import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What shows a file on this machine: the browser a person named in {@code BROWSER} (an open convention), or the program by
 * which the system opens files; none where nobody sits before a screen.
 */
final class Viewer {

    private final String system;
    private final Map<String, String> environment;

    /**
     * A viewer.
     *
     * @param system as Java names it under {@code os.name}
     */
    Viewer(String system, Map<String, String> environment) {
        this.system = system.toLowerCase(Locale.ROOT);
        this.environment = Map.copyOf(environment);
    }

    static Viewer ofThisMachine() {
        return new Viewer(System.getProperty("os.name", ""), System.getenv());
    }

    /** The words of the command, without the file; empty where there is none. */
    Optional<List<String>> command() {
        var named = environment.getOrDefault("BROWSER", "");
        if (!named.isBlank()) {
            // several may be named with colons; the first is the one that is wished for
            return Optional.of(List.of(named.split(":", -1)[0]));
        }
        if (system.startsWith("mac")) {
            return Optional.of(List.of("open"));
        }
        if (system.startsWith("windows")) {
            return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler"));
        }
        boolean screen = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return screen && isOnPath("xdg-open") ? Optional.of(List.of("xdg-open")) : Optional.empty();
    }

    private boolean isOnPath(String program) {
        for (var folder : environment.getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
            if (!folder.isEmpty() && Files.isExecutable(Path.of(folder, program))) {
                return true;
            }
        }
        return false;
    }

    /** Shows a file and does not wait; whether something was started. */
    boolean show(Path file) {
        return command().filter(words -> isStarted(words, file)).isPresent();
    }

    private static boolean isStarted(List<String> words, Path file) {
        var command = new ArrayList<>(words);
        command.add(file.toAbsolutePath().toUri().toString());
        try {
            new ProcessBuilder(command)
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            // the path is printed either way, and a person can open it by hand
            return false;
        }
    }
}
