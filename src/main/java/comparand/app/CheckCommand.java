package comparand.app;

import comparand.check.Checker;
import comparand.diag.Diagnostic;
import comparand.read.LibraryFolder;
import comparand.read.LibraryReader;
import comparand.study.LocalStudies;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand check LIBRARY}: findings only. */
@Command(
        name = "check",
        description = {
            "Reads a whole library and lists everything that is wrong or missing in it.",
            "",
            "STOP  nothing is written until it is mended",
            "HOLD  one value is kept out of comparisons",
            "NOTE  printed among the limitations of the documents"
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "LIBRARY", description = "The folder with devices/, sources/, studies/ and dossiers/")
    private Path library;

    @Option(
            names = "--findings",
            paramLabel = "text|json",
            description = "How findings are printed (default: text)",
            defaultValue = "text")
    private FindingsFormat format;

    @Mixin
    private final OverOption over = new OverOption();

    @Override
    public Integer call() {
        var folder = new LibraryFolder(library, over.folder());
        var findings = LibraryReader.read(folder)
                .then(l -> Checker.check(l, main.today()))
                .then(LocalStudies::examine)
                .findings();
        main.console().result(format, findings, folder);
        return findings.stream().anyMatch(Diagnostic::stops) ? Exit.STOPPED : Exit.DONE;
    }
}
