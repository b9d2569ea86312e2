package comparand.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where outputs are put, and by which templates they are set: the same for every command that writes them. */
final class OutputOptions {

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the folder of outputs is put (default: target/reports)")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "Templates of your house (default: the folder templates/ of the library, if it has one)")
    private Optional<Path> templates = Optional.empty();

    @Option(
            names = "--anew",
            description = "Write every file, also where the outputs that are there were made from the same")
    private boolean anew;

    /** The folder of that name where outputs are put. */
    Path folder(String name) {
        return out.orElseGet(Main::reports).resolve(name);
    }

    Output output(Path folder) {
        return new Output(folder, anew);
    }

    Path templates(Path library) {
        return templates.orElse(library.resolve("templates"));
    }
}
