package comparand.compose.figure;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.chart.Area;
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
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Pairing.Purpose;
import comparand.model.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Our results of one study with the published values that may be set beside them, at the left; in a frame at the right what
 * is shown and not compared, each with its reason.
 */
final class SplitPanel {

    private static final double BAND = 0.36;
    private static final double LEFT = 2;
    private static final double RIGHT = 1.15;

    private final Run run;
    private final Shown shown;
    private final Metric metric;
    private final String study;
    private final List<Comparison> comparisons;
    private final Optional<Margin> margin;

    SplitPanel(Run run, Metric metric, String study, List<Comparison> comparisons) {
        this.run = run;
        this.shown = new Shown(run);
        this.metric = metric;
        this.study = study;
        this.comparisons = List.copyOf(comparisons);
        this.margin = comparisons.stream().flatMap(c -> c.margin().stream()).findFirst();
    }

    /** Empty where nothing of the study may be compared. */
    Optional<Plot> chart() {
        var compared = comparedRows();
        if (compared.isEmpty()) {
            return Optional.empty();
        }
        var apart = apart(compared.keySet());
        var axis = new Scales(run.figures()).of(shown.axis(metric), ends(compared, apart));
        var panels = new ArrayList<Panel>();
        panels.add(left(compared, axis));
        if (!apart.isEmpty()) {
            panels.add(right(apart, axis));
        }
        var all = new LinkedHashSet<Comparand>(compared.keySet());
        compared.values().forEach(list -> list.forEach(c -> all.add(c.pairing().theirs())));
        apart.forEach(u -> all.add(u.value));
        return Optional.of(new Plot(
                "like-with-like-" + metric.id() + "-" + study,
                message(),
                alternative(compared, apart),
                panels,
                FigureNotes.key(panels),
                notes(compared, all)));
    }

    /** Local results that take part in a comparison, each with the published values compared with it. */
    private Map<Comparand, List<Comparison>> comparedRows() {
        var rows = new LinkedHashMap<Comparand, List<Comparison>>();
        for (var device : run.dossier().devices()) {
            for (var c : comparisons) {
                if (!c.pairing().standing().isCompared()) {
                    continue;
                }
                for (var side : List.of(c.pairing().ours(), c.pairing().theirs())) {
                    if (side.isLocal()
                            && side.device().equals(device.value())
                            && side.summary().centre().isPresent()) {
                        rows.computeIfAbsent(side, s -> new ArrayList<>());
                    }
                }
                var ours = rows.get(c.pairing().ours());
                if (ours != null
                        && c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.pairing().theirs().summary().centre().isPresent()
                        && !ours.contains(c)) {
                    ours.add(c);
                }
            }
        }
        return rows;
    }

    /** A value that is not compared, with its pair. */
    private record Apart(Comparand value, Comparison comparison) {}

    private List<Apart> apart(Set<Comparand> compared) {
        var all = new LinkedHashMap<String, Apart>();
        for (var c : comparisons) {
            var standing = c.pairing().standing();
            var value = c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                    ? c.pairing().theirs()
                    : c.pairing().ours();
            if (!standing.isCompared()
                    && standing != Standing.DIFFERENT_QUANTITY
                    && !compared.contains(value)
                    && Shown.place(value, standing).isPresent()) {
                all.putIfAbsent(value.id(), new Apart(value, c));
            }
        }
        return List.copyOf(all.values());
    }

    private List<Double> ends(Map<Comparand, List<Comparison>> compared, List<Apart> apart) {
        var ends = new ArrayList<Double>();
        compared.forEach((ours, list) -> {
            double mean = ours.summary().centre().orElseThrow();
            ends.add(mean);
            margin.ifPresent(m -> ends.addAll(List.of(mean - m.value(), mean + m.value())));
            list.forEach(c -> addEnds(c.pairing().theirs(), ends));
            addEnds(ours, ends);
        });
        apart.forEach(u ->
                ends.add(Shown.place(u.value, u.comparison.pairing().standing()).orElseThrow()));
        return ends;
    }

    private static void addEnds(Comparand c, List<Double> ends) {
        c.summary().centre().ifPresent(ends::add);
        Shown.interval(c).ifPresent(i -> ends.addAll(List.of(i.low(), i.high())));
    }

    private Panel left(Map<Comparand, List<Comparison>> compared, Axis.Scale axis) {
        var names = new ArrayList<String>();
        var areas = new ArrayList<Area>();
        var ours = new ArrayList<Point>();
        var theirs = new LinkedHashMap<Standing, List<Point>>();
        for (var entry : compared.entrySet()) {
            int row = names.size();
            var local = entry.getKey();
            double mean = local.summary().centre().orElseThrow();
            names.add(shown.row(local));
            int levels = 1 + entry.getValue().size();
            ours.add(new Point(mean, level(row, 0, levels), Shown.extent(local), Optional.empty(), shown.mean(local)));
            margin.ifPresent(m -> areas.add(new Area(
                    mean - m.value(), mean + m.value(), row - BAND, row + BAND, Area.Fill.HATCHED, band(row, m))));
            int beside = 0;
            for (var c : entry.getValue()) {
                var standing = c.pairing().standing();
                var value = c.pairing().theirs();
                theirs.computeIfAbsent(standing, s -> new ArrayList<>())
                        .add(new Point(
                                value.summary().centre().orElseThrow(),
                                level(row, ++beside, levels),
                                Shown.extent(value),
                                Optional.empty(),
                                shown.beside(value, standing)));
            }
        }
        var series = new ArrayList<Series>();
        theirs.forEach((standing, points) -> series.add(new Series(
                run.words().say("figure.series." + standing.name()),
                Shown.mark(standing),
                Trace.NONE,
                Ink.PLUM,
                points,
                "")));
        series.add(new Series(say("figure.series.ours"), Mark.FILLED_CIRCLE, Trace.NONE, Ink.INK, ours, ""));
        return new Panel("", LEFT, false, axis, new Axis.Rows(names), areas, List.of(), List.of(), series);
    }

    /** Ours stands uppermost in its row, published values below it, within the height of the band. */
    private static double level(int row, int which, int of) {
        return row - BAND + 2 * BAND * (which + 0.5) / of;
    }

    private String band(int row, Margin m) {
        return row == 0 ? say("figure.band", "margin", run.terms().margin(m.text())) : "";
    }

    private Panel right(List<Apart> apart, Axis.Scale axis) {
        var names = new ArrayList<String>();
        var points = new LinkedHashMap<Mark, List<Point>>();
        for (var u : apart) {
            var standing = u.comparison.pairing().standing();
            points.computeIfAbsent(Shown.mark(standing), m -> new ArrayList<>())
                    .add(new Point(
                            Shown.place(u.value, standing).orElseThrow(),
                            names.size(),
                            Optional.empty(),
                            Optional.empty(),
                            reason(u)));
            names.add(row(u));
        }
        var series = new ArrayList<Series>();
        points.forEach((mark, list) -> series.add(new Series(
                say(mark == Mark.HOLLOW_DIAMOND ? "figure.series.CONDITIONS_DIFFER" : "figure.series.NOT_REPORTED"),
                mark,
                Trace.NONE,
                Ink.GREY,
                list,
                "")));
        return new Panel(
                say("figure.apart"), RIGHT, true, axis, new Axis.Rows(names), List.of(), List.of(), List.of(), series);
    }

    /** A published value is named by the local result it would have been compared with. */
    private String row(Apart u) {
        return u.value.isLocal()
                ? shown.row(u.value)
                : run.names().brief(u.value.device()) + "\n"
                        + say(
                                "figure.would-be",
                                "local",
                                shown.below(u.comparison.pairing().ours()));
    }

    private String reason(Apart u) {
        var pairing = u.comparison.pairing();
        return say(
                "figure.reason",
                "value",
                u.value.isLocal()
                        ? SummaryText.brackets(pairing.standing()).before()
                                + shown.mean(u.value)
                                + SummaryText.brackets(pairing.standing()).after()
                        : shown.beside(u.value, pairing.standing()),
                "why",
                run.conditions().why(pairing));
    }

    private List<String> notes(Map<Comparand, List<Comparison>> compared, Set<Comparand> all) {
        var notes = new FigureNotes(run);
        var lines = new ArrayList<String>();
        lines.add(say("figure.note.interval"));
        margin.ifPresent(
                m -> lines.add(say("figure.note.band", "margin", run.terms().margin(m.text()), "reason", m.reason())));
        lines.addAll(notes.conditions(compared.keySet()));
        lines.addAll(notes.otherQuantities(comparisons));
        lines.addAll(notes.sources(all));
        return lines;
    }

    private String alternative(Map<Comparand, List<Comparison>> compared, List<Apart> apart) {
        var said = new ArrayList<String>();
        said.add(message());
        for (var entry : compared.entrySet()) {
            var local = entry.getKey();
            said.add(say(
                    "figure.alt.ours",
                    "row",
                    shown.inLine(local),
                    "mean",
                    run.figures().withUnit(shown.mean(local), metric),
                    "interval",
                    shown.intervalText(local).orElse(say("not-reported"))));
            for (var c : entry.getValue()) {
                said.add(say(
                        "figure.alt.beside",
                        "value",
                        shown.beside(c.pairing().theirs(), c.pairing().standing()),
                        "answer",
                        run.answers().of(c)));
            }
        }
        if (!apart.isEmpty()) {
            said.add(say("figure.alt.apart"));
        }
        for (var u : apart) {
            said.add(say("figure.alt.value", "row", row(u).replace("\n", ", "), "value", reason(u)));
        }
        return String.join(" ", said);
    }

    private String message() {
        return say(
                "figure.message.beside",
                "metric",
                ConditionLine.upperFirst(run.terms().metric(metric)));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
