package comparand.compose.text;

import comparand.diag.Located;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Margin;
import comparand.model.Missing;
import comparand.model.Planned;
import comparand.model.Unknown;
import comparand.model.Verdict;
import comparand.model.library.QuestionRecord;
import comparand.model.library.SourceKind;
import comparand.model.library.SourceRecord;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is not known, in words: what, of which device, why it matters, what would settle it, who could supply it. */
public final class UnknownText {

    private final Run run;

    public UnknownText(Run run) {
        this.run = run;
    }

    /**
     * One unknown in words.
     *
     * @param settles sentences; those of the aims of a plan come first, in their order
     */
    public record Said(String what, String device, String matters, List<String> settles, String who) {}

    public Said of(Unknown unknown) {
        return unknown.fold(new Unknown.Cases<>() {
            @Override
            public Said open(Unknown.Open u) {
                return UnknownText.this.open(u);
            }

            @Override
            public Said declared(Unknown.Declared u) {
                var says = u.says();
                return new Said(
                        says.what().value(),
                        says.device().map(d -> run.names().device(d.value())).orElseGet(() -> say("not-applicable")),
                        says.matters().value(),
                        List.of(says.settles().value()),
                        says.who().map(Located::value).orElseGet(() -> say("who.open")));
            }

            @Override
            public Said unmeasured(Unknown.Unmeasured u) {
                return UnknownText.this.unmeasured(u);
            }

            @Override
            public Said asked(Unknown.Asked u) {
                return UnknownText.this.asked(u);
            }

            @Override
            public Said unlike(Unknown.Unlike u) {
                return UnknownText.this.unlike(u);
            }

            @Override
            public Said unpublished(Unknown.Unpublished u) {
                return new Said(
                        say("unknown.unpublished", "metrics", names(u.metrics())),
                        run.names().device(u.device()),
                        say("matters.unpublished"),
                        List.of(say("settle.unpublished")),
                        say("who.literature", "maker", maker(u.device())));
            }

            @Override
            public Said paidFor(Unknown.PaidFor u) {
                var sources = u.sources().stream()
                        .map(s -> String.valueOf(run.names().number(s.id())))
                        .toList();
                return new Said(
                        say(
                                u.makersOwn() ? "unknown.paid.documents" : "unknown.paid.studies",
                                "metrics",
                                names(u.metrics()),
                                "sources",
                                String.join(", ", sources)),
                        run.names().device(u.device()),
                        say("matters.paid"),
                        List.of(say("settle.paid")),
                        say("who.independent"));
            }
        });
    }

    private Said open(Unknown.Open u) {
        var c = u.comparison();
        var pairing = c.pairing();
        var metric = pairing.ours().metric();
        var tested = tested(c.answer());
        var group = pairing.ours().origin().fold(p -> "", l -> l.group());
        var name = ConditionLine.upperFirst(run.terms().metric(metric));
        var what = say(
                "unknown.open",
                "metric",
                group.isEmpty()
                        ? name
                        : say(
                                "unknown.metric",
                                "metric",
                                name,
                                "group",
                                run.terms().group(group)),
                "other",
                other(pairing.theirs()),
                "difference",
                tested.map(t -> difference(metric, t)).orElse(""),
                "verdict",
                tested.map(t -> t.verdict() == Verdict.NOT_SETTLED
                                ? say("unknown.not-settled")
                                : run.answers().verdict(t, c))
                        .orElse(""));
        return new Said(
                what,
                run.names().device(pairing.ours().device()),
                matters(metric, c.margin()),
                u.planned()
                        .map(p -> planned(p, metric, c.margin(), tested))
                        .orElseGet(() -> List.of(say("settle.no-number"))),
                say("who.ourselves"));
    }

    /** The test that was found open: of two readings of a spread that agree, the wider. */
    private static Optional<Answer.Tested> tested(Answer answer) {
        return answer instanceof Answer.EitherReading e ? Optional.of(e.asSe()) : AnswerText.tested(answer);
    }

    private String difference(Metric metric, Answer.Tested t) {
        int decimals = run.figures().ofDifference(metric, t.interval());
        return say(
                "unknown.difference",
                "value",
                run.figures()
                        .withDifferenceUnit(run.figures().signed(t.difference().value(), decimals), metric),
                "interval",
                run.figures().range(t.interval(), decimals));
    }

    private List<String> planned(Planned plan, Metric metric, Optional<Margin> margin, Optional<Answer.Tested> tested) {
        var text = new PlanWords(run.words(), run.figures(), metric, plan);
        var said = new ArrayList<String>();
        plan.aims().forEach(aim -> said.add(text.aim(aim, margin, tested)));
        said.addAll(text.assumptions());
        return said;
    }

    private String other(Comparand theirs) {
        return theirs.isLocal()
                ? run.names().device(theirs.device())
                : say(
                        "unknown.printed",
                        "printed",
                        SummaryText.printed(theirs),
                        "locator",
                        run.names().locator(theirs));
    }

    private String matters(Metric metric, Optional<Margin> margin) {
        var asks = asks(metric);
        return margin.map(m -> say(
                        "matters.margin",
                        "asks",
                        asks,
                        "margin",
                        run.terms().quantity(m.text()).replace(' ', '\u00a0'),
                        "reason",
                        m.reason()))
                .orElseGet(() -> say("matters.no-margin", "asks", asks));
    }

    private String asks(Metric metric) {
        return run.questions().entrySet().stream()
                .filter(e -> e.getValue().equals(metric))
                .map(e -> e.getKey())
                .findFirst()
                .map(QuestionRecord::asks)
                .map(Located::value)
                .orElseGet(() -> run.terms().metric(metric));
    }

    private Said unmeasured(Unknown.Unmeasured u) {
        var name = ConditionLine.upperFirst(run.terms().metric(u.metric()));
        var settles = new ArrayList<String>();
        settles.add(say("settle.unmeasured"));
        u.planned().ifPresent(p -> settles.addAll(0, planned(p, u.metric(), u.margin(), Optional.empty())));
        return new Said(
                u.have()
                        .flatMap(c -> c.sizes().independent())
                        .map(n -> say(
                                "unknown.few", "metric", name, "n", run.terms().size(n)))
                        .orElseGet(() -> say("unknown.unmeasured", "metric", name)),
                run.names().device(u.device()),
                matters(u.metric(), u.margin()),
                settles,
                say("who.ourselves"));
    }

    private Said asked(Unknown.Asked u) {
        var parts = u.missing().stream().map(this::missing).toList();
        return new Said(
                ConditionLine.upperFirst(String.join("; ", parts)),
                run.names().device(u.device()),
                say("matters.asked", "metrics", names(u.metrics())),
                List.of(say("settle.asked")),
                supplier(u.source(), u.device()));
    }

    private String missing(Missing m) {
        return say(
                "missing." + m.kind().name(),
                "conditions",
                m.what().stream().map(run.terms()::named).collect(Collectors.joining(", ")),
                "values",
                String.join(", ", m.values()));
    }

    private String supplier(SourceRecord source, String device) {
        var number = String.valueOf(run.names().number(source.id()));
        boolean maker = source.kind().value() == SourceKind.INSTRUCTIONS_FOR_USE
                || source.kind().value() == SourceKind.FLYER;
        if (maker) {
            return say("who.maker", "maker", maker(device), "number", number);
        }
        var first = source.reference().author().stream()
                .findFirst()
                .map(a -> a.text())
                .orElseGet(() -> source.reference().title().value());
        boolean alone = source.reference().author().size() < 2;
        return say(alone ? "who.author" : "who.authors", "first", first, "number", number);
    }

    private String maker(String device) {
        return run.library().device(device).map(d -> d.maker().value()).orElse(device);
    }

    private Said unlike(Unknown.Unlike u) {
        var pairing = u.first().pairing();
        var theirs = pairing.theirs();
        var metric = pairing.ours().metric();
        var would = distinct(u, c -> run.conditions().toMakeComparable(c.pairing()));
        return new Said(
                say(
                        "unknown.unlike",
                        "metric",
                        ConditionLine.upperFirst(run.terms().metric(metric)),
                        "other",
                        other(theirs),
                        "why",
                        distinct(u, c -> run.conditions().why(c.pairing()))),
                run.names().device(pairing.ours().device()),
                say("matters.unlike", "asks", asks(metric)),
                List.of(say("settle.unlike", "would", ConditionLine.upperFirst(would))),
                theirs.origin()
                        .fold(
                                p -> say("who.ourselves-or", "other", supplier(p.source(), theirs.device())),
                                l -> say("who.ourselves")));
    }

    private static String distinct(Unknown.Unlike u, Function<Comparison, String> text) {
        var texts = new LinkedHashSet<String>();
        u.pairs().forEach(c -> texts.add(text.apply(c)));
        return String.join("; ", texts);
    }

    private String names(List<Metric> metrics) {
        return metrics.stream().map(run.terms()::metric).collect(Collectors.joining(", "));
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
