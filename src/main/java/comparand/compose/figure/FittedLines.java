package comparand.compose.figure;

import comparand.compose.results.LineResults;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Ribbon;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import comparand.document.result.LineResult;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.FittedLine;
import comparand.model.LocalPart;
import comparand.model.Summary;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The straight lines behind estimates, one a device, each with its 95 % band and over its own range only. */
final class FittedLines {

    private final Run run;
    private final Shown shown;
    private final Metric metric;
    private final Map<Comparand, FittedLine> lines;

    private FittedLines(Run run, Metric metric, Map<Comparand, FittedLine> lines) {
        this.run = run;
        this.shown = new Shown(run);
        this.metric = metric;
        this.lines = lines;
    }

    /** Empty for a metric that no line gives. */
    static Optional<Plot> of(Run run, Metric metric) {
        var lines = new LinkedHashMap<Comparand, FittedLine>();
        for (var device : run.dossier().devices()) {
            run.compared().matched().evidence().localResults().stream()
                    .filter(c -> c.metric().equals(metric)
                            && c.device().equals(device.value())
                            && c.isLocal(LocalPart.WHOLE))
                    .forEach(c -> line(c).ifPresent(l -> lines.put(c, l)));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new FittedLines(run, metric, lines).chart());
    }

    private static Optional<FittedLine> line(Comparand c) {
        return c.summary() instanceof Summary.Estimated e ? e.line() : Optional.empty();
    }

    private Plot chart() {
        var ribbons = new ArrayList<Ribbon>();
        var series = new ArrayList<Series>();
        var across = new ArrayList<Double>();
        var up = new ArrayList<Double>();
        int number = 0;
        for (var entry : lines.entrySet()) {
            var name = run.names().brief(entry.getKey().device());
            var line = LineResults.of(entry.getValue());
            var ink = DeviceStyle.ink(number);
            ribbons.add(new Ribbon(
                    name,
                    ink,
                    line.points().stream()
                            .map(p -> new Ribbon.Slice(p.at(), p.low(), p.high()))
                            .toList()));
            series.add(new Series(name, Mark.NONE, DeviceStyle.trace(number), ink, points(line), name));
            line.points().forEach(p -> {
                across.add(p.at());
                up.addAll(List.of(p.low(), p.high()));
            });
            number++;
        }
        var first = lines.values().iterator().next();
        var scales = new Scales(run.figures());
        var panel = new Panel(
                "",
                1,
                false,
                scales.of(title(run.terms().named(first.along()), first.alongUnit()), across),
                scales.of(title(run.terms().named(first.of()), first.ofUnit()), up),
                List.of(),
                ribbons,
                List.of(),
                series);
        return new Plot("line-" + metric.id(), message(), alternative(), List.of(panel), List.of(), notes());
    }

    private static List<Point> points(LineResult line) {
        return line.points().stream()
                .map(p -> new Point(p.at(), p.mean(), Optional.empty(), Optional.empty(), ""))
                .toList();
    }

    private static String title(String what, Unit unit) {
        var name = ConditionLine.upperFirst(what);
        return unit.spelling().isEmpty() ? name : name + ", " + unit.spelling();
    }

    private String message() {
        var first = lines.values().iterator().next();
        return say(
                "figure.message.line",
                "of",
                ConditionLine.upperFirst(run.terms().named(first.of())),
                "along",
                run.terms().named(first.along()));
    }

    private String alternative() {
        var said = new ArrayList<String>();
        said.add(message());
        lines.keySet()
                .forEach(c -> said.add(say(
                        "figure.alt.line",
                        "row",
                        shown.inLine(c),
                        "metric",
                        run.terms().metric(metric),
                        "slope",
                        run.figures().withUnit(shown.mean(c), metric),
                        "interval",
                        shown.intervalText(c).orElse(say("not-reported")))));
        return String.join(" ", said);
    }

    private List<String> notes() {
        var notes = new FigureNotes(run);
        var said = new ArrayList<String>();
        said.add(say("figure.note.line"));
        said.addAll(notes.conditions(lines.keySet()));
        said.addAll(notes.sources(lines.keySet()));
        return said;
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
