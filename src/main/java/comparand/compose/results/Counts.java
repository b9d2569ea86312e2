package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Pairing.Purpose;
import comparand.model.ScreeningFlow;
import comparand.model.SetAside;
import comparand.model.library.ReadingRecord;
import comparand.model.library.SourceRecord;
import comparand.model.library.ValueRecord;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts that running text names: of the sources, their values and readers, the rows of the studies. */
public final class Counts {

    private final Run run;
    private final SortedMap<String, Integer> counts = new TreeMap<>();

    public Counts(Run run) {
        this.run = run;
        sources();
        readings();
        rows();
        run.library()
                .screening(run.dossier())
                .map(log -> ScreeningFlow.of(log, run.library().sources()))
                .ifPresent(this::flow);
    }

    public SortedMap<String, Integer> all() {
        return Collections.unmodifiableSortedMap(counts);
    }

    private void sources() {
        var evidence = run.compared().matched().evidence();
        var takingPart =
                evidence.published().stream().map(Counts::source).collect(Collectors.toCollection(HashSet::new));
        var paired = published().stream().map(c -> source(c.pairing().theirs())).collect(Collectors.toSet());
        var compared = published().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .map(c -> source(c.pairing().theirs()))
                .collect(Collectors.toSet());
        var all = run.names().sources().stream().map(SourceRecord::id).toList();
        counts.put("sources", all.size());
        counts.put("sources-taking-part", count(all, takingPart));
        counts.put("sources-without-value", all.size() - count(all, takingPart));
        counts.put("sources-paired", count(all, paired));
        counts.put("sources-compared", count(all, compared));
        counts.put("values-taking-part", evidence.published().size());
        counts.put("values-unpaired", run.compared().matched().unpaired().size());
        counts.put("values-set-aside", (int) evidence.setAside().stream()
                .map(SetAside::comparand)
                .filter(c -> !c.isLocal())
                .count());
        counts.put("pairs-published", published().size());
        counts.put("pairs-published-compared", (int) published().stream()
                .filter(c -> c.pairing().standing().isCompared())
                .count());
        counts.put(
                "pairs-published-shown",
                counts.getOrDefault("pairs-published", 0) - counts.getOrDefault("pairs-published-compared", 0));
    }

    private static int count(List<String> all, java.util.Set<String> in) {
        return (int) all.stream().filter(in::contains).count();
    }

    private static String source(Comparand c) {
        return c.origin().fold(p -> p.source().id(), l -> "");
    }

    private List<Comparison> published() {
        return run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED)
                .toList();
    }

    private void readings() {
        var values =
                run.names().sources().stream().flatMap(s -> s.values().stream()).toList();
        var twice = values.stream().filter(v -> readers(v) > 1).toList();
        counts.put("values-recorded", values.size());
        counts.put("values-read-twice", twice.size());
        counts.put("values-agreed", (int) twice.stream()
                .filter(v -> v.read().stream().allMatch(Counts::agrees))
                .count());
        counts.put("values-from-figures", (int)
                values.stream().filter(v -> v.readFromFigure().isPresent()).count());
        counts.put("readers", (int) values.stream()
                .flatMap(v -> v.read().stream())
                .map(r -> r.by().value())
                .distinct()
                .count());
    }

    private static long readers(ValueRecord value) {
        return value.read().stream().map(r -> r.by().value()).distinct().count();
    }

    private static boolean agrees(ReadingRecord reading) {
        return reading.agrees().map(a -> a.value().isYes()).orElse(true);
    }

    private void rows() {
        for (var file : run.compared().matched().evidence().log().files()) {
            counts.merge("rows, " + file.study(), file.rows(), Integer::sum);
            counts.merge("rows-kept, " + file.study(), file.kept(), Integer::sum);
            counts.merge("rows-dropped, " + file.study(), file.dropped(), Integer::sum);
            counts.merge("rows-held, " + file.study(), file.held(), Integer::sum);
        }
    }

    /** The boxes of the flow from search to report. */
    private void flow(ScreeningFlow flow) {
        counts.put("records-identified", flow.found());
        counts.put("records-duplicate", flow.duplicates());
        counts.put("records-screened", flow.screened());
        counts.put("records-excluded", flow.excluded());
        counts.put("reports-sought", flow.sought());
        counts.put("reports-not-retrieved", flow.notRetrieved());
        counts.put("reports-assessed", flow.assessed());
        counts.put("reports-excluded", flow.excludedAfterReading());
        counts.put("reports-included", flow.reports());
        counts.put("studies-included", flow.studies());
    }
}
