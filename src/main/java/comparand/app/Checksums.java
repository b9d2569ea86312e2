package comparand.app;

import comparand.digest.Sha;
import comparand.write.rebuild.BuiltFrom;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The fingerprints of the files of an output, kept beside them as {@code sha256sum} writes and checks them: by them a later
 * run sees what somebody has worked on since, and does not replace it.
 */
final class Checksums {

    static final String FILE = "checksums.sha256";

    private static final String BETWEEN = "  ";
    private static final int DIGITS = 64;

    private Checksums() {}

    /** Writes the fingerprints of the files of a folder into it. */
    static void write(Path folder, SortedMap<String, BuiltFrom.Made> files) throws IOException {
        var lines = new StringBuilder();
        files.forEach((name, made) ->
                lines.append(made.sha()).append(BETWEEN).append(name).append('\n'));
        try (var out = new DiskFile(folder.resolve(FILE))) {
            out.write(lines.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Whether all files that belong to an output are there, as they were written. */
    static boolean isWhole(Path folder) throws IOException {
        if (!Files.isRegularFile(folder.resolve(FILE))) {
            return false;
        }
        for (var written : read(folder.resolve(FILE)).entrySet()) {
            var file = folder.resolve(written.getKey());
            if (!Files.isRegularFile(file) || !Sha.of(file).equals(written.getValue())) {
                return false;
            }
        }
        return true;
    }

    /**
     * The first file, in the order of names, that is not as the run wrote it: changed since, or put there by somebody.
     * Empty where there are none, or no fingerprints. Files that were taken away do not matter: nothing of them is lost.
     */
    static Optional<String> changed(Path folder) throws IOException {
        if (!Files.isRegularFile(folder.resolve(FILE))) {
            return Optional.empty();
        }
        var written = read(folder.resolve(FILE));
        for (var name : files(folder)) {
            if (!Sha.of(folder.resolve(name)).equals(written.get(name))) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    private static Map<String, String> read(Path file) throws IOException {
        var all = new TreeMap<String, String>();
        for (var line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (line.length() > DIGITS + BETWEEN.length()) {
                all.put(line.substring(DIGITS + BETWEEN.length()), line.substring(0, DIGITS));
            }
        }
        return all;
    }

    /** Names relative to the folder, with slashes; without the list itself and the marks of office programs at work. */
    private static List<String> files(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .filter(n -> !n.equals(FILE) && !isLock(n))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isLock(String name) {
        var last = name.substring(name.lastIndexOf('/') + 1);
        return last.startsWith(".~lock.") || last.startsWith("~$");
    }
}
