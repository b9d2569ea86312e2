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
        return first(path, LARGEST + 1);
    }

    /**
     * All bytes of a file that belongs to a record.
     *
     * @throws IOException if it is no file of a disk, is larger than that, or cannot be read
     */
    public static byte[] of(Path path, int most) throws IOException {
        var bytes = first(path, most + 1);
        if (bytes.length > most) {
            throw new IOException(path + " is too large");
        }
        return bytes;
    }

    private static byte[] first(Path path, int most) throws IOException {
        if (!Files.isRegularFile(path)) {
            throw new IOException(path + " is no plain file");
        }
        try (var in = Files.newInputStream(path)) {
            return in.readNBytes(most);
        }
    }
}
