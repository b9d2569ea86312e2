package comparand.app;

import comparand.diag.Diagnostic;
import comparand.document.publication.Publication;
import comparand.model.Audience;
import comparand.read.LibraryFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
        return new OneReader(main, Audience.PAGE, language, "-page")
                .write(dossier, over, outputs, new OneReader.Telling() {
                    @Override
                    public Optional<String> nothing(Publication publication) {
                        return Optional.empty();
                    }

                    @Override
                    public void written(Built built, List<Diagnostic> findings, LibraryFolder library) {
                        main.console().findings(findings, library);
                        show(built.folder().resolve(Output.PAGE));
                    }
                });
    }

    private void show(Path page) {
        main.console().say(page.toString());
        if (!printOnly) {
            Viewer.ofThisMachine().show(page);
        }
    }
}
