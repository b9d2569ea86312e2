package comparand.read;

import comparand.diag.Span;
import comparand.digest.Sha;
import comparand.model.UnreadableRows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A file that is read more than once in a run, and must be of the same bytes each time: its fingerprint is printed, and its rows
 * are counted.
 *
 * @param file as findings name it
 * @param fingerprint of its content
 */
record Steady(Path path, String file, String fingerprint, Stamp stamp, boolean isFresh) {

    /** A file system may give two writings that follow on each other one time; after so long they have two. */
    private static final Duration TICK = Duration.ofSeconds(2);

    /** What a file system says of a file without reading it; another writing makes it another, but for {@link #TICK}. */
    record Stamp(long size, FileTime written, @Nullable Object key) {

        private static Stamp of(Path path) throws IOException {
            var seen = Files.readAttributes(path, BasicFileAttributes.class);
            return new Stamp(seen.size(), seen.lastModifiedTime(), seen.fileKey());
        }
    }

    /** The file as it is now. */
    static Steady of(Path path, String file) throws IOException {
        var stamp = Stamp.of(path);
        return new Steady(path, file, Sha.of(path), stamp, isFresh(stamp));
    }

    /** Whether it was written since this program started or shortly before, so that another writing might have the same time. */
    private static boolean isFresh(Stamp stamp) {
        return ProcessHandle.current()
                .info()
                .startInstant()
                .map(start -> stamp.written().toInstant().isAfter(start.minus(TICK)))
                .orElse(true);
    }

    /**
     * To be called behind every reading.
     *
     * @throws UnreadableRows if what was read may not be what was read before
     */
    void require() {
        try {
            if (Objects.equals(Stamp.of(path), stamp)
                    && (!isFresh || Sha.of(path).equals(fingerprint))) {
                return;
            }
        } catch (IOException e) {
            throw changed("this file went away, or cannot be read any more, while it was read");
        }
        throw changed("this file was changed while it was read");
    }

    private UnreadableRows changed(String problem) {
        return new UnreadableRows(Span.startOf(file), problem, "run this again once nobody writes into the file");
    }
}
