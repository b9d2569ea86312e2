package comparand.app;

import java.nio.file.Path;
import java.util.List;

/**
 * An output that stands in its place.
 *
 * @param written the files that were written, by their paths
 * @param unchanged how many were taken over from the output before, as they were
 */
record Built(Path folder, List<Path> written, int unchanged) {

    Built {
        written = List.copyOf(written);
    }
}
