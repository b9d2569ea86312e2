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
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand requests DOSSIER}: letters for what was not reported. */
@Command(
        name = "requests",
        description = {
            "Writes letters to makers and authors for what their documents do not say: one a recipient, with every fact that",
            "is missing, where its value stands, why it matters and in what form it is wanted.",
            "",
            "They are written into a folder of their own, with the results they are drawn from beside them. Nothing is sent."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class RequestsCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Mixin
    private final OverOption over = new OverOption();

    @Mixin
    private final OutputOptions outputs = new OutputOptions();

    @Override
    public Integer call() {
        return DossierFile.of(dossier, over.folder())
                .fold((file, none) -> letters(file), findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int letters(DossierFile file) {
        var folder = outputs.folder(file.id() + "-requests");
        return OutputPlace.check(folder, file.folder())
                .then(place -> Pipeline.published(
                        file,
                        outputs.templates(file.library()),
                        new Commission(Set.of(Audience.SUPPLIER), Optional.empty())))
                .fold(
                        (publication, findings) -> written(publication, folder, file.folder()),
                        findings -> stopped(findings, file.folder()));
    }

    private int written(Publication publication, Path folder, LibraryFolder library) {
        if (publication.documents().isEmpty()) {
            main.console().say("Nothing that was looked for in the sources is missing; there is nobody to ask.");
            return Exit.DONE;
        }
        return Output.written(publication, folder)
                .fold((files, none) -> said(files, folder), unwritable -> stopped(unwritable, library));
    }

    private int said(List<Path> files, Path folder) {
        main.hasWritten();
        Written.lines(folder, files).forEach(line -> main.console().say(line));
        return Exit.DONE;
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }
}
