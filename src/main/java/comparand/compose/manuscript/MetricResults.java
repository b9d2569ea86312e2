package comparand.compose.manuscript;

import comparand.compose.text.AnswerText;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.compose.text.SummaryText;
import comparand.document.Block;
import comparand.document.Block.Heading;
import comparand.document.result.UnknownResult;
import comparand.metric.Metric;
import comparand.metric.Nature;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.Step;
import comparand.model.Summary;
import comparand.stat.ProportionInterval;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One metric, always in the same order: our results, the devices beside the present one, like published values, values that
 * are shown and not compared, and what could not be found.
 */
final class MetricResults {

    private final Writing writing;
    private final Run run;
    private final Metric metric;
    private final List<Comparison> comparisons;
    private final List<UnknownResult> unknowns;

    MetricResults(Writing writing, Metric metric, List<UnknownResult> unknowns) {
        this.writing = writing;
        this.run = writing.run();
        this.metric = metric;
        this.comparisons = run.comparisons(metric);
        this.unknowns = unknowns;
    }

    List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading(ConditionLine.upperFirst(run.terms().metric(metric))));
        add(blocks, "local", Stream.concat(local().stream(), devices().stream()).toList());
        add(blocks, "compared", published(true));
        add(blocks, "shown", published(false));
        add(blocks, "open", notFound());
        return blocks;
    }

    private void add(List<Block> blocks, String part, List<String> sentences) {
        if (!sentences.isEmpty()) {
            blocks.add(writing.prose("res_" + metric.id() + "_" + part, sentences));
        }
    }

    /** Every local result that something is set beside, in the order in which it is met, step by step. */
    private List<String> local() {
        if (metric.nature() == Nature.EVENT) {
            return events();
        }
        var byStep = new TreeMap<Place, Map<String, Comparand>>();
        comparisons.stream()
                .map(Comparison::pairing)
                .filter(p -> p.purpose() != Purpose.WITHIN_CENTRE)
                .flatMap(p -> Stream.of(p.theirs(), p.ours()))
                .filter(Comparand::isLocal)
                .forEach(c -> byStep.computeIfAbsent(Place.of(writing, c), w -> new TreeMap<>())
                        .put(Place.order(run, c), c));
        if (byStep.isEmpty()) {
            return metric.nature() == Nature.STATED ? List.of() : List.of(writing.say("ms.say.no-local"));
        }
        var said = new ArrayList<String>();
        byStep.forEach((where, all) -> said.add(writing.say(
                "ms.say.local",
                "where",
                ConditionLine.upperFirst(where.text()),
                "values",
                String.join("; ", all.values().stream().map(this::value).toList()))));
        return said;
    }

    private List<String> events() {
        return run.compared().matched().evidence().localResults().stream()
                .filter(c -> c.metric().equals(metric))
                .flatMap(c -> c.summary() instanceof Summary.Events e ? Stream.of(event(c, e)) : Stream.empty())
                .toList();
    }

    private String event(Comparand c, Summary.Events e) {
        var interval = ProportionInterval.EXACT.of(e.events(), e.of(), Answer.LEVEL);
        return writing.say(
                "ms.say.events-of",
                "device",
                run.names().device(c.device()),
                "events",
                writing.held("v " + c.id(), run.answers().events(e, interval)));
    }

    private String value(Comparand c) {
        var text = run.summaries().withUnit(c);
        var n = c.sizes()
                .independent()
                .map(s -> writing.say("ms.n", "n", run.terms().size(s)))
                .orElse("");
        return writing.say(
                "ms.value",
                "device",
                run.names().device(c.device()),
                "value",
                writing.held("v " + c.id(), text),
                "n",
                n);
    }

    private List<String> devices() {
        return comparisons.stream()
                .filter(c -> c.pairing().purpose() != Purpose.LOCAL_AGAINST_PUBLISHED
                        && !(c.answer() instanceof Answer.EventCounts))
                .map(c -> c.pairing().standing().isCompared() ? beside(c) : apart(c))
                .toList();
    }

    private String beside(Comparison c) {
        var sentence = writing.say(
                "ms.say.device",
                "device",
                run.names().device(c.pairing().ours().device()),
                "present",
                run.names().device(c.pairing().theirs().device()),
                "where",
                at(c.pairing()),
                "difference",
                difference(c),
                "answer",
                run.answers().of(c));
        return withRemarks(sentence, c);
    }

    private String apart(Comparison c) {
        return writing.say(
                "ms.say.device-apart",
                "device",
                run.names().device(c.pairing().ours().device()),
                "present",
                run.names().device(c.pairing().theirs().device()),
                "where",
                at(c.pairing()),
                "answer",
                run.answers().of(c));
    }

    private String at(Pairing pairing) {
        var group = pairing.ours().origin().fold(p -> "", Origin.Local::group);
        return group.isEmpty() ? "" : writing.say("at", "step", run.terms().group(group));
    }

    private String difference(Comparison c) {
        var name = "d " + c.pairing().id();
        if (c.answer() instanceof Answer.Nominal n) {
            return writing.held(
                    name,
                    run.figures()
                            .withUnit(
                                    run.figures()
                                            .signed(
                                                    n.difference(),
                                                    run.figures().of(c.pairing().ours(), n.difference())),
                                    metric));
        }
        return AnswerText.tested(c.answer())
                .map(t -> {
                    int decimals = run.figures().ofDifference(metric, t.interval());
                    return writing.held(
                            name,
                            writing.say(
                                    "ms.difference",
                                    "value",
                                    run.figures()
                                            .withDifferenceUnit(
                                                    run.figures()
                                                            .signed(
                                                                    t.difference()
                                                                            .value(),
                                                                    decimals),
                                                    metric),
                                    "interval",
                                    run.figures().range(t.interval(), decimals)));
                })
                .orElse("");
    }

    private String withRemarks(String sentence, Comparison c) {
        var remarks = run.remarks().of(c);
        return remarks.isEmpty() ? sentence : sentence + " " + String.join(". ", remarks) + ".";
    }

    private List<String> published(boolean compared) {
        return comparisons.stream()
                .filter(c -> c.pairing().purpose() == Purpose.LOCAL_AGAINST_PUBLISHED
                        && c.pairing().standing().isCompared() == compared)
                .map(c -> compared ? like(c) : shown(c))
                .toList();
    }

    private String like(Comparison c) {
        var theirs = c.pairing().theirs();
        var difference = difference(c);
        var common = new String[] {
            "device", run.names().device(theirs.device()),
            "where", at(c.pairing()),
            "refs", writing.cite(theirs),
            "printed", printed(theirs),
            "footing", footing(theirs, c),
            "difference", difference,
            "answer", run.answers().of(c)
        };
        var sentence = writing.say(difference.isEmpty() ? "ms.say.like-plain" : "ms.say.like-difference", common);
        return withRemarks(sentence, c);
    }

    private String printed(Comparand theirs) {
        var n = theirs.sizes()
                .independent()
                .map(s -> writing.say("ms.n", "n", run.terms().size(s)))
                .orElse("");
        return writing.held("p " + theirs.id(), SummaryText.printed(theirs)) + n;
    }

    /** The number on our footing, where a step made it another than the one printed. */
    private String footing(Comparand theirs, Comparison c) {
        boolean converted =
                theirs.trail().stream().anyMatch(s -> s.kind().converts() || s.kind() == Step.Kind.READ_FROM_FIGURE);
        return converted
                ? writing.say(
                        "ms.footing",
                        "value",
                        run.summaries().beside(theirs, c.pairing().standing()))
                : "";
    }

    private String shown(Comparison c) {
        var theirs = c.pairing().theirs();
        var sentence = writing.say(
                "ms.say.shown",
                "device",
                run.names().device(theirs.device()),
                "where",
                at(c.pairing()),
                "refs",
                writing.cite(theirs),
                "printed",
                printed(theirs),
                "footing",
                footing(theirs, c),
                "answer",
                run.answers().of(c));
        var directions = run.conditions().distortions(c.pairing());
        return directions.isEmpty() ? sentence : sentence + " " + String.join(" ", directions);
    }

    private List<String> notFound() {
        var said = new ArrayList<String>();
        run.compared().matched().unpaired().stream()
                .filter(c -> c.metric().equals(metric))
                .forEach(c -> said.add(writing.say(
                        "ms.say.unpaired",
                        "device",
                        run.names().device(c.device()),
                        "refs",
                        writing.cite(c),
                        "printed",
                        printed(c),
                        "why",
                        run.unpaired(c))));
        of("unmeasured")
                .forEach(u -> said.add(writing.say("ms.say.unmeasured", "what", u.what(), "device", u.device())));
        var devices = of("unpublished").map(UnknownResult::device).toList();
        if (!devices.isEmpty()) {
            said.add(writing.say("ms.say.unpublished", "devices", String.join(", ", devices)));
        }
        return said;
    }

    private Stream<UnknownResult> of(String kind) {
        return unknowns.stream()
                .filter(u -> u.kind().equals(kind) && u.metrics().contains(metric.id()));
    }
}
