package comparand.app;

import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.document.Edition;
import comparand.document.record.Entry;
import comparand.flow.Outcome;
import comparand.intake.FormTaking;
import comparand.intake.IntakeForm;
import comparand.intake.Scope;
import comparand.intake.Taken;
import comparand.model.Library;
import comparand.read.workbook.FormReader;
import comparand.write.xlsx.FormWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
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
                .then(files -> chosen(files, filled)
                        .then(records -> known(files, offered)
                                .map(m -> IntakeForm.of(
                                        Scope.used(files.library(), m), records, edition(files.library())))))
                .fold(
                        (form, said) -> {
                            try {
                                var bytes = new ByteArrayOutputStream();
                                FormWriter.write(form, bytes);
                                SafeFile.write(out, bytes.toByteArray());
                            } catch (IOException e) {
                                main.console().complain("The form could not be written: " + Output.reason(e) + ".");
                                return Exit.STOPPED;
                            }
                            main.hasWritten();
                            main.console().say("wrote " + out);
                            main.console()
                                    .say("next: fill it in, then comparand intake take " + out + " --library " + root);
                            return Exit.DONE;
                        },
                        findings -> stopped(findings, root));
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
        return RecordFiles.open(root)
                .then(files -> FormReader.read(form)
                        .map(f -> FormTaking.take(f, Scope.all(files.library()), files.records()))
                        .then(taken ->
                                files.tried(taken, main.today()).map(changes -> new Trial(files, taken, changes))))
                .fold(
                        (trial, said) -> taken(trial, said, form.toFile().getName(), root, dryRun),
                        findings -> stopped(findings, root));
    }

    private record Trial(RecordFiles files, Taken taken, List<RecordFiles.Change> changes) {}

    private int taken(Trial trial, List<Diagnostic> said, String form, Path root, boolean dryRun) {
        var console = main.console();
        console.findings(said.stream().filter(f -> f.span().file().equals(form)).toList(), root);
        trial.taken().echoes().forEach(e -> console.say(e.text()));
        trial.taken().sentences().forEach(console::say);
        if (trial.changes().isEmpty()) {
            console.say("Nothing to write: the library says all of this already.");
            return Exit.DONE;
        }
        if (!dryRun) {
            try {
                trial.files().write(trial.changes(), trial.taken());
            } catch (IOException e) {
                console.complain("A record could not be written: " + Output.reason(e)
                        + ". Those written before it are whole; take the form again once it is mended.");
                return Exit.STOPPED;
            }
            main.hasWritten();
        }
        var verb = dryRun ? "would write " : "wrote ";
        trial.changes().forEach(c -> console.say(verb + c.file() + (c.isNew() ? " (new)" : "")));
        return Exit.DONE;
    }

    /** The records of the sources to be written into a form. */
    private static Outcome<List<Entry.Fields>> chosen(RecordFiles files, List<String> sources) {
        var records = new ArrayList<Entry.Fields>();
        var findings = new ArrayList<Diagnostic>();
        for (var id : sources) {
            var record = files.records().get(id);
            if (record == null) {
                findings.add(unknown("source", id, files.records().keySet()));
            } else {
                records.add(record);
            }
        }
        return Outcome.of(records, findings);
    }

    private static Outcome<List<String>> known(RecordFiles files, List<String> metrics) {
        var catalogue = files.library().catalogue();
        return Outcome.of(
                metrics,
                metrics.stream()
                        .filter(m -> catalogue.find(m).isEmpty())
                        .map(m -> unknown("metric", m, catalogue.ids()))
                        .toList());
    }

    private static Diagnostic unknown(String what, String id, Collection<String> known) {
        return Diagnostic.stop(
                "form-" + what + "-not-there",
                Span.startOf("."),
                "the library has no %s `%s`".formatted(what, id),
                "the form would be without it",
                Suggest.instruction(id, List.copyOf(known)));
    }

    /** What the workbook says of itself; that data are invented if a dossier says so. */
    private Edition edition(Library library) {
        var words = Words.of("en");
        boolean invented = library.dossiers().values().stream()
                .anyMatch(d -> d.inventedData().value().isYes());
        return new Edition(
                "Intake form for published values",
                "Sources and what they print",
                main.today(),
                "",
                Version.tool(),
                "",
                words.say("draft"),
                invented ? List.of(words.say("invented")) : List.of(),
                words.cautions(),
                words.language());
    }

    /** What is worth a note in the files of the library is told by {@code check}. */
    private int stopped(List<Diagnostic> findings, Path library) {
        main.console().findings(findings.stream().filter(Diagnostic::stops).toList(), library);
        return Exit.STOPPED;
    }
}
