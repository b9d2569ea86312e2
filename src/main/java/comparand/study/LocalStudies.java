package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Span;
import comparand.diag.Suggest;
import comparand.flow.Outcome;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Checked;
import comparand.model.Comparand;
import comparand.model.Library;
import comparand.model.UnreadableRows;
import comparand.model.library.DataFileRecord;
import comparand.model.library.StudyRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The stage that computes local comparands from the raw data of a dossier's studies. */
public final class LocalStudies {

    private final Library library;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<Comparand> comparands = new ArrayList<>();

    private LocalStudies(Library library) {
        this.library = library;
    }

    /** All local comparands of the studies the dossier names, sorted by study, file, metric, device and step. */
    public static Outcome<List<Comparand>> compute(Checked checked) {
        var stage = new LocalStudies(checked.library());
        for (var id : checked.dossier().studies()) {
            var study = checked.library().studies().get(id.value());
            if (study == null) {
                throw new IllegalStateException("the checker let the unknown study " + id + " through");
            }
            study.files().forEach(file -> stage.file(study, file));
        }
        return Outcome.of(List.copyOf(stage.comparands), stage.findings);
    }

    private void file(StudyRecord study, DataFileRecord mapping) {
        var name = "studies/" + study.id() + "/" + mapping.file().value();
        var rows = library.data().get(name);
        if (rows == null) {
            throw new IllegalStateException("the reader let the missing file " + name + " through");
        }
        var plan = ColumnPlan.of(library, mapping, rows, findings);
        if (plan.isEmpty()) {
            return;
        }
        var faults = new CellFaults(rows);
        var facts = new ArrayList<RowFacts>();
        var dropped = droppedLines(mapping);
        try {
            rows.forEach(row -> {
                if (!dropped.contains(row.line())) {
                    plan.get().read(row, faults).ifPresent(facts::add);
                }
            });
        } catch (UnreadableRows e) {
            findings.add(Diagnostic.stop(
                    "data-unreadable",
                    new Span(name, e.line(), 1, 1),
                    e.problem(),
                    "a file that cannot be read whole is not used at all",
                    e.fix()));
            return;
        }
        var cellFindings = faults.findings();
        findings.addAll(cellFindings);
        if (!cellFindings.isEmpty()) {
            return;
        }
        var file = new DataFile(library, study, mapping, name, plan.get(), FixedConditions.of(study, mapping));
        for (var wanted : mapping.gives()) {
            metric(wanted)
                    .ifPresent(metric ->
                            comparands.addAll(new MetricOfFile(file, metric, wanted, findings).comparands(facts)));
        }
        if (!facts.isEmpty()) {
            LabelledLimits.check(library, name, facts, findings);
        }
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

    private static Set<Integer> droppedLines(DataFileRecord mapping) {
        var lines = new HashSet<Integer>();
        mapping.dropped().forEach(d -> lines.add(d.line().value().value().intValue()));
        return lines;
    }
}
