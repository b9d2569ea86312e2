package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.read.LibraryFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A dossier as named on the command line.
 *
 * @param folder the folder above dossiers/, and what is laid over it
 * @param id the file name without its ending
 */
record DossierFile(LibraryFolder folder, String id) {

    private static final String ENDING = ".yaml";

    /** The dossier of a path, or the finding that it is none. */
    static Outcome<DossierFile> of(Path path) {
        var name = path.getFileName();
        var folder = path.toAbsolutePath().normalize().getParent();
        if (name == null
                || folder == null
                || folder.getParent() == null
                || !folder.endsWith("dossiers")
                || !Files.isRegularFile(path)
                || !name.toString().endsWith(ENDING)) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "dossier-missing",
                    Span.startOf(path.toString()),
                    "`%s` is not a dossier".formatted(path),
                    "a dossier is a file ending in .yaml in the folder dossiers/ of a library",
                    "give its path, such as `evidence/dossiers/small-oxygenators.yaml`")));
        }
        var id = name.toString().substring(0, name.toString().length() - ENDING.length());
        return Outcome.of(new DossierFile(new LibraryFolder(folder.getParent()), id));
    }

    /** The same dossier with a folder laid over its library. */
    static Outcome<DossierFile> of(Path path, Optional<Path> over) {
        return of(path).map(f -> new DossierFile(new LibraryFolder(f.library(), over), f.id));
    }

    /** The folder of the library itself. */
    Path library() {
        return folder.root();
    }
}
