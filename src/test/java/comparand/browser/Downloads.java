package comparand.browser;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** What a browser saves. */
record Downloads(Path folder) {

    /** The one file downloaded since the browser was started or this was last asked; it is taken out of the folder. */
    Path next() {
        try {
            for (int tries = 0; tries < 100; tries++) {
                var all = requireNonNull(folder.toFile().listFiles());
                boolean isUnderWay =
                        Arrays.stream(all).anyMatch(f -> f.getName().endsWith(".crdownload"));
                // the name is taken by an empty file first
                var done = Arrays.stream(all)
                        .filter(f -> !isUnderWay && !f.isHidden() && f.length() > 0)
                        .toList();
                if (done.size() == 1) {
                    var file = done.get(0).toPath();
                    return Files.move(
                            file,
                            Files.createTempDirectory("comparand-download")
                                    .resolve(done.get(0).getName()));
                }
                Thread.sleep(50);
            }
            throw new AssertionError("no download came");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
