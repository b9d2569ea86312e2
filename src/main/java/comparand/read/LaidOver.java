package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a folder laid over a library did: which of its files were read, and that none was laid there for nothing. */
final class LaidOver {

    private static final String CODE = "laid-over";

    private final LibraryFolder folder;
    private final Set<String> read;

    /**
     * Of a library that was read.
     *
     * @param read the files, by their paths within the library
     */
    LaidOver(LibraryFolder folder, Set<String> read) {
        this.folder = folder;
        this.read = read;
    }

    /** The files that were read from the folder laid over: what findings call each, by its path within the library. */
    SortedMap<String, String> found(List<Diagnostic> findings) {
        var found = new TreeMap<String, String>();
        if (folder.over().isEmpty()) {
            return found;
        }
        var over = folder.over().get();
        if (!Files.isDirectory(over)) {
            findings.add(Diagnostic.stop(
                    "laid-over-missing",
                    Span.startOf(over.toString()),
                    "`%s` is not a folder".formatted(over),
                    "without it the library would be read as it stands, which is not what was asked",
                    "give a folder with files in the same places as in the library, such as sources/x.yaml"));
            return found;
        }
        try {
            for (var file : folder.laidOver()) {
                if (read.contains(file)) {
                    found.put(file, folder.named(file));
                } else if (!file.startsWith("studies/") || findings.stream().noneMatch(Diagnostic::stops)) {
                    // the files of a study that cannot be read are not looked for
                    nothing(file, findings);
                }
            }
        } catch (IOException e) {
            findings.add(Diagnostic.stop(
                    "file-unreadable",
                    Span.startOf(over.toString()),
                    "`%s` could not be read".formatted(over),
                    "a library is read whole or not at all",
                    "check that it is whole, and may be read"));
        }
        if (!found.isEmpty()) {
            said(found, findings);
        }
        return found;
    }

    private void nothing(String file, List<Diagnostic> findings) {
        // a file that its study maps no more is pointed out there already, as a note; here it was laid over on purpose
        findings.removeIf(f -> f.span().file().equals(folder.named(file)) && !f.stops());
        findings.add(Diagnostic.stop(
                "laid-over-unknown",
                Span.startOf(folder.named(file)),
                "nothing in this library is read from a file `%s`".formatted(file),
                "a file laid over a library and never read looks as if it counted",
                file.startsWith("templates/")
                        ? "give the folder of these templates with `--templates DIR`"
                        : Suggest.instruction(file, read)));
    }

    private void said(SortedMap<String, String> found, List<Diagnostic> findings) {
        findings.add(Diagnostic.note(
                CODE,
                Span.startOf(List.copyOf(found.values()).get(0)),
                "read from `%s` in place of the library's own: %s"
                        .formatted(folder.prefix().replaceAll("/$", ""), String.join(", ", found.keySet())),
                "the report speaks of these files, not of the library as it stands",
                "nothing to mend; run it without `--over` for the library as it stands"));
    }
}
