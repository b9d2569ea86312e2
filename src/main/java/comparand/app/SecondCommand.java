package comparand.app;

import comparand.flow.Outcome;
import comparand.intake.FormTaking;
import comparand.intake.IntakeForm;
import comparand.intake.Reconciliation;
import comparand.intake.Scope;
import comparand.intake.SecondReading;
import comparand.intake.Taken;
import comparand.read.workbook.FormReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand second}: a second reader, and what both settle. */
@Command(
        name = "second",
        description = {
            "Lets a second person read the sources without seeing the first reading, and settles what differs.",
            "",
            "comparand second form LIBRARY --source ID --out form.xlsx      the empty form",
            "comparand second compare form.xlsx --library LIBRARY           field by field; writes what differs, and who agrees",
            "comparand second settle reconcile.xlsx --library LIBRARY       takes what was agreed"
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SecondCommand implements Runnable {

    @ParentCommand
    private Main main;

    @Override
    public void run() {
        main.console().say("Say what to do: `comparand second form`, `compare` or `settle`; --help explains them.");
    }

    @Command(
            name = "form",
            description = {
                "Writes a form in which only source, device and metric of each value are filled in; with --strict nothing is."
            },
            mixinStandardHelpOptions = true)
    int form(
            @Parameters(paramLabel = "LIBRARY", description = "The library that was read once") Path root,
            @Option(
                            names = "--source",
                            paramLabel = "ID",
                            required = true,
                            description = "A source to be read again; may be given again")
                    List<String> sources,
            @Option(names = "--strict", description = "Let the second reader find the values, too") boolean strict,
            @Option(
                            names = "--out",
                            paramLabel = "FILE",
                            description = "The workbook (default: second.xlsx)",
                            defaultValue = "second.xlsx")
                    Path out) {
        return RecordFiles.open(root)
                .then(files -> Forms.chosen(files, sources)
                        .map(records -> IntakeForm.secondReader(
                                Scope.used(files.library(), List.of()),
                                strict ? List.of() : records,
                                Forms.edition(main.today(), files.library(), "Form for a second reader"))))
                .fold(
                        (form, said) -> Forms.written(main, form, out)
                                ? said("next: have it filled in, then comparand second compare " + out + " --library "
                                        + root)
                                : Exit.STOPPED,
                        findings -> Forms.stopped(main, findings, root));
    }

    private int said(String line) {
        main.console().say(line);
        return Exit.DONE;
    }

    /** A second reading with the library it was held against. */
    private record Compared(RecordFiles files, SecondReading reading, Taken noted) {}

    @Command(
            name = "compare",
            description = {
                "Holds a second reader's form against the library, field by field. Prints how often both agree; writes a workbook with",
                "the differences to be settled, and into the records who agrees. A value that is disputed is kept out of comparisons."
            },
            mixinStandardHelpOptions = true)
    int compare(
            @Parameters(paramLabel = "FILE", description = "The form the second reader filled in") Path form,
            @Option(names = "--library", paramLabel = "LIBRARY", required = true, description = "The library")
                    Path root,
            @Option(
                            names = "--out",
                            paramLabel = "FILE",
                            description = "The workbook with the differences (default: reconcile.xlsx)",
                            defaultValue = "reconcile.xlsx")
                    Path out) {
        return RecordFiles.open(root)
                .then(files -> FormReader.read(form).then(filled -> {
                    var scope = Scope.all(files.library());
                    var second = FormTaking.take(filled, scope, SecondReading.hidden(files.records()));
                    var reading = SecondReading.of(scope, files.records(), second.sources());
                    var reader = FormTaking.reader(filled);
                    return Outcome.of(
                            new Compared(files, reading, reading.noted(reader.by(), reader.on())), second.findings());
                }))
                .then(c -> c.files().tried(c.noted(), main.today()).map(changes -> new Tried(c, changes)))
                .fold((tried, said) -> compared(tried, out, root), findings -> Forms.stopped(main, findings, root));
    }

    private record Tried(Compared compared, List<RecordFiles.Change> changes) {}

    private int compared(Tried tried, Path out, Path root) {
        var reading = tried.compared().reading();
        var library = tried.compared().files().library();
        for (var field : reading.agreement()) {
            main.console()
                    .say("%-40s %d of %d%s"
                            .formatted(
                                    field.field(),
                                    field.same(),
                                    field.of(),
                                    field.kappa()
                                            .map(k -> ", kappa " + Reconciliation.kappa(k))
                                            .orElse("")));
        }
        reading.foundByOne().forEach(main.console()::say);
        if (!reading.agrees()
                && !Forms.written(
                        main,
                        Reconciliation.of(reading, Forms.edition(main.today(), library, "Differences to be settled")),
                        out)) {
            return Exit.STOPPED;
        }
        try {
            tried.compared().files().write(tried.changes(), tried.compared().noted());
        } catch (IOException e) {
            main.console().complain(Unwritten.records(e, root));
            return Exit.STOPPED;
        }
        main.hasWritten();
        tried.changes().forEach(c -> main.console().say("wrote " + c.file()));
        return said(
                reading.agrees()
                        ? "Both readers agree on every field."
                        : "next: settle the differences, then comparand second settle " + out + " --library " + root);
    }

    @Command(
            name = "settle",
            description = "Takes what both readers agreed on: the value, who settled it, when and why.",
            mixinStandardHelpOptions = true)
    int settle(
            @Parameters(paramLabel = "FILE", description = "The workbook with the differences, filled in") Path form,
            @Option(names = "--library", paramLabel = "LIBRARY", required = true, description = "The library")
                    Path root) {
        return Forms.taken(
                main,
                RecordFiles.open(root)
                        .then(files -> FormReader.read(form)
                                .map(f -> new Forms.Trial(
                                        files,
                                        Reconciliation.settled(f, Scope.all(files.library()), files.records())))),
                form,
                root,
                false);
    }
}
