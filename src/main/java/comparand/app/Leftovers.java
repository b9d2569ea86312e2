package comparand.app;

import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.write.whole.WholeFiles;
import comparand.write.whole.WholeFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/**
 * What commands left that were cut off: before any command begins, the libraries and outputs that are named on its line are
 * brought to the state after the command before, or before it, and it is said which.
 */
final class Leftovers implements CommandLine.IExecutionStrategy {

    private final Console console;

    Leftovers(Console console) {
        this.console = console;
    }

    @Override
    public int execute(ParseResult parsed) {
        var findings = new ArrayList<Diagnostic>();
        named(parsed).forEach(path -> settle(path, findings));
        console.findings(findings, Path.of("."));
        return findings.stream().anyMatch(Diagnostic::stops) ? Exit.STOPPED : new CommandLine.RunLast().execute(parsed);
    }

    /** The paths on the line, and the folders such a path may stand for: of a dossier the library, of results their folder. */
    private static Set<Path> named(ParseResult parsed) {
        var paths = new LinkedHashSet<Path>();
        for (var command : parsed.asCommandLineList()) {
            command.getParseResult().matchedArgs().stream()
                    .flatMap(a -> paths(a.getValue()))
                    .forEach(p -> {
                        paths.add(p);
                        var above = p.toAbsolutePath().normalize().getParent();
                        if (above != null) {
                            paths.add(above);
                            Optional.ofNullable(above.getParent()).ifPresent(paths::add);
                        }
                    });
        }
        return paths;
    }

    private static Stream<Path> paths(Object value) {
        if (value instanceof Path path) {
            return Stream.of(path);
        }
        if (value instanceof Optional<?> optional) {
            return optional.stream().flatMap(Leftovers::paths);
        }
        return value instanceof Collection<?> all ? all.stream().flatMap(Leftovers::paths) : Stream.empty();
    }

    private static void settle(Path path, List<Diagnostic> findings) {
        if (WholeFiles.isUnsettled(path)) {
            records(path, findings);
        }
        if (WholeFolder.isUnsettled(OutputPlace.led(path))) {
            findings.addAll(OutputPlace.settled(path).findings());
        }
    }

    private static void records(Path library, List<Diagnostic> findings) {
        try {
            switch (WholeFiles.settle(library)) {
                case NOTHING -> {}
                case FINISHED -> findings.add(note(library, "all that it was to write is written now"));
                case CLEARED -> findings.add(note(library, "it had not begun, and every file is as it was"));
            }
        } catch (WholeFiles.Busy e) {
            findings.add(Diagnostic.stop(
                    "library-busy",
                    Span.startOf(library.toString()),
                    "another command is writing into `%s`".formatted(library),
                    "some of its files may be new by now, and some old",
                    "wait until the other is done, and run this again"));
        } catch (WholeFiles.ChangedMeanwhile e) {
            findings.add(Diagnostic.stop(
                    "library-unsettled",
                    Span.startOf(library.resolve(e.path()).toString()),
                    "an earlier command was cut off while it wrote, and this file was changed since",
                    "what it was to write would be lost, or what was written since",
                    "compare the file with those in `%s`, then delete that folder"
                            .formatted(library.resolve(WholeFiles.FOLDER))));
        } catch (IOException e) {
            findings.add(Diagnostic.stop(
                    "library-unsettled",
                    Span.startOf(library.toString()),
                    "an earlier command was cut off while it wrote, and it cannot be brought to its end: "
                            + Reason.of(e),
                    "some files may be new, and some old",
                    "check that the folder may be written and that the disk has room"));
        }
    }

    private static Diagnostic note(Path library, String message) {
        return Diagnostic.note(
                "library-settled",
                Span.startOf(library.toString()),
                "an earlier command was cut off while it wrote here: " + message,
                "files that belong together are written together or not at all",
                "nothing to mend");
    }
}
