package comparand.compose.figure;

import comparand.compose.text.Run;
import comparand.document.Edition;
import comparand.document.chart.Chart;
import comparand.document.chart.Diagram;
import comparand.document.chart.Plot;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All figures of a run, in the order of the dossier's questions; documents pick from them by kind and metric. */
public final class FigureSet {

    /** What a figure shows. */
    public enum Kind {
        /** Ours and published, what is compared apart from what is only shown. */
        LIKE_WITH_LIKE,
        /** Differences from the present device. */
        LADDER,
        /** Along blood flow, device by device. */
        FLOW_CURVE,
        /** Every case, by device and hospital. */
        CASES,
        /** Straight lines through cases. */
        LINE
    }

    /**
     * A figure and what it is about.
     *
     * @param metric the id of its metric
     */
    public record Entry(Kind kind, String metric, Plot chart) {}

    private final Run run;
    private final List<Entry> entries = new ArrayList<>();

    public FigureSet(Run run) {
        this.run = run;
        run.questions().values().forEach(this::add);
    }

    private void add(Metric metric) {
        byStudy(metric)
                .forEach((study, comparisons) -> new SplitPanel(run, metric, study, comparisons)
                        .chart()
                        .ifPresent(c -> add(Kind.LIKE_WITH_LIKE, metric, c)));
        new IntervalLadder(run, metric).chart().ifPresent(c -> add(Kind.LADDER, metric, c));
        FlowCurve.of(run, metric).ifPresent(c -> add(Kind.FLOW_CURVE, metric, c));
        CaseStrip.of(run, metric).forEach(c -> add(Kind.CASES, metric, c));
        FittedLines.of(run, metric).ifPresent(c -> add(Kind.LINE, metric, c));
    }

    private void add(Kind kind, Metric metric, Plot chart) {
        entries.add(new Entry(kind, metric.id(), chart));
    }

    /** Bench and cases are never drawn on one axis. */
    private Map<String, List<Comparison>> byStudy(Metric metric) {
        var studies = new LinkedHashMap<String, List<Comparison>>();
        for (var c : run.comparisons(metric)) {
            study(c.pairing().ours())
                    .ifPresent(s ->
                            studies.computeIfAbsent(s, id -> new ArrayList<>()).add(c));
        }
        return studies;
    }

    private static Optional<String> study(Comparand c) {
        return c.origin()
                .fold(
                        p -> Optional.empty(),
                        (Origin.Local l) -> Optional.of(l.study().id()));
    }

    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** The way of the records from search to report, where a log of screening was kept. */
    public Optional<Diagram> screening() {
        return ScreeningDiagram.of(run);
    }

    /** Every figure in the order of printing: how the sources were found, then what they and we say. */
    public Stream<Chart> charts() {
        return Stream.concat(screening().stream(), all().stream());
    }

    /** Every plot. */
    public List<Plot> all() {
        return entries.stream().map(Entry::chart).toList();
    }

    /** The charts of a kind for a metric; of bench and cases one each, the one with the dossier's first pair first. */
    public List<Plot> of(Kind kind, String metric) {
        return entries.stream()
                .filter(e -> e.kind() == kind && e.metric().equals(metric))
                .map(Entry::chart)
                .toList();
    }

    /** The first of them. */
    public Optional<Plot> find(Kind kind, String metric) {
        return of(kind, metric).stream().findFirst();
    }

    /** Every chart with what each file that travels alone has to say of itself, as its last note. */
    public List<Chart> alone(Edition edition) {
        var stamp = new ArrayList<String>(edition.marks());
        stamp.add(edition.title());
        stamp.add(edition.imprint(" · "));
        var note = String.join(" · ", stamp);
        return charts().map(c -> withNote(c, note)).toList();
    }

    private static Chart withNote(Chart chart, String note) {
        var notes = new ArrayList<>(chart.notes());
        notes.add(note);
        return chart.withNotes(notes);
    }
}
