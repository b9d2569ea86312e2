package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.DiagnosticText;
import comparand.read.LibraryFolder;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a command prints: results to one stream, findings and errors to the other. */
final class Console {

    private final PrintStream out;
    private final PrintStream err;

    Console(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    void say(String text) {
        out.println(text);
    }

    /** Text that ends its own lines: the content of a file. */
    void put(String text) {
        out.print(text);
    }

    /** A question; the cursor stays behind it. */
    void ask(String question) {
        out.print(question);
        out.flush();
    }

    void complain(String text) {
        err.println(text);
    }

    /** Findings as text with source lines, to the error stream. */
    void findings(List<Diagnostic> findings, LibraryFolder library) {
        if (!findings.isEmpty()) {
            err.print(text(findings, library));
        }
    }

    /** The same of a library with nothing laid over it. */
    void findings(List<Diagnostic> findings, Path library) {
        findings(findings, new LibraryFolder(library));
    }

    static String text(List<Diagnostic> findings, Path library) {
        return text(findings, new LibraryFolder(library));
    }

    static String text(List<Diagnostic> findings, LibraryFolder library) {
        Map<String, Optional<List<String>>> seen = new HashMap<>();
        return DiagnosticText.render(findings, file -> seen.computeIfAbsent(file, f -> lines(library, f)));
    }

    /** The findings of a command that does no more than look, as its result. */
    void result(FindingsFormat format, List<Diagnostic> findings, LibraryFolder library) {
        say(
                format == FindingsFormat.json
                        ? FindingsJson.of(findings)
                        : findings.isEmpty()
                                ? DiagnosticText.count(findings)
                                : text(findings, library).stripTrailing());
    }

    /** Findings in files whose lines are known, and in those of a library. */
    void findings(List<Diagnostic> findings, Map<String, List<String>> known, Path library) {
        if (!findings.isEmpty()) {
            err.print(DiagnosticText.render(
                    findings,
                    file -> Optional.ofNullable(known.get(file)).or(() -> lines(new LibraryFolder(library), file))));
        }
    }

    private static Optional<List<String>> lines(LibraryFolder library, String file) {
        try {
            var path = library.shown(file);
            return Files.isRegularFile(path) && Files.size(path) < 50_000_000
                    ? Optional.of(Files.readAllLines(path))
                    : Optional.empty();
        } catch (IOException | InvalidPathException unreadable) {
            // the finding stands without its source line
            return Optional.empty();
        }
    }
}
