package comparand.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * An input that its reader opens as a file.
 *
 * @param path where it is written for that
 */
record FileInput(String name, List<byte[]> seeds, List<String> words, boolean isText, Path path, Opening opening)
        implements FuzzedReader {

    /** Reads the file, which is there. */
    interface Opening {
        Read read(Path path) throws IOException;
    }

    @Override
    public Read read(byte[] input) throws IOException {
        Files.write(path, input);
        return opening.read(path);
    }
}
