package comparand.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Whole inputs out of the demo library and the blank one. */
final class Seeds {

    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\d-]{1,30}:?|[\\d.]+ [\\p{L}/%²]{1,12}");

    private Seeds() {}

    /** The files of folders, in the order of their names. */
    static List<byte[]> files(String ending, String... folders) {
        return Stream.of(folders).flatMap(f -> in(f, ending)).toList();
    }

    private static Stream<byte[]> in(String folder, String ending) {
        try (var files = Files.walk(Path.of(folder))) {
            return files.filter(f -> Files.isRegularFile(f) && f.toString().endsWith(ending)).sorted().toList().stream()
                    .map(Seeds::bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words, keys and quantities that stand in them. */
    static List<String> words(List<byte[]> seeds) {
        var found = new TreeSet<String>();
        for (var seed : seeds) {
            WORD.matcher(new String(seed, StandardCharsets.UTF_8)).results().forEach(m -> found.add(m.group()));
        }
        return List.copyOf(found);
    }
}
