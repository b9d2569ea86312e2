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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand show DOSSIER}: the page, on the screen. */
@Command(
        name = "show",
        description = {
            "Builds the page of one dossier and opens it in a browser; where there is no screen, its path is all you get.",
            "",
            "The page is one file. It asks nothing of any network, can be read without scripts, and can be handed on as it is.",
            "It is written into a folder of its own, with the results it is drawn from beside it. The browser is the one named",
            "in the environment variable BROWSER, or the one your system opens such files with."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ShowCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Option(names = "--print", description = "Print the path of the page, and open nothing")
    private boolean printOnly;

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description = "Language of the page, en or de (default: the dossier's)")
    private Optional<String> language = Optional.empty();

    @Mixin
    private final OverOption over = new OverOption();

    @Mixin
    private final OutputOptions outputs = new OutputOptions();

    @Override
    public Integer call() {
        return DossierFile.of(dossier, over.folder())
                .fold((file, none) -> page(file), findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int page(DossierFile file) {
        var folder = outputs.folder(file.id() + "-page");
        return OutputPlace.check(folder, file.folder())
                .then(place -> Pipeline.published(
                        file, outputs.templates(file.library()), new Commission(Set.of(Audience.PAGE), language)))
                .fold(
                        (publication, findings) -> written(publication, findings, folder, file.folder()),
                        findings -> stopped(findings, file.folder()));
    }

    private int written(Publication publication, List<Diagnostic> findings, Path folder, LibraryFolder library) {
        return Output.written(publication, folder)
                .fold((files, none) -> shown(findings, folder, library), unwritable -> stopped(unwritable, library));
    }

    private int shown(List<Diagnostic> findings, Path folder, LibraryFolder library) {
        main.hasWritten();
        main.console().findings(findings, library);
        var page = folder.resolve(Output.PAGE);
        main.console().say(page.toString());
        if (!printOnly) {
            Viewer.ofThisMachine().show(page);
        }
        return Exit.DONE;
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }
}
