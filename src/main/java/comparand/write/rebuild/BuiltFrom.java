package comparand.write.rebuild;

import comparand.digest.Sha;
import comparand.write.whole.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What an earlier build made from what: for each file its key and the SHA-256 of its bytes. A line is true whatever became of
 * the file since; so the list may be old, cut short or gone, and a file is taken over only if its bytes still are those.
 *
 * <p>It lies beside the folder of outputs, hidden, and not in it: what readers are given is the same on every machine, and
 * keys are not.
 */
public final class BuiltFrom {

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([0-9a-f]{64}) (.+)");

    /**
     * A file that was made.
     *
     * @param key of what it was made from
     * @param sha of its bytes
     */
    public record Made(String key, String sha) {}

    private final Path folder;
    private final SortedMap<String, Made> files;

    private BuiltFrom(Path folder, SortedMap<String, Made> files) {
        this.folder = folder;
        this.files = files;
    }

    /** Of no earlier build. */
    public static BuiltFrom nothing(Path folder) {
        return new BuiltFrom(folder, Collections.emptySortedMap());
    }

    /** Of the build before, as far as it can be read. */
    public static BuiltFrom before(Path folder) {
        var files = new TreeMap<String, Made>();
        try {
            // what is no text becomes a line that fits nothing: a garbled list is a shorter one, and no fault
            var text = new String(Files.readAllBytes(list(folder)), StandardCharsets.UTF_8);
            text.lines().map(LINE::matcher).forEach(line -> {
                if (line.matches()) {
                    files.put(line.group(3), new Made(line.group(1), line.group(2)));
                }
            });
        } catch (IOException e) {
            files.clear();
        }
        return new BuiltFrom(folder, files);
    }

    /** Where the list lies. */
    public static Path list(Path folder) {
        return folder.resolveSibling("." + folder.getFileName() + ".built-from");
    }

    /** The bytes of a file of the build before, if they were made from the same and nobody touched them. */
    public Optional<byte[]> bytes(String name, String key) {
        var made = files.get(name);
        var file = folder.resolve(name);
        if (made == null || !made.key().equals(key) || !Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readAllBytes(file)).filter(b -> Sha.of(b).equals(made.sha()));
        } catch (IOException e) {
            // what cannot be read is made anew
            return Optional.empty();
        }
    }

    /** Keeps the list of a build for the next. */
    public static void keep(Path folder, SortedMap<String, Made> files) throws IOException {
        var text = new StringBuilder();
        files.forEach((name, made) -> text.append(made.key())
                .append(' ')
                .append(made.sha())
                .append(' ')
                .append(name)
                .append('\n'));
        WholeFile.write(list(folder), text.toString());
    }
}
