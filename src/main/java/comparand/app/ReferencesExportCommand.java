package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.model.library.SourceRecord;
import comparand.write.whole.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand references export LIBRARY --format F}: the sources of a library as a file of references. */
@Command(
        name = "export",
        description = {
            "Writes the references of a library's sources, in the order of their names, as RIS, PubMed nbib, BibTeX, CSL-JSON, or",
            "as text in the Vancouver style. A retracted or corrected source says so in every format."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ReferencesExportCommand implements Callable<Integer> {

    @ParentCommand
    private ReferencesCommand parent;

    @Parameters(paramLabel = "LIBRARY", description = "The folder with sources/")
    private Path library;

    @Option(
            names = "--format",
            required = true,
            paramLabel = "FORMAT",
            converter = ReferenceText.Named.class,
            description = "ris, nbib, bibtex, csl-json or vancouver")
    private ReferenceText format;

    @Option(
            names = "--source",
            paramLabel = "ID",
            arity = "1..*",
            split = ",",
            description = "Only these sources (default: all)")
    private List<String> wanted = List.of();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to a file that is not there yet (default: print)")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() throws IOException {
        return ReferenceSources.of(library)
                .<Call>fold((sources, none) -> () -> write(sources), findings -> () -> stopped(findings))
                .run();
    }

    private interface Call {
        int run() throws IOException;
    }

    private int write(ReferenceSources library) throws IOException {
        var findings = new ArrayList<Diagnostic>();
        var chosen = chosen(library.sources(), findings);
        place().ifPresent(findings::add);
        if (!findings.isEmpty()) {
            return stopped(findings);
        }
        var text = format.of(chosen, library.isInvented());
        if (out.isEmpty()) {
            parent.main().console().put(text);
            return Exit.DONE;
        }
        WholeFile.write(out.get(), text);
        parent.main().hasWritten();
        parent.main().console().say("wrote " + out.get());
        return Exit.DONE;
    }

    private SortedMap<String, SourceRecord> chosen(SortedMap<String, SourceRecord> sources, List<Diagnostic> findings) {
        if (wanted.isEmpty()) {
            return sources;
        }
        var chosen = new TreeMap<String, SourceRecord>();
        for (var id : wanted) {
            var source = sources.get(id);
            if (source == null) {
                findings.add(Diagnostic.stop(
                        "source-unknown",
                        Span.startOf(library.toString()),
                        "there is no source `%s` in this library".formatted(id),
                        "a list of references without it would look whole",
                        Suggest.instruction(id, sources.keySet())));
            } else {
                chosen.put(id, source);
            }
        }
        return chosen;
    }

    /** Nothing is overwritten, and nothing is put among the records. */
    private Optional<Diagnostic> place() {
        if (out.isEmpty()) {
            return Optional.empty();
        }
        var file = out.get().toAbsolutePath().normalize();
        var root = library.toAbsolutePath().normalize();
        if (Files.exists(file)) {
            return Optional.of(Diagnostic.stop(
                    "output-exists",
                    Span.startOf(out.get().toString()),
                    "`%s` is there already".formatted(out.get()),
                    "it would be lost",
                    "choose another file with `--out FILE`, or move it away"));
        }
        return file.startsWith(root) && !file.startsWith(root.resolve("references"))
                ? Optional.of(Diagnostic.stop(
                        "output-in-library",
                        Span.startOf(out.get().toString()),
                        "`%s` lies among the records of the library".formatted(out.get()),
                        "outputs among the records would be read as records",
                        "choose a file outside of it, or in its folder references/"))
                : Optional.empty();
    }

    private int stopped(List<Diagnostic> findings) {
        parent.main().console().findings(findings, library);
        return Exit.STOPPED;
    }
}
