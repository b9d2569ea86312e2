package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.model.library.DataFileRecord;
import comparand.model.library.StudyRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** The raw data files of one study: found, fingerprinted and opened for streaming. */
final class RawData {

    private final LibraryFolder folder;
    private final String name;
    private final List<Diagnostic> findings;
    private final SortedMap<String, String> fingerprints;
    private final SortedMap<String, RowSource> data;
    private final Map<String, Steady> files = new HashMap<>();

    RawData(
            LibraryFolder folder,
            String name,
            List<Diagnostic> findings,
            SortedMap<String, String> fingerprints,
            SortedMap<String, RowSource> data) {
        this.folder = folder;
        this.name = name;
        this.findings = findings;
        this.fingerprints = fingerprints;
        this.data = data;
    }

    void read(StudyRecord study) {
        study.undecided().forEach(this::undecided);
        var mapped = new HashSet<String>();
        for (var file : study.files()) {
            file.undecided().forEach(this::undecided);
            if (mapped.add(file.name())) {
                open(file);
            } else {
                stop(
                        "file-mapped-twice",
                        file.file(),
                        "`%s` is mapped in this study already".formatted(file.name()),
                        "its rows would count twice",
                        "keep one of the two mappings");
            }
        }
        // a file under another name than the mapping's is found already
        boolean all = mapped.stream().allMatch(n -> data.containsKey(name + "/" + n));
        var files = study.files().stream().map(f -> f.file().value()).collect(Collectors.toSet());
        names().stream()
                .filter(n -> all && !files.contains(n))
                .forEach(n -> findings.add(Diagnostic.note(
                        "file-not-read",
                        Span.startOf(folder.named(name + "/" + n)),
                        "study.yaml does not map this file, so it was not read",
                        "data nobody reads look as if they counted",
                        "map it under `files:`, or move it elsewhere")));
    }

    private void undecided(Located<String> question) {
        stop(
                "undecided",
                question,
                "this is left open: " + question.value().strip().replaceAll("[.?!]+$", ""),
                "what the author of a study has not decided, nobody decides in passing",
                "settle it in this file, then delete this line");
    }

    private void open(DataFileRecord mapping) {
        var written = mapping.file().value();
        var path = folder.path(name + "/" + (isPlainName(written) ? written : "study.yaml"));
        if (!isPlainName(written) || Files.isSymbolicLink(path)) {
            stop(
                    "file-outside",
                    mapping.file(),
                    "`%s` does not lie in the folder of this study".formatted(written),
                    "a library must be whole when it is handed on",
                    "copy the file beside study.yaml");
            return;
        }
        if (!Files.isRegularFile(path)) {
            stop(
                    "file-missing",
                    mapping.file(),
                    Files.isDirectory(path)
                            ? "`%s` is a folder".formatted(written)
                            : "there is no file `%s` beside this study.yaml".formatted(written),
                    "results cannot be computed without the raw data",
                    Files.isDirectory(path)
                            ? "put the file itself beside study.yaml"
                            : Suggest.instruction(written, names()));
            return;
        }
        DataFileForm.of(mapping, findings).ifPresent(form -> open(path, name + "/" + written, mapping, form));
    }

    private void open(Path path, String file, DataFileRecord mapping, DataFileForm form) {
        var notes = new ArrayList<Diagnostic>();
        try {
            // two mappings may be of two sheets of one workbook
            var steady = files.get(file);
            if (steady == null) {
                steady = Steady.of(path, folder.named(file));
                files.put(file, steady);
                fingerprints.put(file, steady.fingerprint());
            }
            data.put(name + "/" + mapping.name(), new SteadyRows(form.open(path, folder.named(file), notes), steady));
        } catch (UnreadableRows e) {
            findings.add(Diagnostic.stop(
                    "data-unreadable",
                    e.place(),
                    e.problem(),
                    "a file that cannot be read whole is not read at all",
                    e.fix()));
        } catch (IOException e) {
            findings.add(LibraryFolder.unreadable(folder.named(file)));
        }
        // what is said of a workbook as a whole is said once
        notes.stream().filter(n -> !findings.contains(n)).forEach(findings::add);
    }

    private static boolean isPlainName(String written) {
        return written.matches("[^/\\\\\\p{Cntrl}:]+") && !written.startsWith(".");
    }

    /** The files beside study.yaml, hidden ones left alone. */
    private List<String> names() {
        try {
            return folder.list(name).stream()
                    .filter(Files::isRegularFile)
                    .map(p -> String.valueOf(p.getFileName()))
                    .filter(n -> !n.equals("study.yaml") && !n.startsWith("~$"))
                    .toList();
        } catch (IOException e) {
            // the folder was listed a moment ago; what is missing from it is found file by file
            return List.of();
        }
    }

    private void stop(String code, Located<?> at, String message, String why, String fix) {
        findings.add(Diagnostic.stop(code, at.span(), message, why, fix));
    }
}
