package comparand.app;

import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.diag.DiagnosticText;
import comparand.diag.Span;
import comparand.document.publication.Publication;
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
            "Builds the outputs of one dossier: results.json, and what each reader is given.",
            "",
            "They are written together into a folder of their own, which replaces an earlier one whole; if a finding",
            "stops the build, the earlier one stays as it was."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
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
            names = "--for",
            paramLabel = "READER",
            split = ",",
            description =
                    "For whom: evidence, committee, supplier, talk, manuscript, several of them with commas, or all"
                            + " (default: all)",
            converter = Readers.Named.class)
    private List<Readers> readers = List.of(Readers.ALL);

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description =
                    "Language of the documents, en or de (default: the dossier's); what check, plan, trace and catalogue"
                            + " say stays in English, and so do findings in documents")
    private Optional<String> language = Optional.empty();

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "Templates of your house (default: the folder templates/ of the library, if it has one)")
    private Optional<Path> templates = Optional.empty();

    @Option(
            names = "--findings",
            paramLabel = "text|json",
            description = "How findings are printed (default: text)",
            defaultValue = "text")
    private FindingsFormat format;

    @Override
    public Integer call() throws IOException {
        return DossierFile.of(dossier).fold((file, none) -> build(file), findings -> stopped(findings, Path.of(".")));
    }

    private int build(DossierFile file) {
        var library = file.library();
        var folder = Optional.ofNullable(out).orElse(Main.reports()).resolve(file.id());
        return OutputPlace.check(folder, library)
                .then(place -> Pipeline.published(
                        file,
                        templates.orElse(library.resolve("templates")),
                        new Commission(Readers.together(readers), language)))
                .then(LegibleSlides::checked)
                .fold(
                        (publication, findings) -> written(publication, findings, folder, library),
                        findings -> stopped(findings, library));
    }

    private int written(Publication publication, List<Diagnostic> findings, Path folder, Path library) {
        List<Path> files;
        try {
            files = Output.write(publication, folder);
            main.hasWritten();
        } catch (IOException e) {
            return stopped(
                    List.of(Diagnostic.stop(
                            "output-unwritable",
                            Span.startOf(folder.toString()),
                            "the outputs could not be written: " + Output.reason(e),
                            "nothing was changed; an earlier output stands as it was",
                            "check that the folder may be written and that the disk has room")),
                    library);
        }
        if (format == FindingsFormat.json) {
            main.console().say(FindingsJson.of(findings));
        } else {
            main.console().findings(findings, library);
            Written.lines(folder, files).forEach(line -> main.console().say(line));
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
