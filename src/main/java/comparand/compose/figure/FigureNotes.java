package comparand.compose.figure;

import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.chart.Ink;
import comparand.document.chart.Mark;
import comparand.document.chart.Panel;
import comparand.document.chart.Plot.KeyEntry;
import comparand.document.chart.Series;
import comparand.document.chart.Trace;
import comparand.metric.Role;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Standing;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What is said below a figure: the conditions in words, what its lines mean, where the numbers come from. */
final class FigureNotes {

    private final Run run;

    FigureNotes(Run run) {
        this.run = run;
    }

    /** What the marks of the panels mean, ours first. */
    static List<KeyEntry> key(List<Panel> panels) {
        return panels.stream()
                .flatMap(p -> p.series().stream()
                        .sorted(Comparator.comparing(s -> s.mark() != Mark.FILLED_CIRCLE))
                        .map(s -> new KeyEntry(s.mark(), Trace.NONE, s.ink(), s.name())))
                .distinct()
                .toList();
    }

    /** The same where devices are named at their curves: circles are ours, whatever their ink. */
    List<KeyEntry> keyOfCurves(List<Series> series) {
        var key = new ArrayList<KeyEntry>();
        key.add(new KeyEntry(Mark.FILLED_CIRCLE, Trace.NONE, Ink.INK, say("figure.series.ours")));
        if (series.stream().anyMatch(s -> s.mark() == Mark.HOLLOW_CIRCLE)) {
            key.add(new KeyEntry(Mark.HOLLOW_CIRCLE, Trace.NONE, Ink.INK, say("figure.key.beyond")));
        }
        series.stream()
                .filter(s -> s.mark() != Mark.FILLED_CIRCLE && s.mark() != Mark.HOLLOW_CIRCLE)
                .forEach(s -> key.add(new KeyEntry(s.mark(), Trace.NONE, s.ink(), s.name())));
        return key;
    }

    /** The conditions that decide and are the same for all local results drawn. */
    List<String> conditions(Collection<Comparand> local) {
        var said = new ArrayList<String>();
        if (local.isEmpty()) {
            return said;
        }
        var first = local.iterator().next();
        for (var use : first.metric().conditions()) {
            var id = use.condition().id();
            var texts = new LinkedHashSet<String>();
            local.forEach(c -> texts.add(c.condition(id).text()));
            boolean reported = first.condition(id).isReported();
            if (use.role() == Role.DECIDES && texts.size() == 1 && reported) {
                said.add(run.words()
                        .say(
                                "figure.condition",
                                "condition",
                                run.terms().named(use.condition().name()),
                                "is",
                                run.terms()
                                        .circumstance(
                                                Optional.of(use.condition()),
                                                texts.iterator().next())));
            }
        }
        return said.isEmpty()
                ? said
                : List.of(run.words().say("figure.note.conditions", "conditions", String.join(", ", said)));
    }

    /** What is not drawn, because it would be a number of another quantity. */
    List<String> otherQuantities(Collection<Comparison> comparisons) {
        var left = comparisons.stream()
                .filter(c -> c.pairing().standing() == Standing.DIFFERENT_QUANTITY)
                .map(c -> say(
                        "figure.other-quantity",
                        "device",
                        run.names().brief(c.pairing().ours().device()),
                        "why",
                        run.conditions().why(c.pairing())))
                .distinct()
                .toList();
        return left.isEmpty() ? left : List.of(say("figure.note.not-drawn", "what", String.join("; ", left)));
    }

    /** What was read from figures of the sources, where the labels do not say so. */
    List<String> readings(Collection<Comparand> all) {
        var read = all.stream()
                .filter(SummaryText::isRead)
                .map(run.names()::locator)
                .distinct()
                .toList();
        return read.isEmpty() ? List.of() : List.of(say("figure.note.read", "locators", String.join("; ", read)));
    }

    /** The sources behind published values, by the numbers that locators use. */
    List<String> sources(Collection<Comparand> all) {
        var sources = new TreeMap<Integer, String>();
        all.forEach(c -> c.origin().fold(p -> sources.put(number(p), reference(p.source())), l -> ""));
        var studies = new LinkedHashSet<String>();
        all.forEach(c -> c.origin().fold(p -> false, l -> studies.add(l.study().id())));
        var named = new ArrayList<String>();
        studies.forEach(s -> named.add("L: " + s));
        sources.forEach((number, name) -> named.add(number + ": " + name));
        return named.isEmpty()
                ? List.of()
                : List.of(run.words().say("figure.note.sources", "sources", String.join("; ", named)));
    }

    private int number(Origin.Published published) {
        return run.names().number(published.source().id());
    }

    private static String reference(SourceRecord source) {
        return source.id();
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
