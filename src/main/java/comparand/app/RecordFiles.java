package comparand.app;

import comparand.check.Checker;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.digest.Sha;
import comparand.document.record.Entry;
import comparand.flow.Outcome;
import comparand.intake.Taken;
import comparand.model.Library;
import comparand.model.library.SourceRecord;
import comparand.read.LibraryReader;
import comparand.read.yaml.Binder;
import comparand.read.yaml.RecordBytes;
import comparand.read.yaml.RecordPlaces;
import comparand.write.whole.WholeFiles;
import comparand.write.yaml.RecordEdit;
import comparand.write.yaml.RecordYaml;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The source files of a library while records are taken into it. What is taken is tried first: bound and checked with the rest
 * of the library as if it were written, and every finding is told at the answer it comes from.
 */
final class RecordFiles {

    private static final String FOLDER = "sources/";

    private final Path root;
    private final Library library;
    private final SortedMap<String, String> texts = new TreeMap<>();
    private final SortedMap<String, Entry.Fields> records = new TreeMap<>();

    private RecordFiles(Path root, Library library) {
        this.root = root;
        this.library = library;
    }

    /** The library in a folder with the texts of its sources. */
    static Outcome<RecordFiles> open(Path root) {
        return LibraryReader.read(root).then(library -> {
            var files = new RecordFiles(root, library);
            var findings = new ArrayList<Diagnostic>();
            for (var id : library.sources().keySet()) {
                try {
                    var bytes = RecordBytes.of(root.resolve(file(id)));
                    if (!Sha.of(bytes).equals(library.fingerprints().get(file(id)))) {
                        findings.add(changed(id));
                        continue;
                    }
                    var read = RecordPlaces.of(file(id), bytes);
                    findings.addAll(read.findings());
                    read.fold((r, said) -> files.take(id, r), said -> false);
                    files.texts.put(id, new String(bytes, StandardCharsets.UTF_8));
                } catch (IOException e) {
                    findings.add(Diagnostic.stop(
                            "file-unreadable",
                            Span.startOf(file(id)),
                            "this file could not be read",
                            "a library is read whole or not at all",
                            "check that it exists, is whole, and may be read"));
                }
            }
            return Outcome.of(files, findings);
        });
    }

    private static Diagnostic changed(String id) {
        return Diagnostic.stop(
                "file-unreadable",
                Span.startOf(file(id)),
                "this file was changed while it was read",
                "what is written into a record rests on what it said before",
                "run this again once nobody writes into the file");
    }

    private boolean take(String id, RecordPlaces read) {
        records.put(id, read.record());
        return true;
    }

    private static String file(String source) {
        return FOLDER + source + ".yaml";
    }

    Library library() {
        return library;
    }

    SortedMap<String, Entry.Fields> records() {
        return records;
    }

    /** A file as it would be written. */
    record Change(String source, Path file, String text, boolean isNew) {}

    /** The files that would change, if nothing stops them. */
    Outcome<List<Change>> tried(Taken taken, LocalDate today) {
        var findings = new ArrayList<>(taken.findings());
        var changes = new ArrayList<Change>();
        var places = new TreeMap<String, RecordPlaces>();
        var sources = new TreeMap<>(library.sources());
        taken.sources().forEach((id, wanted) -> {
            var old = texts.get(id);
            var text = old == null ? RecordYaml.text(wanted, List.of()) : RecordEdit.apply(old, wanted);
            var bytes = text.getBytes(StandardCharsets.UTF_8);
            var own = new ArrayList<Diagnostic>();
            RecordPlaces.of(file(id), bytes)
                    .fold(
                            (p, said) -> {
                                places.put(id, p);
                                return true;
                            },
                            said -> false);
            Binder.read(file(id), bytes, SourceRecord.class, own).ifPresent(r -> sources.put(id, r));
            own.forEach(f -> findings.add(told(f, taken, places).orElse(f)));
            if (!text.equals(old)) {
                changes.add(new Change(id, root.resolve(file(id)), text, old == null));
            }
        });
        if (findings.stream().noneMatch(Diagnostic::stops)) {
            // a finding on what was there before is told by a check of the library
            Checker.check(library.withSources(sources), today).findings().stream()
                    .flatMap(f -> told(f, taken, places).stream())
                    .forEach(findings::add);
        }
        return Outcome.of(changes, findings);
    }

    /** The same finding at the answer it comes from; empty where it comes from none. */
    private static Optional<Diagnostic> told(Diagnostic finding, Taken taken, SortedMap<String, RecordPlaces> places) {
        for (var entry : places.entrySet()) {
            if (!file(entry.getKey()).equals(finding.span().file())) {
                continue;
            }
            var answered = taken.places().getOrDefault(entry.getKey(), Collections.emptySortedMap());
            for (var here = entry.getValue().at(finding.span()).orElse(""); !here.isEmpty(); here = above(here)) {
                var at = answered.get(here);
                if (at != null) {
                    return Optional.of(new Diagnostic(
                            finding.severity(), finding.code(), at, finding.message(), finding.why(), finding.fix()));
                }
            }
        }
        return Optional.empty();
    }

    private static String above(String path) {
        int slash = path.lastIndexOf('/');
        return slash < 0 ? "" : path.substring(0, slash);
    }

    /**
     * Writes all files or none, and goes on from there.
     *
     * @throws WholeFiles.ChangedMeanwhile if somebody has written one of them since it was read
     */
    void write(List<Change> changes, Taken taken) throws IOException {
        WholeFiles.write(
                root,
                changes.stream()
                        .map(c -> new WholeFiles.Change(
                                file(c.source()),
                                Optional.ofNullable(texts.get(c.source())),
                                WholeFiles.Content.of(c.text())))
                        .toList());
        for (var change : changes) {
            texts.put(change.source(), change.text());
            var record = taken.sources().get(change.source());
            if (record != null) {
                records.put(change.source(), record);
            }
        }
    }
}
