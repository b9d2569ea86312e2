package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.flow.Outcome;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Checked;
import comparand.model.Comparand;
import comparand.model.Library;
import comparand.model.LocalResults;
import comparand.model.RowSource;
import comparand.model.SetAside;
import comparand.model.UnreadableRows;
import comparand.model.library.DataFileRecord;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stage that computes local comparands from the raw data of a dossier's studies. */
public final class LocalStudies {

    private final Library library;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<Comparand> comparands = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    private LocalStudies(Library library) {
        this.library = library;
    }

    /** All local results of the studies the dossier names, sorted by study, file, metric, device and step. */
    public static Outcome<LocalResults> compute(Checked checked) {
        var stage = new LocalStudies(checked.library());
        for (var id : checked.dossier().studies()) {
            var study = checked.library().studies().get(id.value());
            if (study == null) {
                throw new IllegalStateException("the checker let the unknown study " + id + " through");
            }
            study.files().forEach(file -> stage.file(study, file));
        }
        return Outcome.of(new LocalResults(stage.comparands, stage.setAside), stage.findings);
    }

    /** What is found in the raw data of every study of a library, whether a dossier asks for it or not. */
    public static Outcome<Library> examine(Library library) {
        var stage = new LocalStudies(library);
        library.studies().values().forEach(study -> study.files().forEach(file -> stage.file(study, file)));
        return Outcome.of(library, stage.findings);
    }

    private void file(StudyRecord study, DataFileRecord mapping) {
        var name = "studies/" + study.id() + "/" + mapping.name();
        var rows = library.data().get(name);
        if (rows == null) {
            throw new IllegalStateException("the reader let the missing file " + name + " through");
        }
        var columns = ColumnPlan.of(library, mapping, rows, findings);
        var facts = columns.flatMap(plan -> facts(mapping, rows, plan));
        if (facts.isEmpty()) {
            return;
        }
        if (facts.get().isEmpty()) {
            findings.add(Diagnostic.note(
                    "data-without-rows",
                    rows.heading(0),
                    "no row of `%s` is used".formatted(mapping.name()),
                    "the study has no result from this file",
                    "add the rows, or take the file out of `files:`"));
            return;
        }
        var file = new DataFile(
                library, study, mapping, name, rows, columns.orElseThrow(), FixedConditions.of(study, mapping));
        for (var wanted : mapping.gives()) {
            metric(wanted).ifPresent(metric -> {
                var work = new MetricOfFile(file, metric, wanted, findings, setAside);
                comparands.addAll(work.comparands(facts.get()));
            });
        }
        LabelledLimits.check(library, rows, facts.get(), findings);
    }

    /** The rows that are used; empty if one of them could not be read. */
    private Optional<List<RowFacts>> facts(DataFileRecord mapping, RowSource rows, ColumnPlan columns) {
        var faults = new CellFaults(rows);
        var facts = new ArrayList<RowFacts>();
        var decisions = new RowDecisions(mapping, rows);
        try {
            rows.forEach(row -> {
                if (!decisions.leaveOut(row)) {
                    columns.read(row, faults).ifPresent(facts::add);
                }
            });
        } catch (UnreadableRows e) {
            findings.add(Diagnostic.stop(
                    "data-unreadable",
                    e.place(),
                    e.problem(),
                    "a file that cannot be read whole is not used at all",
                    e.fix()));
            return Optional.empty();
        }
        var found = new ArrayList<>(faults.findings());
        found.addAll(decisions.findings());
        findings.addAll(found);
        return found.stream().noneMatch(Diagnostic::stops) ? Optional.of(facts) : Optional.empty();
    }

    private Optional<Metric> metric(Located<String> wanted) {
        var metric = library.catalogue().find(wanted.value());
        if (metric.isEmpty()) {
            findings.add(Diagnostic.stop(
                    "metric-unknown",
                    wanted.span(),
                    "`%s` is not a metric known here".formatted(wanted.value()),
                    "nothing could be computed under that name",
                    Suggest.instruction(wanted.value(), library.catalogue().ids())));
        } else if (metric.get().nature() == Nature.STATED) {
            findings.add(Diagnostic.stop(
                    "metric-is-stated",
                    wanted.span(),
                    "`%s` is stated by label, not measured in a study".formatted(wanted.value()),
                    "a nominal figure has no spread over units",
                    "take it out of `gives:`; record it as a value of the instructions for use"));
            return Optional.empty();
        }
        return metric;
    }
}
