package comparand.app;

import comparand.compose.ledger.Ledger;
import comparand.compose.ledger.LedgerText;
import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.document.result.ResultSet;
import comparand.flow.Outcome;
import comparand.read.LibraryFolder;
import comparand.read.results.ResultReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code comparand changes OLD NEW}: what changed between two runs of one dossier. */
@Command(
        name = "changes",
        description = {
            "Tells what changed between two runs of one dossier: sources, values, rules, local data, the tool; and every answer",
            "that is not the same, before and after, with the changes it comes from.",
            "",
            "OLD and NEW are two files results.json, or the folders of outputs they lie in."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ChangesCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "OLD", description = "The earlier run")
    private Path before;

    @Parameters(index = "1", paramLabel = "NEW", description = "The later run")
    private Path after;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "Also writes it to a file; its ending, pdf, xlsx or json, says how. May be given several times")
    private List<Path> files = List.of();

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description =
                    "Language of the ledger, en or de (default: that of the runs); answers stay as the runs said them")
    private Optional<String> language = Optional.empty();

    @Override
    public Integer call() {
        files.stream()
                .filter(f -> !LedgerFiles.ENDINGS.contains(LedgerFiles.ending(f)))
                .findFirst()
                .ifPresent(f -> {
                    throw new ParameterException(
                            spec.commandLine(), "`%s` does not end in .pdf, .xlsx or .json".formatted(f));
                });
        return runs().fold((both, findings) -> told(both, findings), this::stopped);
    }

    /** The two runs, in the words of their ledger. */
    private record Runs(ResultSet before, ResultSet after, Words words) {}

    private Outcome<Runs> runs() {
        // both are read, so that all that is wrong is said at once
        var old = ResultReader.read(before);
        var later = ResultReader.read(after);
        return Outcome.all(List.of(old, later)).then(both -> together(both.get(0), both.get(1)));
    }

    private Outcome<Runs> together(ResultSet old, ResultSet later) {
        var at = Span.startOf(after.toString());
        if (!old.run().dossier().equals(later.run().dossier())) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "results-of-two-dossiers",
                    at,
                    "these are results of `%s`, and the earlier ones of `%s`"
                            .formatted(later.run().dossier(), old.run().dossier()),
                    "answers to two questions cannot be held against each other",
                    "give two runs of one dossier")));
        }
        var spoken = old.run().language();
        if (!spoken.equals(later.run().language())) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "results-of-two-languages",
                    at,
                    "these results are in the language `%s`, and the earlier ones in `%s`"
                            .formatted(later.run().language().orElse("?"), spoken.orElse("?")),
                    "every sentence would seem to have changed",
                    "build both runs anew in one language")));
        }
        var wanted = language.or(() -> spoken).orElse("en");
        var words = Words.find(wanted);
        if (words.isEmpty()) {
            return Outcome.stopped(List.of(Diagnostic.stop(
                    "language-unknown",
                    at,
                    "there are no words for the language `%s`".formatted(wanted),
                    "every sentence of the ledger comes from one file of words",
                    "write `--language en` or `--language de`")));
        }
        return Outcome.of(new Runs(old, later, words.get()), order(old, later));
    }

    private List<Diagnostic> order(ResultSet old, ResultSet later) {
        return old.run().asOf().compareTo(later.run().asOf()) <= 0
                ? List.of()
                : List.of(Diagnostic.note(
                        "results-in-reverse",
                        Span.startOf(before.toString()),
                        "the earlier results speak of %s, and the later ones of %s"
                                .formatted(old.run().asOf(), later.run().asOf()),
                        "before and after may be the wrong way round",
                        "give the earlier run first"));
    }

    private int told(Runs runs, List<Diagnostic> findings) {
        var ledger = Ledger.of(runs.before, runs.after, runs.words);
        main.console().findings(findings, here());
        main.console().say(LedgerText.of(ledger, runs.words));
        return new LedgerFiles(ledger, runs.after.run(), runs.words)
                .written(files)
                .fold(
                        (written, none) -> {
                            main.hasWritten();
                            written.forEach(f -> main.console().say("wrote " + f));
                            return Exit.DONE;
                        },
                        this::stopped);
    }

    private int stopped(List<Diagnostic> findings) {
        main.console().findings(findings, here());
        return Exit.STOPPED;
    }

    private static LibraryFolder here() {
        return new LibraryFolder(Path.of("."));
    }
}
