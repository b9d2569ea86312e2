package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.model.library.SourceRecord;
import comparand.read.yaml.Binder;
import comparand.reference.Found;
import comparand.reference.Proposal;
import comparand.reference.Proposals;
import comparand.reference.format.ReferenceFile;
import comparand.write.whole.WholeFiles;
import comparand.write.yaml.RecordYaml;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand references import FILE... --library DIR}: records of sources from files of references. */
@Command(
        name = "import",
        description = {
            "Reads files of references (RIS, PubMed nbib, BibTeX, CSL-JSON; known by what they hold, not by their names) and says",
            "for each reference what record of a source it would give. With --write the records are written.",
            "",
            "A reference that seems to be in the library, or to come twice in the files, is held back, with the reason: the same",
            "DOI, else the same PMID, else title, year and first author near-equal. --also writes it all the same.",
            "Retractions, corrections and expressions of concern are read from the tags of PubMed, from DOI services and from titles.",
            "Tags that have no place in a record are kept under `kept:`, and an export has them again. Abstracts are not kept."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ReferencesImportCommand implements Callable<Integer> {

    /** Larger files are no lists of references that a person made. */
    private static final long LARGEST = 64L << 20;

    @ParentCommand
    private ReferencesCommand parent;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Files of references")
    private List<Path> files = List.of();

    @Option(names = "--library", paramLabel = "DIR", required = true, description = "The library the sources go to")
    private Path library;

    @Option(names = "--write", description = "Write the records; without it they are only shown")
    private boolean write;

    @Option(
            names = "--also",
            paramLabel = "ID",
            split = ",",
            description = "Write a reference that is held back, by the name it would have; several with commas between")
    private List<String> also = List.of();

    private final List<Diagnostic> findings = new ArrayList<>();
    private final Map<String, List<String>> lines = new LinkedHashMap<>();

    @Override
    public Integer call() throws IOException {
        return ReferenceSources.of(library)
                .<Call>fold((sources, none) -> () -> proposed(sources), stopped -> () -> stopped(stopped))
                .run();
    }

    private interface Call {
        int run() throws IOException;
    }

    private int proposed(ReferenceSources sources) throws IOException {
        var console = parent.main().console();
        var today = parent.main().today();
        var found = new ArrayList<Found>();
        files.forEach(f -> read(f).ifPresent(r -> {
            console.say(heading(r));
            found.addAll(r.references());
        }));
        var proposals = Proposals.of(found, sources.sources().values(), Set.copyOf(also), today);
        findings.addAll(proposals.findings());
        proposals.references().forEach(p -> console.say((p.isHeld() ? "- " : "+ ") + p.sentence(today)));
        proposals.studies().forEach(s -> console.say("= " + s.sentence()));
        alsoUnknown(proposals);
        proposals.written().stream()
                .filter(Proposal::lacksRevision)
                .map(ReferencesImportCommand::revision)
                .forEach(findings::add);
        if (findings.stream().anyMatch(Diagnostic::stops)) {
            return stopped(findings);
        }
        console.findings(findings, lines, library);
        return finished(proposals);
    }

    private Optional<ReferenceFile> read(Path path) {
        var file = path.toString();
        try {
            if (Files.size(path) > LARGEST) {
                findings.add(unreadable(file, "it is larger than 64 MB"));
                return Optional.empty();
            }
            var read = ReferenceFile.read(file, Files.readAllBytes(path), findings);
            read.ifPresent(r -> lines.put(file, r.lines()));
            return read;
        } catch (IOException e) {
            findings.add(unreadable(
                    file, Files.isDirectory(path) ? "it is a folder" : "it is not there, or may not be read"));
            return Optional.empty();
        }
    }

    private static Diagnostic unreadable(String file, String why) {
        return Diagnostic.stop(
                "references-unreadable",
                Span.startOf(file),
                "`%s` cannot be read: %s".formatted(file, why),
                "files are imported together or not at all, so that duplicates between them are found",
                "give the path of a file of references");
    }

    private static String heading(ReferenceFile file) {
        int n = file.references().size();
        return "%s: %s, %d reference%s, read as %s%s"
                .formatted(
                        file.file(),
                        file.format().title(),
                        n,
                        n == 1 ? "" : "s",
                        file.encoding(),
                        file.sample().map(s -> ", for example `" + s + "`").orElse(""));
    }

    private void alsoUnknown(Proposals proposals) {
        var ids = proposals.references().stream().map(Proposal::id).collect(Collectors.toSet());
        also.stream()
                .filter(id -> !ids.contains(id))
                .forEach(id -> findings.add(Diagnostic.stop(
                        "also-unknown",
                        Span.startOf(library.toString()),
                        "no reference of these files would be called `%s`".formatted(id),
                        "the reference that was meant would stay held back without a word",
                        Suggest.instruction(id, ids))));
    }

    private static Diagnostic revision(Proposal proposal) {
        return Diagnostic.note(
                "revision-to-add",
                proposal.at(),
                "the instructions for use `%s` come without a revision".formatted(proposal.id()),
                "they change from revision to revision, and `comparand check` stops until it is there",
                "add `document: {revision: C, date: 2024-03}` from the foot of the document to sources/%s.yaml"
                        .formatted(proposal.id()));
    }

    private int finished(Proposals proposals) throws IOException {
        var console = parent.main().console();
        var fresh = proposals.written();
        if (!write || fresh.isEmpty()) {
            console.say("Nothing was written."
                    + (fresh.isEmpty()
                            ? ""
                            : " With --write, %d source%s would be added to %s."
                                    .formatted(fresh.size(), fresh.size() == 1 ? "" : "s", library)));
            return Exit.DONE;
        }
        var texts = new ArrayList<WholeFiles.Change>();
        for (var proposal : fresh) {
            var file = library.resolve("sources").resolve(proposal.id() + ".yaml");
            if (Files.exists(file)) {
                return stopped(List.of(inTheWay(file)));
            }
            texts.add(new WholeFiles.Change(
                    "sources/" + file.getFileName(), Optional.empty(), WholeFiles.Content.of(text(proposal))));
        }
        try {
            WholeFiles.write(library, texts);
        } catch (IOException e) {
            console.complain(Unwritten.records(e, library));
            return Exit.STOPPED;
        }
        parent.main().hasWritten();
        texts.forEach(t -> console.say("wrote " + library.resolve(t.path())));
        console.say("next: comparand check " + library);
        return Exit.DONE;
    }

    private static Diagnostic inTheWay(Path file) {
        return Diagnostic.stop(
                "source-in-the-way",
                Span.startOf(file.toString()),
                "`%s` is there already and is no record of this library".formatted(file),
                "it would be lost",
                "rename it, or move it away");
    }

    /** The text of a record, which the library is sure to read. */
    private String text(Proposal proposal) {
        var today = parent.main().today();
        var text = RecordYaml.text(
                proposal.record(today),
                List.of(
                        "Imported on %s from line %d of %s. Kind and funding are assumptions until somebody has looked."
                                .formatted(
                                        today,
                                        proposal.at().line(),
                                        Path.of(proposal.at().file()).getFileName()),
                        "Values that are taken from it go below `values:`; `comparand start DIR` writes an example."));
        var faults = new ArrayList<Diagnostic>();
        if (Binder.read(proposal.id(), text.getBytes(StandardCharsets.UTF_8), SourceRecord.class, faults)
                .isEmpty()) {
            throw new IllegalStateException("a record that cannot be read would be written: " + faults);
        }
        return text;
    }

    private int stopped(List<Diagnostic> stopped) {
        parent.main().console().findings(stopped, lines, library);
        return Exit.STOPPED;
    }
}
