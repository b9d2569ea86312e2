package comparand.app;

import comparand.compose.Plans;
import comparand.diag.Diagnostic;
import comparand.read.LibraryFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand plan DOSSIER}: how much to measure next. */
@Command(
        name = "plan",
        description = {
            "Prints for every answer that is open how many units, cases or hospitals would settle it, for three standard",
            "deviations, with what these numbers rest on; then what else is not known, and who could supply it.",
            "",
            "What is to be found, the standard deviation and the power may be set in the dossier, under plan: of a question."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class PlanCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Mixin
    private final OverOption over = new OverOption();

    @Override
    public Integer call() {
        return DossierFile.of(dossier, over.folder())
                .fold(
                        (file, none) -> Pipeline.open(file)
                                .fold(
                                        (compared, findings) -> {
                                            main.console().say(new Plans(compared).text());
                                            return Exit.DONE;
                                        },
                                        findings -> stopped(findings, file.folder())),
                        findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }
}
