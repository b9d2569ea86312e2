package comparand.app;

import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.diag.DiagnosticText;
import comparand.document.publication.Publication;
import comparand.read.LibraryFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
            "stops the build, the earlier one stays as it was. What was made from the same before is taken over as it is."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class BuildCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DOSSIER", description = "A file in the folder dossiers/ of a library")
    private Path dossier;

    @Mixin
    private final OverOption over = new OverOption();

    @Mixin
    private final OutputOptions outputs = new OutputOptions();

    @Option(
            names = "--for",
            paramLabel = "READER",
            split = ",",
            description =
                    "For whom: evidence, committee, supplier, talk, manuscript, page, several of them with commas, or all"
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
            names = "--findings",
            paramLabel = "text|json",
            description = "How findings are printed (default: text)",
            defaultValue = "text")
    private FindingsFormat format;

    @Override
    public Integer call() throws IOException {
        return DossierFile.of(dossier, over.folder())
                .fold((file, none) -> build(file), findings -> stopped(findings, new LibraryFolder(Path.of("."))));
    }

    private int build(DossierFile file) {
        var library = file.library();
        var folder = outputs.folder(file.id());
        return OutputPlace.check(folder, file.folder())
                .then(place -> Pipeline.published(
                        file, outputs.templates(library), new Commission(Readers.together(readers), language)))
                .then(LegibleSlides::checked)
                .fold(
                        (publication, findings) -> written(publication, findings, folder, file.folder()),
                        findings -> stopped(findings, file.folder()));
    }

    private int written(Publication publication, List<Diagnostic> findings, Path folder, LibraryFolder library) {
        return outputs.output(folder)
                .written(publication)
                .fold((built, none) -> said(built, findings, library), unwritable -> stopped(unwritable, library));
    }

    private int said(Built built, List<Diagnostic> findings, LibraryFolder library) {
        main.hasWritten();
        if (format == FindingsFormat.json) {
            main.console().say(FindingsJson.of(findings));
        } else {
            main.console().findings(findings, library);
            Written.lines(built).forEach(line -> main.console().say(line));
        }
        return Exit.DONE;
    }

    private int stopped(List<Diagnostic> findings, LibraryFolder library) {
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
