package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.DiagnosticText;
import comparand.diag.Span;
import comparand.document.Publication;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand build DOSSIER}: all outputs of one dossier. */
@Command(
        name = "build",
        description = {
            "Builds the outputs of one dossier: results.json, the evidence workbook and the evidence table.",
            "",
            "They are written together into a folder of their own, which replaces an earlier one whole; if a finding",
            "stops the build, the earlier one stays as it was."
        },
        mixinStandardHelpOptions = true)
final class BuildCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where the folder of outputs is put (default: target/reports)")
    private @Nullable Path out;

    @Option(
            names = "--findings",
            paramLabel = "text|json",
            description = "How findings are printed (default: text)",
            defaultValue = "text")
    private FindingsFormat format;

    @Override
    public Integer call() throws IOException {
        var file = DossierFile.of(dossier);
        if (file.isEmpty()) {
            return stopped(List.of(DossierFile.missing(dossier)), Path.of("."));
        }
        var library = file.get().library();
        var folder = Optional.ofNullable(out)
                .orElse(Main.reports())
                .resolve(file.get().id());
        var misplaced = misplaced(folder, library);
        if (misplaced.isPresent()) {
            return stopped(List.of(misplaced.get()), library);
        }
        var outcome = Pipeline.published(file.get());
        return outcome.fold(
                (publication, findings) -> written(publication, findings, folder, library),
                findings -> stopped(findings, library));
    }

    private static Optional<Diagnostic> misplaced(Path folder, Path library) throws IOException {
        if (folder.toAbsolutePath().normalize().startsWith(library)) {
            return Optional.of(Diagnostic.stop(
                    "output-in-library",
                    Span.startOf(folder.toString()),
                    "`%s` lies inside the library".formatted(folder),
                    "outputs among the records would be read as records, or overwrite them",
                    "choose a folder outside of it with `--out DIR`"));
        }
        return Output.mayReplace(folder)
                ? Optional.empty()
                : Optional.of(Diagnostic.stop(
                        "output-not-ours",
                        Span.startOf(folder.toString()),
                        "`%s` holds files that are not an earlier output".formatted(folder),
                        "the folder is replaced whole, and they would be lost",
                        "choose another folder with `--out DIR`, or move them away"));
    }

    private int written(Publication publication, List<Diagnostic> findings, Path folder, Path library) {
        List<Path> files;
        try {
            files = Output.write(publication, folder);
        } catch (IOException e) {
            return stopped(
                    List.of(Diagnostic.stop(
                            "output-unwritable",
                            Span.startOf(folder.toString()),
                            "the outputs could not be written: "
                                    + String.valueOf(e.getMessage()).replaceAll("\\.$", ""),
                            "nothing was changed; an earlier output stands as it was",
                            "check that the folder may be written and that the disk has room")),
                    library);
        }
        if (format == FindingsFormat.json) {
            main.console().say(FindingsJson.of(findings));
        } else {
            main.console().findings(findings, library);
            files.forEach(f -> main.console().say("wrote " + f));
        }
        return Exit.DONE;
    }

    private int stopped(List<Diagnostic> findings, Path library) {
        if (format == FindingsFormat.json) {
            main.console().say(FindingsJson.of(findings));
        } else {
            main.console()
                    .complain(
                            findings.isEmpty()
                                    ? DiagnosticText.count(findings)
                                    : Console.text(findings, library).stripTrailing());
        }
        return Exit.STOPPED;
    }
}
