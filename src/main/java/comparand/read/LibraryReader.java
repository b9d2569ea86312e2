package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.flow.Outcome;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import comparand.model.library.DataFileRecord;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import comparand.read.yaml.Binder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads a library folder: devices, sources, metrics, studies with their raw data, and dossiers. */
public final class LibraryReader {

    private final Path root;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final SortedMap<String, String> fingerprints = new TreeMap<>();
    private final SortedMap<String, RowSource> data = new TreeMap<>();

    private LibraryReader(Path root) {
        this.root = root;
    }

    /** The library in a folder, or every fault of every file in it. */
    public static Outcome<Library> read(Path root) {
        return new LibraryReader(root).read();
    }

    private Outcome<Library> read() {
        if (!Files.isDirectory(root)) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "library-missing",
                    Span.startOf(root.toString()),
                    "`%s` is not a folder".formatted(root),
                    "a library is a folder with devices/, sources/, studies/ and dossiers/",
                    "give the folder, or write a new one with `comparand start %s`".formatted(root))));
        }
        var devices = folder("devices", DeviceRecord.class, DeviceRecord::device);
        var sources = folder("sources", SourceRecord.class, SourceRecord::source);
        var metrics = folder("metrics", MetricRecord.class, MetricRecord::metric);
        var dossiers = folder("dossiers", DossierRecord.class, DossierRecord::dossier);
        var studies = studies();
        var catalogue = DeclaredMetrics.catalogue(metrics.values(), findings);
        if (devices.isEmpty() && sources.isEmpty() && dossiers.isEmpty() && findings.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "library-empty",
                    Span.startOf("."),
                    "this folder holds no records",
                    "records lie in devices/, sources/, studies/ and dossiers/ as files ending in .yaml",
                    "give the folder above them, or write a new library with `comparand start DIR`"));
        }
        return Outcome.of(new Library(devices, sources, studies, dossiers, catalogue, data, fingerprints), findings);
    }

    private <T extends Record> SortedMap<String, T> folder(
            String name, Class<T> type, Function<T, Located<String>> id) {
        var records = new TreeMap<String, T>();
        for (var path : list(root.resolve(name))) {
            var file = name + "/" + path.getFileName();
            if (Files.isDirectory(path)) {
                unexpected(file, "a folder");
            } else if (!file.endsWith(".yaml")) {
                unexpected(file, "not a record");
            } else {
                record(path, file, type).ifPresent(r -> register(records, r, id.apply(r), stem(file)));
            }
        }
        return records;
    }

    private SortedMap<String, StudyRecord> studies() {
        var records = new TreeMap<String, StudyRecord>();
        for (var folder : list(root.resolve("studies"))) {
            var name = "studies/" + folder.getFileName();
            var path = folder.resolve("study.yaml");
            if (!Files.isDirectory(folder)) {
                unexpected(name, "not a study folder");
            } else if (!Files.isRegularFile(path)) {
                findings.add(Diagnostic.stop(
                        "study-missing",
                        Span.startOf(name),
                        "this folder has no study.yaml",
                        "without it nobody knows what the columns of its files mean",
                        "add study.yaml; `comparand start DIR` writes a blank one"));
            } else {
                record(path, name + "/study.yaml", StudyRecord.class).ifPresent(study -> {
                    register(records, study, study.study(), folder.getFileName().toString());
                    study.files().forEach(f -> data(folder, name, f));
                });
            }
        }
        return records;
    }

    private <T> void register(Map<String, T> records, T record, Located<String> id, String expected) {
        if (!id.value().equals(expected)) {
            findings.add(Diagnostic.stop(
                    "id-not-file-name",
                    id.span(),
                    "this record is called `%s`, and its file `%s`".formatted(id.value(), expected),
                    "one name for both keeps references findable and unique",
                    "write `%s` here, or rename the file".formatted(expected)));
        } else if (!id.value().matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            findings.add(Diagnostic.stop(
                    "id-not-plain",
                    id.span(),
                    "`%s` is not a plain name".formatted(id.value()),
                    "names travel through file names, tables and addresses",
                    "use small letters, digits and single hyphens, as in `ardley-2023`"));
        }
        records.put(id.value(), record);
    }

    private <T extends Record> Optional<T> record(Path path, String file, Class<T> type) {
        try {
            var bytes = Files.readAllBytes(path);
            fingerprints.put(file, HexFormat.of().formatHex(sha256().digest(bytes)));
            return Binder.read(file, bytes, type, findings);
        } catch (IOException e) {
            unreadable(file);
            return Optional.empty();
        }
    }

    private void data(Path folder, String name, DataFileRecord mapping) {
        var written = mapping.file().value();
        var file = name + "/" + written;
        var path = folder.resolve(isPlainName(written) ? written : "study.yaml");
        if (!isPlainName(written) || Files.isSymbolicLink(path)) {
            findings.add(Diagnostic.stop(
                    "file-outside",
                    mapping.file().span(),
                    "`%s` does not lie in the folder of this study".formatted(written),
                    "a library must be whole when it is handed on",
                    "copy the file beside study.yaml"));
            return;
        }
        if (!Files.isRegularFile(path)) {
            findings.add(Diagnostic.stop(
                    "file-missing",
                    mapping.file().span(),
                    "there is no file `%s` beside this study.yaml".formatted(written),
                    "results cannot be computed without the raw data",
                    Suggest.instruction(written, names(folder))));
            return;
        }
        var charset = charset(mapping);
        if (charset.isEmpty()) {
            return;
        }
        try {
            fingerprints.put(file, digest(path));
            data.put(file, CsvRows.open(path, file, mapping, charset.get()));
        } catch (UnreadableRows e) {
            findings.add(Diagnostic.stop(
                    "data-unreadable",
                    new Span(file, e.line(), 1, 1),
                    e.problem(),
                    "a file that cannot be read whole is not read at all",
                    e.fix()));
        } catch (IOException e) {
            unreadable(file);
        }
    }

    private static boolean isPlainName(String written) {
        return written.matches("[^/\\\\\\p{Cntrl}:]+") && !written.startsWith(".");
    }

    private Optional<Charset> charset(DataFileRecord mapping) {
        try {
            return Optional.of(Charset.forName(mapping.encoding().value()));
        } catch (IllegalArgumentException e) {
            findings.add(Diagnostic.stop(
                    "encoding-unknown",
                    mapping.encoding().span(),
                    "`%s` is not an encoding known here"
                            .formatted(mapping.encoding().value()),
                    "read in another encoding, signs and units change",
                    "write `UTF-8`, `windows-1252` or `ISO-8859-1`"));
            return Optional.empty();
        }
    }

    private void unreadable(String file) {
        findings.add(Diagnostic.stop(
                "file-unreadable",
                Span.startOf(file),
                "this file could not be read",
                "a library is read whole or not at all",
                "check that it exists, is whole, and may be read"));
    }

    private void unexpected(String file, String what) {
        findings.add(Diagnostic.note(
                "file-not-read",
                Span.startOf(file),
                "this is %s, so it was not read".formatted(what),
                "a record nobody reads looks as if it counted",
                "name records with the ending .yaml, or move this elsewhere"));
    }

    /** The entries of a folder by name; hidden ones are left alone, and a folder that is not there is empty. */
    private List<Path> list(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (var entries = Files.list(folder)) {
            return entries.filter(p -> !p.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            unreadable(root.relativize(folder).toString());
            return List.of();
        }
    }

    private List<String> names(Path folder) {
        return list(folder).stream()
                .map(p -> p.getFileName().toString())
                .filter(n -> !n.equals("study.yaml"))
                .toList();
    }

    private static String stem(String file) {
        return file.substring(file.lastIndexOf('/') + 1, file.length() - ".yaml".length());
    }

    private static String digest(Path path) throws IOException {
        var sha = sha256();
        var buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(path)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                sha.update(buffer, 0, n);
            }
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
