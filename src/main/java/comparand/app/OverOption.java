package comparand.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** A folder laid over the library: the same for every command that reads one. */
final class OverOption {

    @Option(
            names = "--over",
            paramLabel = "DIR",
            description =
                    "Files that take the place of those of the same path in the library, for this run: an earlier or later"
                            + " state of them. Nothing is written into the library")
    private Optional<Path> folder = Optional.empty();

    Optional<Path> folder() {
        return folder;
    }
}
