package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.digest.Sha;
import comparand.read.yaml.Binder;
import comparand.read.yaml.RecordBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one entry of a folder of records holds.
 *
 * @param file its path within the library
 * @param record empty where there is none, or a STOP is among the findings
 * @param fingerprint SHA-256 of its bytes in hexadecimal, where it was read
 */
record RecordFile<T extends Record>(
        String file, Optional<T> record, Optional<String> fingerprint, List<Diagnostic> findings) {

    RecordFile {
        findings = List.copyOf(findings);
    }

    /** Reads an entry of a folder that should hold nothing but records. */
    static <T extends Record> RecordFile<T> in(LibraryFolder folder, Path path, String file, Class<T> type) {
        var findings = new ArrayList<Diagnostic>();
        if (folder.leadsOutside(path, folder.named(file), findings)) {
            return none(file, findings);
        }
        if (Files.isDirectory(path)) {
            return none(file, List.of(unexpected(folder.named(file), "a folder")));
        }
        return file.endsWith(".yaml")
                ? read(folder, path, file, type)
                : none(file, List.of(unexpected(folder.named(file), "not a record")));
    }

    /** Reads a file that is known to lie in the library and to hold a record. */
    static <T extends Record> RecordFile<T> read(LibraryFolder folder, Path path, String file, Class<T> type) {
        var findings = new ArrayList<Diagnostic>();
        try {
            var bytes = RecordBytes.of(path);
            var record = Binder.read(folder.named(file), bytes, type, findings);
            return new RecordFile<>(file, record, Optional.of(Sha.of(bytes)), findings);
        } catch (IOException e) {
            return none(file, List.of(LibraryFolder.unreadable(folder.named(file))));
        }
    }

    private static <T extends Record> RecordFile<T> none(String file, List<Diagnostic> findings) {
        return new RecordFile<>(file, Optional.empty(), Optional.empty(), findings);
    }

    /** Something lies where records are expected. */
    static Diagnostic unexpected(String file, String what) {
        return Diagnostic.note(
                "file-not-read",
                Span.startOf(file),
                "this is %s, so it was not read".formatted(what),
                "a record nobody reads looks as if it counted",
                "name records with the ending .yaml, or move this elsewhere");
    }
}
