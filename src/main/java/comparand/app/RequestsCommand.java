package comparand.app;

import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.publication.Publication;
import comparand.model.Audience;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
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

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the folder of letters is put (default: target/reports)")
    private @Nullable Path out;

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "Templates of your house (default: the folder templates/ of the library, if it has one)")
    private Optional<Path> templates = Optional.empty();

    @Override
    public Integer call() {
        return DossierFile.of(dossier).fold((file, none) -> letters(file), findings -> stopped(findings, Path.of(".")));
    }

    private int letters(DossierFile file) {
        var folder = Optional.ofNullable(out).orElse(Main.reports()).resolve(file.id() + "-requests");
        return OutputPlace.check(folder, file.library())
                .then(place -> Pipeline.published(
                        file,
                        templates.orElse(file.library().resolve("templates")),
                        new Commission(Set.of(Audience.SUPPLIER), Optional.empty())))
                .fold(
                        (publication, findings) -> written(publication, folder, file.library()),
                        findings -> stopped(findings, file.library()));
    }

    private int written(Publication publication, Path folder, Path library) {
        if (publication.documents().isEmpty()) {
            main.console().say("Nothing that was looked for in the sources is missing; there is nobody to ask.");
            return Exit.DONE;
        }
        try {
            var files = Output.write(publication, folder);
            main.hasWritten();
            Written.lines(folder, files).forEach(line -> main.console().say(line));
            return Exit.DONE;
        } catch (IOException e) {
            return stopped(
                    List.of(Diagnostic.stop(
                            "output-unwritable",
                            Span.startOf(folder.toString()),
                            "the letters could not be written: " + Output.reason(e),
                            "nothing was changed; earlier letters stand as they were",
                            "check that the folder may be written and that the disk has room")),
                    library);
        }
    }

    private int stopped(List<Diagnostic> findings, Path library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }
}
