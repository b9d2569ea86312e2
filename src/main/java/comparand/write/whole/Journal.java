package comparand.write.whole;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which files that were made ready belong where. It is there whole, or not at all. */
record Journal(List<Line> lines) {

    private static final String NAME = "journal";
    private static final String ABSENT = "-";

    Journal {
        lines = List.copyOf(lines);
    }

    /**
     * One file.
     *
     * @param made its name among those made ready
     * @param after SHA-256 of its content
     * @param before SHA-256 of what it takes the place of; empty if nothing was there
     * @param path where it belongs, within the folder
     */
    record Line(String made, String after, Optional<String> before, String path) {

        private static Line of(String text) {
            var words = text.split(" ", 4);
            return new Line(words[0], words[1], Optional.of(words[2]).filter(w -> !w.equals(ABSENT)), words[3]);
        }

        private String text() {
            return "%s %s %s %s\n".formatted(made, after, before.orElse(ABSENT), path);
        }
    }

    /** From here on all that was made ready counts. */
    void write(Path folder) throws IOException {
        var fresh = folder.resolve(NAME + ".new");
        Files.writeString(fresh, lines.stream().map(Line::text).collect(Collectors.joining()), StandardCharsets.UTF_8);
        Forced.onDisk(fresh);
        Files.move(fresh, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
    }

    static Optional<Journal> read(Path folder) throws IOException {
        var file = folder.resolve(NAME);
        return Files.exists(file)
                ? Optional.of(new Journal(Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                        .map(Line::of)
                        .toList()))
                : Optional.empty();
    }

    /** Whether there was one. */
    static boolean delete(Path folder) throws IOException {
        return Files.deleteIfExists(folder.resolve(NAME));
    }
}
