package comparand.read.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file that is a record, or should be one. */
public final class RecordBytes {

    /** A source with 20 000 values has about 8 million. */
    static final int LARGEST = 20_000_000;

    private RecordBytes() {}

    /**
     * All bytes of a file; of one that is too large to be a record, one more than a record may have, so that whoever reads
     * them can say so.
     *
     * @throws IOException if it is no file of a disk, such as a pipe, which might never end, or cannot be read
     */
    public static byte[] of(Path path) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new IOException(path + " is no plain file");
        }
        try (var in = Files.newInputStream(path)) {
            return in.readNBytes(LARGEST + 1);
        }
    }
}
