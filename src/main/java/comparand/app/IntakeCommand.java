package comparand.app;

import comparand.flow.Outcome;
import comparand.intake.FormTaking;
import comparand.intake.IntakeForm;
import comparand.intake.Scope;
import comparand.read.workbook.FormReader;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code comparand intake}: sources and values by workbook. */
@Command(
        name = "intake",
        description = {
            "Takes sources and their values from a workbook that anybody can fill in.",
            "",
            "comparand intake make LIBRARY --out form.xlsx     writes the form",
            "comparand intake take form.xlsx --library LIBRARY reads it back and writes the records"
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class IntakeCommand implements Runnable {

    @ParentCommand
    private Main main;

    @Override
    public void run() {
        main.console().say("Say what to do: `comparand intake make LIBRARY` or `comparand intake take FILE`.");
    }

    @Command(
            name = "make",
            description = {
                "Writes a form with the devices, sources and metrics of a library to choose from; with the conditions that decide",
                "its metrics, and an explanation at every cell."
            },
            mixinStandardHelpOptions = true)
    int make(
            @Parameters(paramLabel = "LIBRARY", description = "The folder with devices/ and sources/") Path root,
            @Option(
                            names = "--out",
                            paramLabel = "FILE",
                            description = "The workbook (default: intake.xlsx)",
                            defaultValue = "intake.xlsx")
                    Path out,
            @Option(
                            names = "--source",
                            paramLabel = "ID",
                            description = "A source whose values are written into the form; may be given again")
                    List<String> sources,
            @Option(
                            names = "--metric",
                            paramLabel = "ID",
                            description = "A metric to offer beside those in use; may be given again")
                    List<String> metrics) {
        var filled = sources == null ? List.<String>of() : sources;
        var offered = metrics == null ? List.<String>of() : metrics;
        return RecordFiles.open(root)
                .then(files -> Forms.chosen(files, filled)
                        .then(records -> known(files, offered)
                                .map(m -> IntakeForm.of(
                                        Scope.used(files.library(), m),
                                        List.copyOf(files.records().values()),
                                        records,
                                        Forms.edition(
                                                main.today(), files.library(), "Intake form for published values")))))
                .fold(
                        (form, said) -> {
                            if (!Forms.written(main, form, out)) {
                                return Exit.STOPPED;
                            }
                            main.console()
                                    .say("next: fill it in, then comparand intake take " + out + " --library " + root);
                            return Exit.DONE;
                        },
                        findings -> Forms.stopped(main, findings, root));
    }

    @Command(
            name = "take",
            description = {
                "Reads a filled form cell by cell and writes its records into the library: all of them, or with a list of the cells",
                "to mend none. Taking the same form again changes nothing. The workbook itself is never changed."
            },
            mixinStandardHelpOptions = true)
    int take(
            @Parameters(paramLabel = "FILE", description = "The workbook that was filled in") Path form,
            @Option(names = "--library", paramLabel = "LIBRARY", description = "The library it is for", required = true)
                    Path root,
            @Option(names = "--dry-run", description = "Only say what would be written") boolean dryRun) {
        return Forms.taken(
                main,
                RecordFiles.open(root)
                        .then(files -> FormReader.read(form)
                                .map(f -> new Forms.Trial(
                                        files, FormTaking.take(f, Scope.all(files.library()), files.records())))),
                form,
                root,
                dryRun);
    }

    private static Outcome<List<String>> known(RecordFiles files, List<String> metrics) {
        var catalogue = files.library().catalogue();
        return Outcome.of(
                metrics,
                metrics.stream()
                        .filter(m -> catalogue.find(m).isEmpty())
                        .map(m -> Forms.unknown("metric", m, catalogue.ids()))
                        .toList());
    }
}
