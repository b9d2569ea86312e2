package comparand.read;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Where the files of a library lie: in its folder, or, for one run, in a folder laid over it whose files take the place of
 * those of the same path.
 *
 * @param over the folder laid over it, if there is one
 */
public record LibraryFolder(Path root, Optional<Path> over) {

    /** A library as it stands. */
    public LibraryFolder(Path root) {
        this(root, Optional.empty());
    }

    /**
     * Where a file is read from.
     *
     * @param file its path within the library, such as {@code sources/ardley-2023.yaml}
     */
    Path path(String file) {
        return over.map(o -> o.resolve(file)).filter(Files::exists).orElseGet(() -> root.resolve(file));
    }

    /** Whether a file of the folder laid over is read in the place of the library's, or beside its files. */
    boolean isLaidOver(String file) {
        return over.map(o -> o.resolve(file)).filter(Files::isRegularFile).isPresent();
    }

    /** What findings call a file: the path within the library of the file that is read. */
    String named(String file) {
        return isLaidOver(file) ? prefix() + file : file;
    }

    /** Where a file lies that findings name. */
    public Path shown(String named) {
        return over.filter(o -> named.startsWith(prefix()))
                .map(o -> o.resolve(named.substring(prefix().length())))
                .orElseGet(() -> root.resolve(named));
    }

    /** What stands before the names of laid over files: their folder as seen from the library, or its own name. */
    String prefix() {
        return over.map(o -> {
                    var folder = o.toAbsolutePath().normalize();
                    var library = root.toAbsolutePath().normalize();
                    var name = folder.startsWith(library) ? library.relativize(folder) : folder.getFileName();
                    return (name == null ? "" : name.toString().replace('\\', '/')) + "/";
                })
                .orElse("");
    }

    /** The entries of a folder of the library by name; hidden ones are left alone. */
    List<Path> list(String folder) throws IOException {
        var entries = new TreeMap<String, Path>();
        for (var place : Stream.concat(Stream.of(root), over.stream()).toList()) {
            if (Files.isDirectory(place.resolve(folder))) {
                try (var listed = Files.list(place.resolve(folder))) {
                    listed.filter(p -> !String.valueOf(p.getFileName()).startsWith("."))
                            .forEach(p -> entries.put(String.valueOf(p.getFileName()), p));
                }
            }
        }
        return List.copyOf(entries.values());
    }

    /** The files of the folder laid over, by their paths within it. */
    List<String> laidOver() throws IOException {
        if (over.isEmpty()) {
            return List.of();
        }
        try (var files = Files.walk(over.get())) {
            return files.filter(Files::isRegularFile)
                    .map(p -> over.get().relativize(p).toString().replace('\\', '/'))
                    .filter(f ->
                            Stream.of(f.split("/")).noneMatch(part -> part.startsWith(".") || part.startsWith("~$")))
                    .sorted()
                    .toList();
        }
    }

    /** Whether a path is a link to a place outside, which may not be: what lies elsewhere is not handed on with a library. */
    boolean leadsOutside(Path path, String file, List<Diagnostic> findings) {
        try {
            if (!Files.exists(path) || holds(path)) {
                return false;
            }
        } catch (IOException e) {
            findings.add(unreadable(file));
            return true;
        }
        findings.add(Diagnostic.stop(
                "file-outside",
                Span.startOf(file),
                "this is a link to a place outside of the library",
                "a library must be whole when it is handed on",
                "copy what it leads to in its place"));
        return true;
    }

    static Diagnostic unreadable(String file) {
        return Diagnostic.stop(
                "file-unreadable",
                Span.startOf(file),
                "this file could not be read",
                "a library is read whole or not at all",
                "check that it exists, is whole, and may be read");
    }

    /** Whether a path leads to a file of the library or of the folder laid over it. */
    boolean holds(Path path) throws IOException {
        var real = path.toRealPath();
        return real.startsWith(root.toRealPath())
                || (over.isPresent() && real.startsWith(over.get().toRealPath()));
    }
}
