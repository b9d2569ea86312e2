package comparand.compose.figure;

import comparand.compose.text.AnswerText;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.chart.Area;
import comparand.document.chart.Axis;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Rule;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import comparand.document.chart.Trace;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Pairing.Purpose;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Differences from the device in use today, each with its interval, on a band as wide as the margin to either side. */
final class IntervalLadder {

    private final Run run;
    private final Shown shown;
    private final Metric metric;
    private final List<Comparison> rungs;
    private final Optional<Margin> margin;

    IntervalLadder(Run run, Metric metric) {
        this.run = run;
        this.shown = new Shown(run);
        this.metric = metric;
        this.rungs = run.comparisons(metric).stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED)
                .filter(c ->
                        c.pairing().standing().isCompared() && difference(c).isPresent())
                .toList();
        this.margin = rungs.stream().flatMap(c -> c.margin().stream()).findFirst();
    }

    private static Optional<Double> difference(Comparison c) {
        return c.answer() instanceof Answer.Nominal n
                ? Optional.of(n.difference())
                : AnswerText.tested(c.answer()).map(t -> t.difference().value());
    }

    private String present() {
        return run.names().brief(run.dossier().presentDevice().value());
    }

    /** Empty with fewer than two differences. */
    Optional<Plot> chart() {
        if (rungs.size() < 2) {
            return Optional.empty();
        }
        var names = new ArrayList<String>();
        var points = new ArrayList<Point>();
        var ends = new ArrayList<Double>(List.of(0.0));
        for (var c : rungs) {
            double at = difference(c).orElseThrow();
            var interval = AnswerText.tested(c.answer()).map(Answer.Tested::interval);
            points.add(new Point(at, names.size(), interval.flatMap(Shown::extent), Optional.empty(), text(c)));
            names.add(shown.row(c.pairing().ours()));
            ends.add(at);
            interval.ifPresent(i -> ends.addAll(List.of(i.low(), i.high())));
        }
        margin.ifPresent(m -> ends.addAll(List.of(-m.value(), m.value())));
        var axis = new Scales(run.figures())
                .of(
                        say("figure.difference", "metric", run.terms().metric(metric), "device", present())
                                + (metric.differenceUnit().isEmpty()
                                        ? ""
                                        : ", " + run.terms().differenceUnit(metric)),
                        ends);
        var rows = new Axis.Rows(names);
        var panel = new Panel(
                "",
                1,
                false,
                axis,
                rows,
                margin.map(m -> List.of(new Area(
                                -m.value(),
                                m.value(),
                                rows.from(),
                                rows.to(),
                                Area.Fill.HATCHED,
                                say("figure.band", "margin", run.terms().margin(m.text())))))
                        .orElse(List.of()),
                List.of(),
                List.of(new Rule(true, 0, Trace.SOLID, Rule.Extent.WHOLE, present())),
                List.of(new Series(
                        say("figure.series.difference"), Mark.FILLED_CIRCLE, Trace.NONE, Ink.INK, points, "")));
        return Optional.of(
                new Plot("ladder-" + metric.id(), message(), alternative(), List.of(panel), List.of(), notes()));
    }

    private String text(Comparison c) {
        return AnswerText.tested(c.answer())
                .map(t -> run.figures().difference(metric, t).replace(' ', '\u00a0'))
                .orElseGet(() -> nominal(c));
    }

    private String nominal(Comparison c) {
        double at = difference(c).orElseThrow();
        return run.figures().signed(at, run.figures().of(c.pairing().ours(), at));
    }

    private String message() {
        return say(
                "figure.message.ladder",
                "metric",
                ConditionLine.upperFirst(run.terms().metric(metric)),
                "device",
                present());
    }

    private String alternative() {
        var said = new ArrayList<String>();
        said.add(message());
        for (var c : rungs) {
            said.add(say(
                    "figure.alt.rung",
                    "row",
                    shown.inLine(c.pairing().ours()),
                    "difference",
                    run.figures().withDifferenceUnit(text(c), metric),
                    "answer",
                    run.answers().of(c)));
        }
        return String.join(" ", said);
    }

    private List<String> notes() {
        var notes = new FigureNotes(run);
        var lines = new ArrayList<String>();
        boolean tested =
                rungs.stream().anyMatch(c -> AnswerText.tested(c.answer()).isPresent());
        lines.add(say(tested ? "figure.note.difference" : "figure.note.nominal", "device", present()));
        margin.ifPresent(m ->
                lines.add(say("figure.note.margin", "margin", run.terms().margin(m.text()), "reason", m.reason())));
        var all = new LinkedHashSet<Comparand>();
        rungs.forEach(c -> all.addAll(List.of(c.pairing().ours(), c.pairing().theirs())));
        lines.addAll(notes.conditions(all));
        lines.addAll(notes.sources(all));
        return lines;
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
