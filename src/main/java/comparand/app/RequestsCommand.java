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
        return new OneReader(main, Audience.SUPPLIER, Optional.empty(), "-requests")
                .write(dossier, over, outputs, new OneReader.Telling() {
                    @Override
                    public Optional<String> nothing(Publication publication) {
                        return publication.documents().isEmpty()
                                ? Optional.of(
                                        "Nothing that was looked for in the sources is missing; there is nobody to ask.")
                                : Optional.empty();
                    }

                    @Override
                    public void written(Built built, List<Diagnostic> findings, LibraryFolder library) {
                        Written.lines(built).forEach(main.console()::say);
                    }
                });
    }
}
