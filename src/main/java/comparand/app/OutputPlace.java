package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.read.LibraryFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Whether outputs may go where they are wanted: outside of the library, and over nothing but an earlier output. */
final class OutputPlace {

    private OutputPlace() {}

    static Outcome<Path> check(Path folder, LibraryFolder library) {
        try {
            if (isInside(folder, library)) {
                return stop(
                        "output-in-library",
                        folder,
                        "`%s` lies inside the library".formatted(folder),
                        "outputs among the records would be read as records, or overwrite them",
                        "choose a folder outside of it with `--out DIR`");
            }
            var changed = Output.mayReplace(folder) ? Checksums.changed(folder) : Optional.<String>empty();
            if (changed.isPresent()) {
                return stop(
                        "output-edited",
                        folder,
                        "`%s` is not as the last run wrote it".formatted(changed.get()),
                        "the folder is replaced whole, and what somebody wrote there would be lost",
                        "move it away, or choose another folder with `--out DIR`");
            }
            return Output.mayReplace(folder)
                    ? Outcome.of(folder)
                    : stop(
                            "output-not-ours",
                            folder,
                            "`%s` holds files that are not an earlier output".formatted(folder),
                            "the folder is replaced whole, and they would be lost",
                            "choose another folder with `--out DIR`, or move them away");
        } catch (IOException e) {
            return stop(
                    "output-unwritable",
                    folder,
                    "`%s` cannot be looked at: %s".formatted(folder, Output.reason(e)),
                    "nothing can be written there",
                    "choose another folder with `--out DIR`");
        }
    }

    private static boolean isInside(Path folder, LibraryFolder library) throws IOException {
        var real = real(folder);
        return real.startsWith(library.root().toRealPath())
                || (library.over().isPresent()
                        && real.startsWith(real(library.over().get())));
    }

    /** Where a path leads once it exists: links are followed as far as there is something to follow. */
    private static Path real(Path path) throws IOException {
        var absolute = path.toAbsolutePath().normalize();
        for (var there = absolute; there != null; there = there.getParent()) {
            if (Files.exists(there)) {
                return there.toRealPath().resolve(there.relativize(absolute)).normalize();
            }
        }
        return absolute;
    }

    private static Outcome<Path> stop(String code, Path folder, String message, String why, String fix) {
        return Outcome.stopped(List.of(Diagnostic.stop(code, Span.startOf(folder.toString()), message, why, fix)));
    }
}
