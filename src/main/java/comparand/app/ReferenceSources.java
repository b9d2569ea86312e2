package comparand.app;

import comparand.diag.Diagnostic;
import comparand.flow.Outcome;
import comparand.model.Library;
import comparand.model.library.DossierRecord;
import comparand.model.library.SourceRecord;
import comparand.read.LibraryReader;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The sources of a library; a folder that holds no records yet has none.
 *
 * @param isInvented whether the data of the library are
 */
record ReferenceSources(SortedMap<String, SourceRecord> sources, boolean isInvented) {

    static Outcome<ReferenceSources> of(Path library) {
        return LibraryReader.read(library)
                .<Outcome<ReferenceSources>>fold(
                        (read, findings) -> Outcome.of(of(read)),
                        findings -> isEmpty(findings)
                                ? Outcome.of(new ReferenceSources(new TreeMap<>(), false))
                                : Outcome.stopped(findings));
    }

    private static ReferenceSources of(Library library) {
        return new ReferenceSources(
                library.sources(),
                library.dossiers().values().stream()
                        .map(DossierRecord::inventedData)
                        .anyMatch(i -> i.value().isYes()));
    }

    private static boolean isEmpty(List<Diagnostic> findings) {
        return findings.stream().allMatch(f -> f.code().equals("library-empty"));
    }
}
