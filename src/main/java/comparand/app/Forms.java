package comparand.app;

import comparand.compose.text.Words;
import comparand.diag.Diagnostic;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.document.Edition;
import comparand.document.form.FormBook;
import comparand.document.record.Entry;
import comparand.flow.Outcome;
import comparand.intake.Taken;
import comparand.model.Library;
import comparand.write.whole.WholeFile;
import comparand.write.xlsx.FormWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What the commands that write forms and take them back have alike. */
final class Forms {

    private Forms() {}

    /** What a workbook says of itself; that data are invented if a dossier says so. */
    static Edition edition(LocalDate today, Library library, String title) {
        var words = Words.of("en");
        boolean invented = library.dossiers().values().stream()
                .anyMatch(d -> d.inventedData().value().isYes());
        return new Edition(
                title,
                "Sources and what they print",
                today,
                "",
                Version.tool(),
                "",
                words.say("draft"),
                invented ? List.of(words.say("invented")) : List.of(),
                words.cautions(),
                words.language());
    }

    /** The records of sources, by their names. */
    static Outcome<List<Entry.Fields>> chosen(RecordFiles files, List<String> sources) {
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

    static Diagnostic unknown(String what, String id, Collection<String> known) {
        return Diagnostic.stop(
                what.equals("source") ? "form-source-not-there" : "form-metric-not-there",
                Span.startOf("."),
                "the library has no %s `%s`".formatted(what, id),
                "the form would be without it",
                Suggest.instruction(id, List.copyOf(known)));
    }

    /** Whether the workbook was written; it is said where, or why not. */
    static boolean written(Main main, FormBook form, Path out) {
        try {
            var bytes = new ByteArrayOutputStream();
            FormWriter.write(form, bytes);
            WholeFile.write(out, bytes.toByteArray());
        } catch (IOException e) {
            main.console().complain("The workbook could not be written: " + Reason.of(e) + ".");
            return false;
        }
        main.hasWritten();
        main.console().say("wrote " + out);
        return true;
    }

    /** What was taken from a form, on its way into the library. */
    record Trial(RecordFiles files, Taken taken) {}

    private record Tried(Trial trial, List<RecordFiles.Change> changes) {}

    /** Tries what was taken, writes it if nothing stops it, and says what was read. */
    static int taken(Main main, Outcome<Trial> trial, Path form, Path root, boolean dryRun) {
        return trial.then(t -> t.files().tried(t.taken(), main.today()).map(changes -> new Tried(t, changes)))
                .fold((t, said) -> taken(main, t, said, form, root, dryRun), findings -> stopped(main, findings, root));
    }

    private static int taken(Main main, Tried tried, List<Diagnostic> said, Path form, Path root, boolean dryRun) {
        var console = main.console();
        var name = form.toFile().getName();
        console.findings(said.stream().filter(f -> f.span().file().equals(name)).toList(), root);
        tried.trial().taken().echoes().forEach(e -> console.say(e.text()));
        tried.trial().taken().sentences().forEach(console::say);
        if (tried.changes().isEmpty()) {
            console.say("Nothing to write: the library says all of this already.");
            return Exit.DONE;
        }
        if (!dryRun) {
            try {
                tried.trial().files().write(tried.changes(), tried.trial().taken());
            } catch (IOException e) {
                console.complain(Unwritten.records(e, root) + " Take the form again once it is mended.");
                return Exit.STOPPED;
            }
            main.hasWritten();
        }
        var verb = dryRun ? "would write " : "wrote ";
        tried.changes().forEach(c -> console.say(verb + c.file() + (c.isNew() ? " (new)" : "")));
        return Exit.DONE;
    }

    /** What is worth a note in the files of the library is told by {@code check}. */
    static int stopped(Main main, List<Diagnostic> findings, Path root) {
        main.console().findings(findings.stream().filter(Diagnostic::stops).toList(), root);
        return Exit.STOPPED;
    }
}
