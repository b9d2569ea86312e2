package comparand.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Inputs that once went wrong, and those made by hand to go wrong: a folder for each reader, and a list of what was wrong with
 * them, one a line: reader, input, and the fault, with tabs between.
 */
final class Corpus {

    static final Path FOLDER = Path.of("src/test/resources/corpus");

    private static final Path LIST = FOLDER.resolve("found.tsv");

    private Corpus() {}

    /**
     * An input.
     *
     * @param wrong what went wrong with it before it was mended
     */
    record Listed(String reader, String input, String wrong) {

        Path path() {
            return FOLDER.resolve(reader).resolve(input);
        }
    }

    static List<Listed> listed() throws IOException {
        return Files.readAllLines(LIST).stream()
                .filter(l -> !l.isBlank())
                .map(l -> l.split("\t", 3))
                .map(c -> new Listed(c[0], c[1], c[2]))
                .toList();
    }

    /** All files in the folders. */
    static List<Path> inputs() throws IOException {
        try (var files = Files.walk(FOLDER, 2)) {
            return files.filter(f -> Files.isRegularFile(f) && !f.equals(LIST))
                    .sorted()
                    .toList();
        }
    }
}
