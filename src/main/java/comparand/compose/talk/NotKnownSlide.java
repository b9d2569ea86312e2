package comparand.compose.talk;

import comparand.compose.talk.Draft.Asked;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.talk.Part;
import comparand.metric.Metric;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Margin;
import comparand.model.Needed;
import comparand.model.PlanAim;
import comparand.model.Planned;
import comparand.model.Unknown;
import comparand.model.Verdict;
import comparand.stat.Interval;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is not known: three cards, in the order of how much each could change the decision. */
final class NotKnownSlide {

    static final String ID = "not-known";

    private static final int CARDS = 3;

    private final Run run;
    private final Speeches speeches;

    NotKnownSlide(Run run, Speeches speeches) {
        this.run = run;
        this.speeches = speeches;
    }

    Draft slide() {
        var cards = new ArrayList<Part.Card>();
        var open = new ArrayList<comparand.model.Comparison>();
        var seen = new ArrayList<String>();
        for (var unknown : run.compared().unknowns()) {
            var card = card(unknown);
            // one card a metric and device: the next three questions are more than one question three times
            if (cards.size() < CARDS
                    && card.isPresent()
                    && !seen.contains(card.get().heading())) {
                cards.add(card.get());
                seen.add(card.get().heading());
                if (unknown instanceof Unknown.Open o) {
                    open.add(o.comparison());
                }
            }
        }
        int all = run.compared().unknowns().size();
        var asked = List.of(
                new Asked(say("talk.ask.unknowns"), BackupSlides.UNKNOWNS),
                new Asked(say("talk.ask.methods"), BackupSlides.METHODS));
        return new Draft(
                ID,
                say(cards.isEmpty() ? "talk.title.not-known.none" : "talk.title.not-known"),
                List.of(cards.isEmpty() ? new Part.Points(List.of(say("talk.not-known.none"))) : new Part.Cards(cards)),
                say("talk.strip.not-known", "cards", String.valueOf(cards.size()), "all", String.valueOf(all))
                        + (open.isEmpty() ? "" : " · " + speeches.strip(open)),
                speeches.of(List.of(say("talk.say.not-known")), open, asked),
                false,
                open.stream()
                        .map(c -> c.pairing().theirs())
                        .filter(t -> !t.isLocal())
                        .toList());
    }

    /** Only what can be said in a few words; all of it stands in a table of the backup slides. */
    private Optional<Part.Card> card(Unknown unknown) {
        return unknown.fold(new Unknown.Cases<>() {
            @Override
            public Optional<Part.Card> open(Unknown.Open u) {
                var c = u.comparison();
                return Firmness.tested(c)
                        .map(t -> new Part.Card(
                                heading(
                                        c.pairing().ours().metric(),
                                        c.pairing().ours().device()),
                                List.of(
                                        range(t, c.pairing().ours().metric()),
                                        margin(c.margin()),
                                        needed(u.planned()))));
            }

            @Override
            public Optional<Part.Card> declared(Unknown.Declared u) {
                return Optional.empty();
            }

            @Override
            public Optional<Part.Card> unmeasured(Unknown.Unmeasured u) {
                return Optional.of(new Part.Card(
                        heading(u.metric(), u.device()),
                        List.of(
                                say(u.have().isPresent() ? "talk.card.few" : "talk.card.unmeasured"),
                                margin(u.margin()),
                                needed(u.planned()))));
            }

            @Override
            public Optional<Part.Card> asked(Unknown.Asked u) {
                return Optional.empty();
            }

            @Override
            public Optional<Part.Card> unlike(Unknown.Unlike u) {
                var pairing = u.first().pairing();
                return Optional.of(new Part.Card(
                        heading(pairing.ours().metric(), pairing.ours().device()),
                        List.of(say("talk.card.unlike", "other", other(pairing.theirs())))));
            }

            @Override
            public Optional<Part.Card> unpublished(Unknown.Unpublished u) {
                return Optional.of(new Part.Card(
                        heading(u.metrics().get(0), u.device()),
                        List.of(say("talk.card.unpublished"), say("talk.card.search"))));
            }

            @Override
            public Optional<Part.Card> paidFor(Unknown.PaidFor u) {
                return Optional.empty();
            }
        });
    }

    private String other(Comparand theirs) {
        return theirs.isLocal() ? run.names().brief(theirs.device()) : say("talk.card.published");
    }

    private String heading(Metric metric, String device) {
        return say(
                "talk.card",
                "metric",
                ConditionLine.upperFirst(metric.name()),
                "device",
                run.names().brief(device));
    }

    private String range(Answer.Tested tested, Metric metric) {
        Interval interval = tested.interval();
        int decimals =
                Math.min(run.figures().ofDifference(metric, interval), Rounding.decimalsFor(interval.halfWidth(), 2));
        var low = run.figures().number(Math.abs(interval.low()), decimals);
        var high = run.figures().number(Math.abs(interval.high()), decimals);
        var unit = run.figures().withDifferenceUnit("", metric).replace(' ', '\u00a0');
        return tested.verdict() == Verdict.NOT_SETTLED
                ? say("talk.card.range", "low", low + unit, "high", high + unit)
                : interval.low() >= 0
                        ? say("talk.card.higher", "low", low, "high", high + unit)
                        : say("talk.card.lower", "high", high, "low", low + unit);
    }

    private String margin(Optional<Margin> margin) {
        return margin.map(m -> say("talk.card.margin", "margin", m.text().replace(' ', '\u00a0')))
                .orElseGet(() -> say("talk.card.no-margin"));
    }

    private String needed(Optional<Planned> planned) {
        return planned.filter(p -> !p.aims().isEmpty())
                .map(p -> needed(p, aim(p).results().get(atHand(p))))
                .orElseGet(() -> say("talk.card.unplanned"));
    }

    /** The one by the width of an interval, where there is one: what a test would find says less than what is ruled out. */
    private static PlanAim aim(Planned planned) {
        return planned.aims().stream()
                .filter(a -> a.kind() != PlanAim.Kind.DETECT)
                .findFirst()
                .orElseGet(() -> planned.aims().get(0));
    }

    private static int atHand(Planned planned) {
        for (int i = 0; i < planned.assumed().size(); i++) {
            if (planned.assumed().get(i).which() == comparand.model.AssumedSd.Which.AT_HAND) {
                return i;
            }
        }
        return 0;
    }

    private String needed(Planned planned, Needed needed) {
        var units = planned.unit().plural();
        return switch (needed.kind()) {
            case NUMBER -> say("talk.card.needed", "n", String.valueOf(needed.n()), "units", units);
            case MORE -> say("talk.card.more", "n", String.valueOf(needed.n()), "units", units);
            case NONE -> say("talk.card.none", "units", units);
        };
    }

    private String say(String key, String... places) {
        return run.words().say(key, places);
    }
}
