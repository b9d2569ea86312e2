package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.read.LibraryFolder;
import comparand.write.json.ResultJson;
import comparand.write.whole.WholeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
            if (holds(folder, library)) {
                return stop(
                        "output-over-library",
                        folder,
                        "the library lies inside `%s`".formatted(folder),
                        "the folder is replaced whole, and the library would be lost with it",
                        "choose another folder with `--out DIR`");
            }
            return settled(folder)
                    .then(said -> standing(folder)
                            .map(s -> Outcome.<Path>stopped(List.of(s)))
                            .orElseGet(() -> Outcome.of(folder)));
        } catch (IOException e) {
            return unseen(folder, e);
        }
    }

    private static Outcome<Path> unseen(Path folder, IOException e) {
        return stop(
                "output-unwritable",
                folder,
                "`%s` cannot be looked at: %s".formatted(folder, Reason.of(e)),
                "nothing can be written there",
                "choose another folder with `--out DIR`");
    }

    /** Where a link in the place of the folder leads; the folder itself where it is none. */
    static Path led(Path folder) {
        if (!Files.isSymbolicLink(folder)) {
            return folder;
        }
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            // it leads nowhere, and is found to be in the way
            return folder;
        }
    }

    /** Puts right what an earlier build left that was cut off; a note says so. */
    static Outcome<Path> settled(Path folder) {
        var led = led(folder);
        if (!WholeFolder.isUnsettled(led)) {
            return Outcome.of(folder);
        }
        try {
            var taken = WholeFolder.take(led, Checksums::isWhole);
            if (taken.isEmpty()) {
                return busy(folder);
            }
            try (var place = taken.get()) {
                return Outcome.of(folder, said(place.settle(), folder));
            }
        } catch (IOException e) {
            return unseen(folder, e);
        }
    }

    private static List<Diagnostic> said(WholeFolder.Settled settled, Path folder) {
        return switch (settled) {
            case NOTHING -> List.of();
            case FINISHED -> note(folder, "its outputs were whole, and stand in `%s` now".formatted(folder));
            case PUT_BACK -> note(folder, "the output before it stands in `%s` again".formatted(folder));
            case CLEARED -> note(folder, "what it left beside `%s` was taken away".formatted(folder));
        };
    }

    private static List<Diagnostic> note(Path folder, String message) {
        return List.of(Diagnostic.note(
                "output-settled",
                Span.startOf(folder.toString()),
                "an earlier run was cut off while it wrote here: " + message,
                "an output is the old one or the new one, and never between",
                "nothing to mend"));
    }

    static <T> Outcome<T> busy(Path folder) {
        return Outcome.stopped(List.of(Diagnostic.stop(
                "output-busy",
                Span.startOf(folder.toString()),
                "another run is writing into `%s`".formatted(folder),
                "of two that write into one folder, the second would undo what the first did; this one changed nothing",
                "wait until the other is done and run this again, or choose another folder with `--out DIR`")));
    }

    /** What stands in the place and may not be replaced. */
    static Optional<Diagnostic> standing(Path folder) {
        try {
            if (Files.isSymbolicLink(folder) && !Files.exists(folder)) {
                return Optional.of(finding(
                        "output-unwritable",
                        folder,
                        "`%s` is a link that leads nowhere".formatted(folder),
                        "nothing can be written there",
                        "take the link away, or choose another folder with `--out DIR`"));
            }
            if (!mayReplace(folder)) {
                return Optional.of(finding(
                        "output-not-ours",
                        folder,
                        "`%s` holds files that are not an earlier output".formatted(folder),
                        "the folder is replaced whole, and they would be lost",
                        "choose another folder with `--out DIR`, or move them away"));
            }
            return Checksums.changed(folder)
                    .map(name -> finding(
                            "output-edited",
                            folder,
                            "`%s` is not as the last run wrote it".formatted(name),
                            "the folder is replaced whole, and what somebody wrote there would be lost",
                            "move it away, or choose another folder with `--out DIR`"));
        } catch (IOException e) {
            return Optional.of(unseen(folder, e).findings().get(0));
        }
    }

    /** Whether a folder may be replaced: it is not there, is empty, or holds an earlier output. */
    private static boolean mayReplace(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (var entries = Files.list(folder)) {
            return entries.findAny().isEmpty() || isOurs(folder.resolve(Output.RESULTS));
        }
    }

    private static boolean isOurs(Path results) throws IOException {
        if (!Files.isRegularFile(results)) {
            return false;
        }
        try (var in = Files.newInputStream(results)) {
            return ResultJson.isResultSet(in);
        }
    }

    private static boolean isInside(Path folder, LibraryFolder library) throws IOException {
        var real = real(folder);
        return folders(library).anyMatch(real::startsWith);
    }

    private static boolean holds(Path folder, LibraryFolder library) throws IOException {
        var real = real(folder);
        return folders(library).anyMatch(l -> l.startsWith(real));
    }

    private static Stream<Path> folders(LibraryFolder library) throws IOException {
        return Stream.concat(
                Stream.of(library.root().toRealPath()),
                library.over().isPresent() ? Stream.of(real(library.over().get())) : Stream.empty());
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
        return Outcome.stopped(List.of(finding(code, folder, message, why, fix)));
    }

    private static Diagnostic finding(String code, Path folder, String message, String why, String fix) {
        return Diagnostic.stop(code, Span.startOf(folder.toString()), message, why, fix);
    }
}
