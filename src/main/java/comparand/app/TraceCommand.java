package comparand.app;

import comparand.compose.Ladder;
import comparand.diag.Diagnostic;
import comparand.diag.Suggest;
import comparand.model.Compared;
import comparand.read.LibraryFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand trace DOSSIER ID}: the ladder from print to table, for one value. */
@Command(
        name = "trace",
        description = {
            "Prints every step from print or raw data to the number in the table, for one value, and what it was set beside.",
            "",
            "ID is the id of a published value (B13) or of a local result, as the workbook lists them."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class TraceCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(index = "0", paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Parameters(index = "1", paramLabel = "ID", description = "The value")
    private String id;

    @Mixin
    private final OverOption over = new OverOption();

    @Override
    public Integer call() {
        return DossierFile.of(dossier, over.folder())
                .fold((file, none) -> trace(file), findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int trace(DossierFile file) {
        return Pipeline.answers(file)
                .fold((compared, findings) -> trace(compared), findings -> stopped(findings, file.folder()));
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
        main.console().findings(findings, library);
        return Exit.STOPPED;
    }

    private int trace(Compared compared) {
        var ladder = new Ladder(compared);
        var text = ladder.of(id);
        if (text.isEmpty()) {
            main.console()
                    .complain("There is no value `%s` in this dossier: %s"
                            .formatted(id, Suggest.instruction(id, ladder.ids())));
            return Exit.USAGE;
        }
        main.console().say(text.get());
        return Exit.DONE;
    }
}
