package comparand.app;

import comparand.diag.Diagnostic;
import comparand.flow.Outcome;
import comparand.intake.Interview;
import comparand.intake.Scope;
import comparand.intake.Taken;
import comparand.read.yaml.RecordBytes;
import comparand.read.yaml.RecordPlaces;
import comparand.write.whole.WholeFile;
import comparand.write.yaml.RecordYaml;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand add LIBRARY}: a value by questions at the terminal. */
@Command(
        name = "add",
        description = {
            "Asks for a published value, one thing at a time, and writes its record.",
            "",
            "?     explains what is asked, and lists the words that can be answered",
            "nr    not reported: you looked for it, and the source does not say",
            "back  takes the last answer back",
            "quit  stops; what was answered is kept, and taken up the next time",
            "An empty answer passes over what need not be answered."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class AddCommand implements Callable<Integer> {

    /** Hidden, so that the library does not take it for a record. */
    private static final String DRAFT = ".unfinished-value.yaml";

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "LIBRARY", description = "The library the value is for")
    private Path root;

    @Override
    public Integer call() throws IOException {
        var opened = RecordFiles.open(root);
        var files = opened.<Optional<RecordFiles>>fold((f, said) -> Optional.of(f), said -> Optional.empty());
        if (files.isEmpty()) {
            main.console()
                    .findings(
                            opened.findings().stream().filter(Diagnostic::stops).toList(), root);
            return Exit.STOPPED;
        }
        return new Session(files.get(), main.input()).run();
    }

    /** One sitting at the terminal. */
    private final class Session {
        private final RecordFiles files;
        private final BufferedReader in;
        private Interview interview;
        private int code = Exit.DONE;

        Session(RecordFiles files, BufferedReader in) {
            this.files = files;
            this.in = in;
            this.interview = new Interview(
                    Scope.all(files.library()), files.records(), main.today().toString());
        }

        int run() throws IOException {
            if (!resumed()) {
                return left();
            }
            while (true) {
                if (!asked()) {
                    return left();
                }
                var saved = saved();
                if (saved.isEmpty()) {
                    return left();
                }
                if (saved.get()) {
                    Files.deleteIfExists(draft());
                    if (!agreed("Another value of this source?").orElse(false)) {
                        return Exit.DONE;
                    }
                    interview = interview.another(files.records());
                }
            }
        }

        /** False when the person left. */
        private boolean resumed() throws IOException {
            if (!Files.isRegularFile(draft())) {
                return true;
            }
            var go = agreed("A value that was begun is not finished. Go on with it?");
            if (go.isEmpty()) {
                return false;
            }
            if (go.get()) {
                RecordPlaces.of(DRAFT, RecordBytes.of(draft()))
                        .fold(
                                (kept, said) -> {
                                    interview.resume(kept.record());
                                    return true;
                                },
                                said -> {
                                    main.console().complain("What was kept cannot be read; the questions start anew.");
                                    return false;
                                });
            }
            return true;
        }

        /** Puts questions until all are answered; false when the person left. */
        private boolean asked() throws IOException {
            for (var question = interview.next(); question.isPresent(); question = interview.next()) {
                var typed = typed(question.get().text() + (question.get().needed() ? " " : " (or empty) "));
                if (typed.isEmpty() || typed.get().strip().equals("quit")) {
                    return false;
                }
                switch (typed.get().strip()) {
                    case "?" -> main.console().say(question.get().help());
                    case "back" -> {
                        if (!interview.back()) {
                            main.console().say("This is the first question.");
                        }
                    }
                    default -> interview.answer(typed.get()).ifPresent(main.console()::say);
                }
                keep();
            }
            return true;
        }

        private void keep() throws IOException {
            WholeFile.write(draft(), RecordYaml.text(interview.kept(), List.of("A value that is not finished yet.")));
        }

        /** Whether the record was written; empty when the person left. */
        private Optional<Boolean> saved() throws IOException {
            var taken = interview.taken();
            var tried = files.tried(taken, main.today());
            for (var finding : tried.findings()) {
                main.console().say(told(finding));
            }
            var stops = tried.findings().stream().filter(Diagnostic::stops).toList();
            if (!stops.isEmpty()) {
                return interview.askAgain(stops) ? Optional.of(false) : change();
            }
            taken.echoes().forEach(e -> main.console().say("\"%s\" read as %s".formatted(e.typed(), e.readAs())));
            taken.sentences().forEach(main.console()::say);
            var save = agreed("Save?");
            return save.isEmpty() ? save : save.get() ? written(tried, taken) : change();
        }

        private Optional<Boolean> written(Outcome<List<RecordFiles.Change>> tried, Taken taken) throws IOException {
            var changes = tried.<List<RecordFiles.Change>>fold((c, said) -> c, said -> List.of());
            try {
                files.write(changes, taken);
            } catch (IOException e) {
                main.console().complain(Unwritten.records(e, root));
                code = Exit.STOPPED;
                return Optional.empty();
            }
            main.hasWritten();
            changes.forEach(c -> main.console().say("wrote " + c.file()));
            return Optional.of(true);
        }

        /** Which answer is to be given anew. */
        private Optional<Boolean> change() throws IOException {
            while (true) {
                var typed = typed("Which answer shall be changed? Its name, such as printed or unit; quit keeps all: ");
                if (typed.isEmpty() || typed.get().strip().equals("quit")) {
                    return Optional.empty();
                }
                if (interview.askAgain(typed.get().strip())) {
                    return Optional.of(false);
                }
                main.console()
                        .say("There is no answer of that name; there are: " + String.join(", ", interview.headings())
                                + ".");
            }
        }

        private String told(Diagnostic finding) {
            return "%s in `%s`: %s. Why: %s. To mend it: %s."
                    .formatted(
                            finding.severity(), finding.span().file(), finding.message(), finding.why(), finding.fix());
        }

        private int left() {
            main.console()
                    .say(
                            Files.isRegularFile(draft())
                                    ? "What was answered is kept; `comparand add " + root + "` takes it up."
                                    : "Nothing was begun.");
            return code;
        }

        /** Yes or no; empty when the person left. */
        private Optional<Boolean> agreed(String question) throws IOException {
            while (true) {
                var typed = typed(question + " [y | n] ");
                if (typed.isEmpty() || typed.get().strip().equals("quit")) {
                    return Optional.empty();
                }
                switch (typed.get().strip()) {
                    case "y", "yes" -> {
                        return Optional.of(true);
                    }
                    case "n", "no" -> {
                        return Optional.of(false);
                    }
                    default -> main.console().say("Type y or n.");
                }
            }
        }

        private Optional<String> typed(String prompt) throws IOException {
            main.console().ask(prompt);
            return Optional.ofNullable(in.readLine());
        }

        private Path draft() {
            return root.resolve(DRAFT);
        }
    }
}
