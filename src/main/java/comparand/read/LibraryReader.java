package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.flow.Outcome;
import comparand.model.Library;
import comparand.model.RowSource;
import comparand.model.library.DeviceRecord;
import comparand.model.library.DossierRecord;
import comparand.model.library.MetricRecord;
import comparand.model.library.ScreeningRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.StudyRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads a library folder: devices, sources, metrics, studies with their raw data, logs of screening, and dossiers. */
public final class LibraryReader {

    /** Names that Windows keeps for itself, with any ending (Naming Files, Paths, and Namespaces). */
    private static final Set<String> OF_DEVICES = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1",
            "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private final LibraryFolder folder;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final SortedMap<String, String> fingerprints = new TreeMap<>();
    private final SortedMap<String, RowSource> data = new TreeMap<>();

    private LibraryReader(LibraryFolder folder) {
        this.folder = folder;
    }

    /** The library in a folder, or every fault of every file in it. */
    public static Outcome<Library> read(Path root) {
        return read(new LibraryFolder(root));
    }

    /** The library in a folder, with the files of a second folder in the place of its own. */
    public static Outcome<Library> read(LibraryFolder folder) {
        return new LibraryReader(folder).read();
    }

    private Outcome<Library> read() {
        var root = folder.root();
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
        var screenings = folder("screening", ScreeningRecord.class, ScreeningRecord::screening);
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
        var laidOver = new LaidOver(folder, fingerprints.keySet()).found(findings);
        return Outcome.of(
                new Library(devices, sources, studies, screenings, dossiers, catalogue, data, fingerprints, laidOver),
                findings);
    }

    /** The records of a folder; its files are read side by side and put together in the order of their names. */
    private <T extends Record> SortedMap<String, T> folder(
            String name, Class<T> type, Function<T, Located<String>> id) {
        var records = new TreeMap<String, T>();
        var files = list(name).parallelStream()
                .map(path -> RecordFile.in(folder, path, name + "/" + path.getFileName(), type))
                .toList();
        for (var file : files) {
            add(file).ifPresent(r -> register(records, r, id.apply(r), stem(file.file())));
        }
        return records;
    }

    private <T extends Record> Optional<T> add(RecordFile<T> file) {
        findings.addAll(file.findings());
        file.fingerprint().ifPresent(print -> fingerprints.put(file.file(), print));
        return file.record();
    }

    private SortedMap<String, StudyRecord> studies() {
        var records = new TreeMap<String, StudyRecord>();
        for (var study : list("studies")) {
            var name = "studies/" + study.getFileName();
            var file = name + "/study.yaml";
            var path = folder.path(file);
            if (folder.leadsOutside(study, name, findings) || folder.leadsOutside(path, folder.named(file), findings)) {
                continue;
            }
            if (!Files.isDirectory(study)) {
                findings.add(RecordFile.unexpected(name, "not a study folder"));
            } else if (!Files.isRegularFile(path)) {
                findings.add(Diagnostic.stop(
                        "study-missing",
                        Span.startOf(name),
                        "this folder has no study.yaml",
                        "without it nobody knows what the columns of its files mean",
                        "add study.yaml; `comparand start DIR` writes a blank one"));
            } else {
                add(RecordFile.read(folder, path, file, StudyRecord.class)).ifPresent(record -> {
                    register(records, record, record.study(), String.valueOf(study.getFileName()));
                    new RawData(folder, name, findings, fingerprints, data).read(record);
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
        } else if (!id.value().matches("[a-z0-9]++(?:-[a-z0-9]++)*+")) {
            findings.add(Diagnostic.stop(
                    "id-not-plain",
                    id.span(),
                    "`%s` is not a plain name".formatted(id.value()),
                    "names travel through file names, tables and addresses",
                    "use small letters, digits and single hyphens, as in `ardley-2023`"));
        } else if (OF_DEVICES.contains(id.value())) {
            findings.add(Diagnostic.stop(
                    "id-not-plain",
                    id.span(),
                    "`%s` names a device of the machine on Windows".formatted(id.value()),
                    "a file of this name can be neither written nor read there",
                    "give it another name, such as `%s-1`, and its file too".formatted(id.value())));
        }
        records.put(id.value(), record);
    }

    /** The entries of a folder by name; hidden ones are left alone, and a folder that is not there is empty. */
    private List<Path> list(String name) {
        if (folder.leadsOutside(folder.root().resolve(name), name, findings)) {
            return List.of();
        }
        try {
            return folder.list(name);
        } catch (IOException e) {
            findings.add(LibraryFolder.unreadable(name));
            return List.of();
        }
    }

    private static String stem(String file) {
        return file.substring(file.lastIndexOf('/') + 1, file.length() - ".yaml".length());
    }
}
