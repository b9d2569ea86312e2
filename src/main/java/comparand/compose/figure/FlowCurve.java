package comparand.compose.figure;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot;
import comparand.document.chart.Ribbon;
import comparand.document.chart.Rule;
import comparand.document.chart.Series;
import comparand.document.chart.Series.Point;
import comparand.document.chart.Trace;
import comparand.metric.Condition;
import comparand.metric.Metric;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.LocalPart;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import comparand.model.library.DeviceRecord;
import comparand.unit.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A metric along the blood flow at which it was measured, device by device, with the interval of each mean; published values
 * at their own flow. What was measured beyond a device's label is drawn hollow and stands on no line.
 */
final class FlowCurve {

    static final String FLOW = "blood-flow";

    private static final double ROUNDED = 1e-9;

    private final Run run;
    private final Shown shown;
    private final Metric metric;
    private final Condition flow;
    private final Map<DeviceRecord, List<Comparand>> curves;
    private final Map<Comparand, Standing> published;

    FlowCurve(Run run, Metric metric, Condition flow) {
        this.run = run;
        this.shown = new Shown(run);
        this.metric = metric;
        this.flow = flow;
        this.curves = curves();
        this.published = published();
    }

    /** Empty unless some device was measured at two flows. */
    static Optional<Plot> of(Run run, Metric metric) {
        return run.library()
                .catalogue()
                .condition(FLOW)
                .map(flow -> new FlowCurve(run, metric, flow))
                .filter(c -> c.curves.values().stream().anyMatch(FlowCurve::alongFlow))
                .map(FlowCurve::chart);
    }

    private Map<DeviceRecord, List<Comparand>> curves() {
        var all = new LinkedHashMap<DeviceRecord, List<Comparand>>();
        for (var id : run.dossier().devices()) {
            var measured = run.compared().matched().evidence().localResults().stream()
                    .filter(c -> c.metric().equals(metric) && c.device().equals(id.value()))
                    .filter(c -> c.isLocal(LocalPart.WHOLE) && stepOfFlow(c))
                    .filter(c -> at(c).isPresent() && Shown.interval(c).isPresent())
                    .sorted(Comparator.comparingDouble(c -> at(c).orElseThrow()))
                    .toList();
            if (!measured.isEmpty()) {
                run.library().device(id.value()).ifPresent(d -> all.put(d, measured));
            }
        }
        return all;
    }

    /** At each flow once, and at two or more. */
    private static boolean alongFlow(List<Comparand> measured) {
        long flows = measured.stream().map(FlowCurve::at).distinct().count();
        return flows > 1 && flows == measured.size();
    }

    private static boolean stepOfFlow(Comparand c) {
        return c.origin().fold(p -> false, l -> l.scope().steps().contains(FLOW));
    }

    private static Optional<Double> at(Comparand c) {
        return c.condition(FLOW).amount().map(a -> a.value());
    }

    /** Published values set beside one of the points, at a flow they report. */
    private Map<Comparand, Standing> published() {
        var drawn = new LinkedHashSet<Comparand>();
        curves.values().forEach(drawn::addAll);
        var all = new LinkedHashMap<Comparand, Standing>();
        for (Comparison c : run.comparisons(metric)) {
            var theirs = c.pairing().theirs();
            if (c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                    && drawn.contains(c.pairing().ours())
                    && c.pairing().standing() != Standing.DIFFERENT_QUANTITY
                    && at(theirs).isPresent()
                    && Shown.place(theirs, c.pairing().standing()).isPresent()) {
                all.putIfAbsent(theirs, c.pairing().standing());
            }
        }
        return all;
    }

    private Optional<Double> labelledMaximum(DeviceRecord device) {
        return device.limit(FLOW)
                .map(l -> l.range().value().high().in(flow.unit().orElse(Unit.ONE)));
    }

    private boolean beyond(DeviceRecord device, Comparand c) {
        double at = at(c).orElseThrow();
        return labelledMaximum(device).filter(max -> at > max * (1 + ROUNDED)).isPresent();
    }

    private Plot chart() {
        var ribbons = new ArrayList<Ribbon>();
        var rules = new ArrayList<Rule>();
        var series = new ArrayList<Series>();
        var flows = new ArrayList<Double>();
        var values = new ArrayList<Double>();
        int number = 0;
        for (var curve : curves.entrySet()) {
            device(number++, curve.getKey(), curve.getValue(), ribbons, rules, series);
            curve.getValue().forEach(c -> {
                flows.add(at(c).orElseThrow());
                Shown.interval(c).ifPresent(i -> values.addAll(List.of(i.low(), i.high())));
            });
            labelledMaximum(curve.getKey()).ifPresent(flows::add);
        }
        series.addAll(published(flows, values));
        var scales = new Scales(run.figures());
        var unit = flow.unit().map(Unit::spelling).orElse("");
        var panel = new Panel(
                "",
                1,
                false,
                scales.of(
                        ConditionLine.upperFirst(run.terms().named(flow.name())) + (unit.isEmpty() ? "" : ", " + unit),
                        flows),
                scales.of(shown.axis(metric), values),
                List.of(),
                ribbons,
                rules,
                series);
        return new Plot(
                "flow-" + metric.id(),
                message(),
                alternative(),
                List.of(panel),
                new FigureNotes(run).keyOfCurves(series),
                notes());
    }

    private void device(
            int number,
            DeviceRecord device,
            List<Comparand> all,
            List<Ribbon> ribbons,
            List<Rule> rules,
            List<Series> series) {
        var ink = DeviceStyle.ink(number);
        var name = device.briefName();
        var inside = all.stream().filter(c -> !beyond(device, c)).toList();
        var outside = all.stream().filter(c -> beyond(device, c)).toList();
        if (!outside.isEmpty()) {
            series.add(new Series(
                    say("figure.series.beyond", "device", name),
                    Mark.HOLLOW_CIRCLE,
                    Trace.NONE,
                    ink,
                    outside.stream().map(FlowCurve::point).toList(),
                    name));
        }
        if (!inside.isEmpty()) {
            series.add(new Series(
                    name,
                    Mark.FILLED_CIRCLE,
                    DeviceStyle.trace(number),
                    ink,
                    inside.stream().map(FlowCurve::point).toList(),
                    name));
            ribbons.add(
                    new Ribbon(name, ink, inside.stream().map(FlowCurve::slice).toList()));
        }
        labelledMaximum(device)
                .ifPresent(max -> rules.add(
                        new Rule(true, max, Trace.SOLID, Rule.Extent.TICK, say("figure.maximum", "device", name))));
    }

    private static Point point(Comparand c) {
        return new Point(
                at(c).orElseThrow(), c.summary().centre().orElseThrow(), Optional.empty(), Shown.extent(c), "");
    }

    private static Ribbon.Slice slice(Comparand c) {
        var interval = Shown.interval(c).orElseThrow();
        return new Ribbon.Slice(at(c).orElseThrow(), interval.low(), interval.high());
    }

    /** One series for each mark, in the ink of what is published. */
    private List<Series> published(List<Double> flows, List<Double> values) {
        var marks = new TreeMap<Standing, List<Point>>();
        published.forEach((c, standing) -> {
            double value = Shown.place(c, standing).orElseThrow();
            flows.add(at(c).orElseThrow());
            values.add(value);
            marks.computeIfAbsent(standing, s -> new ArrayList<>())
                    .add(new Point(
                            at(c).orElseThrow(),
                            value,
                            Optional.empty(),
                            Optional.empty(),
                            run.names().brief(c.device()) + "\u00a0" + shown.label(c, standing)));
        });
        return marks.entrySet().stream()
                .map(e -> new Series(
                        say("figure.series." + e.getKey().name()),
                        Shown.mark(e.getKey()),
                        Trace.NONE,
                        e.getKey().isCompared() ? Ink.INK : Ink.GREY,
                        e.getValue(),
                        ""))
                .toList();
    }

    private String message() {
        return say(
                "figure.message.flow",
                "metric",
                ConditionLine.upperFirst(run.terms().metric(metric)),
                "condition",
                run.terms().named(flow.name()));
    }

    private String alternative() {
        var said = new ArrayList<String>();
        said.add(message());
        curves.forEach((device, all) -> {
            for (var c : all) {
                said.add(say(
                        "figure.alt.ours",
                        "row",
                        shown.inLine(c) + (beyond(device, c) ? ", " + say("figure.key.beyond") : ""),
                        "mean",
                        run.figures().withUnit(shown.mean(c), metric),
                        "interval",
                        shown.intervalText(c).orElse(say("not-reported"))));
            }
            device.limit(FLOW)
                    .ifPresent(l -> said.add(say(
                            "figure.alt.maximum",
                            "device",
                            device.briefName(),
                            "range",
                            run.terms().quantity(l.range().value().toString()))));
        });
        published.forEach((c, standing) -> said.add(say(
                "figure.alt.published",
                "device",
                run.names().brief(c.device()),
                "condition",
                run.terms().circumstance(Optional.of(flow), c.condition(FLOW).text()),
                "value",
                shown.beside(c, standing),
                "standing",
                say("standing." + standing.name()))));
        return String.join(" ", said);
    }

    private List<String> notes() {
        var notes = new FigureNotes(run);
        var local = new LinkedHashSet<Comparand>();
        curves.values().forEach(local::addAll);
        Set<Comparand> all = new LinkedHashSet<>(local);
        all.addAll(published.keySet());
        var lines = new ArrayList<String>();
        lines.add(say("figure.note.flow"));
        lines.addAll(notes.conditions(local));
        lines.addAll(notes.readings(all));
        lines.addAll(notes.sources(all));
        return lines;
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
