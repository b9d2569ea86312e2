package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.flow.Outcome;
import comparand.metric.Definition;
import comparand.model.Checked;
import comparand.model.Comparand;
import comparand.model.Library;
import comparand.model.Library.PublishedValue;
import comparand.model.LocalResults;
import comparand.model.LocalSeries;
import comparand.model.RowLog;
import comparand.model.SetAside;
import comparand.model.library.ConditionText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The stage that computes local results from the raw data of a dossier's studies. */
public final class LocalStudies {

    private final Library library;
    private final Map<String, List<Definition>> published;
    private final int smallestGroup;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<Comparand> comparands = new ArrayList<>();
    private final List<LocalSeries> series = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();
    private final List<RowLog.FileLog> files = new ArrayList<>();
    private final List<RowLog.Count> counts = new ArrayList<>();
    private final List<RowLog.LabelUse> label = new ArrayList<>();

    private LocalStudies(Library library, Map<String, List<Definition>> published, int smallestGroup) {
        this.library = library;
        this.published = published;
        this.smallestGroup = smallestGroup;
    }

    /** All local results of the studies the dossier names, by study, metric, device and step. */
    public static Outcome<LocalResults> compute(Checked checked) {
        var stage = new LocalStudies(
                checked.library(),
                definitions(checked.library()),
                checked.dossier().smallestGroup());
        checked.dossier().studies().forEach(id -> stage.study(id.value()));
        return Outcome.of(
                new LocalResults(
                        stage.comparands,
                        stage.series,
                        stage.setAside,
                        new RowLog(stage.files, stage.counts, stage.label)),
                stage.findings);
    }

    /** What is found in the raw data of every study of a library, whether a dossier asks for it or not. */
    public static Outcome<Library> examine(Library library) {
        var stage = new LocalStudies(library, Map.of(), 0);
        library.studies().keySet().forEach(stage::study);
        return Outcome.of(library, stage.findings);
    }

    private void study(String id) {
        var study = library.studies().get(id);
        if (study == null) {
            throw new IllegalStateException("the checker let the unknown study " + id + " through");
        }
        var run = new StudyRun(library, study, published, smallestGroup, findings);
        run.run();
        comparands.addAll(run.comparands());
        series.addAll(run.series());
        setAside.addAll(run.setAside());
        files.addAll(run.logs());
        counts.addAll(run.counts());
        label.addAll(run.labelUses());
    }

    /** By metric, each definition that some published value states. */
    private static Map<String, List<Definition>> definitions(Library library) {
        var all = new TreeMap<String, List<Definition>>();
        library.values().forEach(value -> {
            var definition = definition(value);
            var known = all.computeIfAbsent(value.value().metric().value(), m -> new ArrayList<>());
            if (!known.contains(definition)) {
                known.add(definition);
            }
        });
        return all;
    }

    private static Definition definition(PublishedValue value) {
        var definition = Definition.NONE;
        for (var entry : value.value().definition().list()) {
            var words = entry.value().list().stream().map(Located::value).toList();
            if (!words.equals(List.of(ConditionText.NOT_REPORTED))) {
                definition = definition.with(entry.key().value(), words);
            }
        }
        return definition;
    }
}
