package comparand.compose.table;

import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block;
import comparand.document.Block.Paragraph;
import comparand.document.Block.Paragraph.Style;
import comparand.document.Section;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing.Purpose;
import comparand.model.Summary;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.Optional;

/** What can be said first: every local comparison that could be made, as a sentence. */
public final class MainPoints {

    private final Run run;

    public MainPoints(Run run) {
        this.run = run;
    }

    /** The firmest things first in the reader's eye: every local comparison that could be made, as a sentence. */
    Section section() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(
                say(
                        "table.said.lead",
                        "present",
                        run.names().device(run.dossier().presentDevice().value())),
                Style.BODY));
        var points = run.compared().comparisons().stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.pairing().standing().isCompared()
                        && !(c.answer() instanceof Answer.EventCounts))
                .map(this::point)
                .toList();
        points.forEach(p -> blocks.add(new Paragraph(p, Style.POINT)));
        var events = run.questions().values().stream()
                .filter(m -> m.nature() == Nature.EVENT)
                .map(this::events)
                .flatMap(Optional::stream)
                .toList();
        events.forEach(e -> blocks.add(new Paragraph(e, Style.POINT)));
        if (points.isEmpty() && events.isEmpty()) {
            blocks.add(new Paragraph(say("table.said.none"), Style.BODY));
        }
        return new Section(say("table.said"), say("table.said"), blocks);
    }

    /** All devices together, then each: so many of so many, and what is compatible with that. */
    private Optional<String> events(Metric metric) {
        var parts = new ArrayList<String>();
        for (var c : run.compared().matched().evidence().localResults()) {
            if (c.metric().equals(metric) && c.summary() instanceof Summary.Events e) {
                parts.add(run.names().device(c.device()) + ": "
                        + run.answers().events(e, ProportionInterval.EXACT.of(e.events(), e.of(), Answer.LEVEL)));
            }
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(say(
                        "table.said.events",
                        "metric",
                        ConditionLine.upperFirst(run.terms().metric(metric)),
                        "events",
                        String.join("; ", parts)));
    }

    /** One comparison as a sentence, with what belongs to its answer. */
    public String point(Comparison c) {
        var remarks = run.remarks().of(c);
        return sentence(c) + (remarks.isEmpty() ? "" : " " + String.join(". ", remarks) + ".");
    }

    /** The same without what belongs to the answer. */
    public String sentence(Comparison c) {
        var metric = c.pairing().ours().metric();
        var ours = c.pairing().ours();
        var device = run.names().device(ours.device());
        var answer = run.answers().of(c);
        if (c.answer() instanceof Answer.Nominal nominal) {
            var difference = run.figures()
                    .withUnit(
                            run.figures()
                                    .signed(nominal.difference(), run.figures().of(ours, nominal.difference())),
                            metric);
            return say(
                    "table.said.stated",
                    "device",
                    device,
                    "metric",
                    run.terms().metric(metric),
                    "difference",
                    difference,
                    "answer",
                    answer);
        }
        if (c.answer() instanceof Answer.Tested tested) {
            var group = ours.origin().fold(p -> "", Origin.Local::group);
            var step =
                    group.isEmpty() ? sizes(c) : say("at", "step", run.terms().group(group));
            return say(
                    "table.said.pair",
                    "device",
                    device,
                    "metric",
                    run.terms().metric(metric),
                    "step",
                    step,
                    "difference",
                    differenceWithUnit(metric, tested),
                    "answer",
                    answer);
        }
        return ConditionLine.upperFirst(run.terms().metric(metric)) + ": " + answer + ".";
    }

    /** What tells results without a step apart from those at one: how many stand behind them. */
    private String sizes(Comparison c) {
        return c.pairing()
                .ours()
                .sizes()
                .independent()
                .flatMap(ours -> c.pairing()
                        .theirs()
                        .sizes()
                        .independent()
                        .map(theirs -> say(
                                "in-numbers",
                                "ours",
                                run.terms().size(ours),
                                "theirs",
                                run.terms().size(theirs))))
                .orElse("");
    }

    private String differenceWithUnit(Metric metric, Answer.Tested tested) {
        int decimals = run.figures().ofDifference(metric, tested.interval());
        var value = run.figures().signed(tested.difference().value(), decimals);
        return say(
                "unknown.difference",
                "value",
                run.figures().withDifferenceUnit(value, metric),
                "interval",
                run.figures().range(tested.interval(), decimals));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
