package comparand.compose.figure;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import comparand.document.chart.Trace;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.LocalPart;
import comparand.model.RowLog;
import comparand.model.Summary;
import comparand.model.library.StudyKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every case as a dot, by device and hospital, so that what is due to a hospital can be seen. Dots are moved aside only, never
 * along the axis of values. Groups too small to hide one among them are named and not drawn.
 */
final class CaseStrip {

    /** Steps to the side, so that equal values are seen as several; by turns, from the middle outwards. */
    private static final List<Double> ASIDE = List.of(0.0, 0.12, -0.12, 0.24, -0.24, 0.18, -0.06, 0.06, -0.18);

    private final Run run;
    private final Shown shown;
    private final Metric metric;
    private final String study;
    private final List<Comparand> groups;

    private CaseStrip(Run run, Metric metric, String study, List<Comparand> groups) {
        this.run = run;
        this.shown = new Shown(run);
        this.metric = metric;
        this.study = study;
        this.groups = groups;
    }

    /** One figure for each clinical study, and none unless the dossier lets single cases be seen. */
    static List<Plot> of(Run run, Metric metric) {
        if (!run.dossier().showsCases()) {
            return List.of();
        }
        return run.dossier().studies().stream()
                .map(s -> s.value())
                .filter(s -> isClinical(run, s))
                .map(s -> new CaseStrip(run, metric, s, groups(run, metric, s)))
                .filter(c -> c.groups.size() > 1)
                .map(CaseStrip::chart)
                .toList();
    }

    private static boolean isClinical(Run run, String study) {
        var record = run.library().studies().get(study);
        return record != null && record.kind().value() == StudyKind.CLINICAL;
    }

    /** By device, then hospital. */
    private static List<Comparand> groups(Run run, Metric metric, String study) {
        return run.dossier().devices().stream()
                .flatMap(d -> run.compared().matched().evidence().localResults().stream()
                        .filter(c -> c.metric().equals(metric) && c.device().equals(d.value()))
                        .filter(c -> c.isLocal(LocalPart.CENTRE)
                                && each(c).size() >= run.dossier().smallestGroup())
                        .filter(c ->
                                c.origin().fold(p -> false, l -> l.study().id().equals(study))))
                .toList();
    }

    private static List<Double> each(Comparand c) {
        return c.summary() instanceof Summary.Sampled s ? s.each() : List.of();
    }

    private Plot chart() {
        var names = new ArrayList<String>();
        var dots = new ArrayList<Point>();
        var means = new ArrayList<Point>();
        var ends = new ArrayList<Double>();
        for (var group : groups) {
            int row = names.size();
            names.add(shown.row(group));
            var values = each(group);
            for (int i = 0; i < values.size(); i++) {
                dots.add(new Point(
                        values.get(i),
                        row + 0.1 + ASIDE.get(i % ASIDE.size()),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
            }
            ends.addAll(values);
            means.add(new Point(
                    group.summary().centre().orElseThrow(),
                    row - 0.32,
                    Shown.extent(group),
                    Optional.empty(),
                    shown.mean(group)));
            Shown.interval(group).ifPresent(i -> ends.addAll(List.of(i.low(), i.high())));
        }
        var panel = new Panel(
                "",
                1,
                false,
                new Scales(run.figures()).of(shown.axis(metric), ends),
                new Axis.Rows(names),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new Series(say("figure.series.case"), Mark.SMALL_DOT, Trace.NONE, Ink.TEAL, dots, ""),
                        new Series(say("figure.series.centre"), Mark.FILLED_CIRCLE, Trace.NONE, Ink.INK, means, "")));
        return new Plot(
                "cases-" + metric.id() + "-" + study,
                message(),
                alternative(),
                List.of(panel),
                panel.series().stream()
                        .map(s -> new Plot.KeyEntry(s.mark(), Trace.NONE, s.ink(), s.name()))
                        .toList(),
                notes());
    }

    private String message() {
        return say(
                "figure.message.cases",
                "metric",
                ConditionLine.upperFirst(run.terms().metric(metric)));
    }

    private String alternative() {
        var said = new ArrayList<String>();
        said.add(message());
        for (var group : groups) {
            var values = each(group);
            int decimals = run.figures().of(group, values.get(0));
            said.add(say(
                    "figure.alt.cases",
                    "row",
                    shown.inLine(group),
                    "mean",
                    run.figures().withUnit(shown.mean(group), metric),
                    "interval",
                    shown.intervalText(group).orElse(say("not-reported")),
                    "low",
                    run.figures().number(values.get(0), decimals),
                    "high",
                    run.figures().number(values.get(values.size() - 1), decimals)));
        }
        small().ifPresent(said::add);
        return String.join(" ", said);
    }

    /** Groups that are too small to be shown by themselves. */
    private Optional<String> small() {
        var few = run.compared().matched().evidence().log().counts().stream()
                .filter(c -> c.study().equals(study)
                        && c.step().isEmpty()
                        && !c.centre().isEmpty())
                .filter(c ->
                        run.dossier().devices().stream().anyMatch(d -> d.value().equals(c.device())))
                .filter(c -> c.members() > 0 && groups.stream().noneMatch(g -> isOf(g, c)))
                .map(c -> run.names().brief(c.device()) + ", " + c.centre())
                .toList();
        return few.isEmpty()
                ? Optional.empty()
                : Optional.of(say(
                        "figure.note.few",
                        "groups",
                        String.join("; ", few),
                        "limit",
                        String.valueOf(run.dossier().smallestGroup())));
    }

    private static boolean isOf(Comparand group, RowLog.Count count) {
        return group.device().equals(count.device())
                && group.origin().fold(p -> false, l -> l.scope().centre().equals(count.centre()));
    }

    private List<String> notes() {
        var notes = new FigureNotes(run);
        var lines = new ArrayList<String>();
        lines.add(say("figure.note.cases"));
        small().ifPresent(lines::add);
        lines.addAll(notes.conditions(groups));
        lines.addAll(notes.sources(groups));
        return lines;
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
