package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A dossier as named on the command line.
 *
 * @param library the folder above dossiers/
 * @param id the file name without its ending
 */
record DossierFile(Path library, String id) {

    private static final String ENDING = ".yaml";

    /** The dossier of a path; empty, with a finding to print, if the path is no dossier of a library. */
    static Optional<DossierFile> of(Path path) {
        var name = path.getFileName();
        var folder = path.toAbsolutePath().normalize().getParent();
        if (name == null
                || folder == null
                || !Files.isRegularFile(path)
                || !name.toString().endsWith(ENDING)) {
            return Optional.empty();
        }
        var library = folder.getParent();
        boolean inDossiers = folder.endsWith("dossiers");
        return inDossiers && library != null
                ? Optional.of(new DossierFile(
                        library, name.toString().substring(0, name.toString().length() - ENDING.length())))
                : Optional.empty();
    }

    static Diagnostic missing(Path path) {
        return Diagnostic.stop(
                "dossier-missing",
                Span.startOf(path.toString()),
                "`%s` is not a dossier".formatted(path),
                "a dossier is a file ending in .yaml in the folder dossiers/ of a library",
                "give its path, such as `evidence/dossiers/small-oxygenators.yaml`");
    }
}
