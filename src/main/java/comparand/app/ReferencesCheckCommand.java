package comparand.app;

import comparand.diag.Diagnostic;
import comparand.read.LibraryFolder;
import comparand.reference.LibraryDuplicates;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand references check LIBRARY}: works and studies that may stand in a library twice. */
@Command(
        name = "check",
        description = {
            "Looks for sources that seem to be one work (the same DOI, else the same PMID, else title, year and first author",
            "near-equal) and for reports that may be of one study, and gives the line to type. Nothing is changed."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ReferencesCheckCommand implements Callable<Integer> {

    @ParentCommand
    private ReferencesCommand parent;

    @Parameters(paramLabel = "LIBRARY", description = "The folder with sources/")
    private Path library;

    @Option(
            names = "--findings",
            paramLabel = "text|json",
            description = "How findings are printed (default: text)",
            defaultValue = "text")
    private FindingsFormat format;

    @Override
    public Integer call() {
        return ReferenceSources.of(library)
                .fold(
                        (read, none) ->
                                said(LibraryDuplicates.findings(read.sources().values())),
                        findings -> {
                            said(findings);
                            return Exit.STOPPED;
                        });
    }

    private int said(List<Diagnostic> findings) {
        parent.main().console().result(format, findings, new LibraryFolder(library));
        return Exit.DONE;
    }
}
