package comparand.app;

import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.document.publication.Publication;
import comparand.model.Audience;
import comparand.read.LibraryFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What commands do alike that write for one reader, into a folder of their own beside that of {@code build}.
 *
 * @param named what the name of the folder has behind that of the dossier
 */
record OneReader(Main main, Audience reader, Optional<String> language, String named) {

    /** What is told of it. */
    interface Telling {

        /** What is said in place of writing, where there is nothing for this reader. */
        Optional<String> nothing(Publication publication);

        /**
         * Of what was written.
         *
         * @param findings those that did not stop it
         */
        void written(Built built, List<Diagnostic> findings, LibraryFolder library);
    }

    /** Reads, composes, writes; the exit code. */
    int write(Path dossier, OverOption over, OutputOptions outputs, Telling telling) {
        return DossierFile.of(dossier, over.folder())
                .fold(
                        (file, none) -> write(file, outputs, telling),
                        findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int write(DossierFile file, OutputOptions outputs, Telling telling) {
        var folder = outputs.folder(file.id() + named);
        return OutputPlace.check(folder, file.folder())
                .then(place -> Pipeline.published(
                        file, outputs.templates(file.library()), new Commission(Set.of(reader), language)))
                .fold(
                        (publication, findings) ->
                                write(publication, findings, outputs.output(folder), file.folder(), telling),
                        findings -> stopped(findings, file.folder()));
    }

    private int write(
            Publication publication, List<Diagnostic> findings, Output output, LibraryFolder library, Telling telling) {
        var nothing = telling.nothing(publication);
        if (nothing.isPresent()) {
            main.console().say(nothing.get());
            return Exit.DONE;
        }
        return output.written(publication)
                .fold(
                        (built, none) -> {
                            main.hasWritten();
                            telling.written(built, findings, library);
                            return Exit.DONE;
                        },
                        unwritable -> stopped(unwritable, library));
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }
}
