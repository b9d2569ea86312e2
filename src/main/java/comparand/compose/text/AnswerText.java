package comparand.compose.text;

import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.Comparison;
import comparand.model.Summary;
import comparand.model.Verdict;
import comparand.model.library.SampleUnit;
import comparand.stat.Interval;
import java.util.Optional;

/** The answer of a comparison in words. */
public final class AnswerText {

    private final Words words;
    private final Terms terms;
    private final Figures figures;
    private final ConditionLine conditions;
    private final Names names;

    public AnswerText(Words words, Figures figures, ConditionLine conditions, Names names) {
        this.words = words;
        this.terms = new Terms(words);
        this.figures = figures;
        this.conditions = conditions;
        this.names = names;
    }

    /** The answer as one sentence without a full stop, for a table. */
    public String of(Comparison comparison) {
        return sentence(comparison, comparison.answer(), new Verdicts() {
            @Override
            public String of(Answer.Tested tested, int decimals) {
                return verdict(tested, decimals, comparison);
            }

            @Override
            public String nominal(Answer.Nominal nominal) {
                return verdict("verdict.nominal." + nominal.verdict().name(), "", "", comparison);
            }
        });
    }

    /**
     * What would be said if the pair were compared, with a place in braces for each verdict: {@code verdict}, or
     * {@code asSd} and {@code asSe} where a spread may be read in two ways and the readings say different things.
     */
    public String frame(Comparison comparison) {
        return comparison.ifCompared() instanceof Answer.EitherReading either
                ? differ(either, "{asSd}", "{asSe}", decimals(either.asSd(), comparison))
                : sentence(comparison, comparison.ifCompared(), Verdicts.PLACES);
    }

    /** The frame of an answer that both readings of a spread give. */
    public String frameOfBoth() {
        return words.say("answer.either.agree", "asSd", "{asSd}");
    }

    /** What stands in an answer for its verdicts. */
    private interface Verdicts {

        Verdicts PLACES = new Verdicts() {
            @Override
            public String of(Answer.Tested tested, int decimals) {
                return "{verdict}";
            }

            @Override
            public String nominal(Answer.Nominal nominal) {
                return "{verdict}";
            }
        };

        String of(Answer.Tested tested, int decimals);

        String nominal(Answer.Nominal nominal);
    }

    private String sentence(Comparison comparison, Answer answer, Verdicts verdicts) {
        var pairing = comparison.pairing();
        return answer.fold(new Answer.Cases<>() {
            @Override
            public String tested(Answer.Tested a) {
                return words.say("answer.tested", "verdict", verdicts.of(a, decimals(a, comparison)));
            }

            @Override
            public String eitherReading(Answer.EitherReading a) {
                // both readings with the digits of the narrower one
                int decimals = decimals(a.asSd(), comparison);
                return a.agree() && a.asSd().verdict() != Verdict.NOT_SETTLED
                        ? words.say("answer.either.agree", "asSd", verdicts.of(a.asSd(), decimals))
                        : differ(a, verdicts.of(a.asSd(), decimals), verdicts.of(a.asSe(), decimals), decimals);
            }

            @Override
            public String againstFigure(Answer.AgainstFigure a) {
                return figure(a, comparison, verdicts.of(a.taken(), decimals(a.taken(), comparison)));
            }

            @Override
            public String nominal(Answer.Nominal a) {
                return words.say("answer.nominal", "verdict", verdicts.nominal(a));
            }

            @Override
            public String againstLimit(Answer.AgainstLimit a) {
                return limit(a, comparison);
            }

            @Override
            public String events(Answer.EventCounts a) {
                return words.say(
                        "answer.events",
                        "ours",
                        names.brief(pairing.ours().device()) + ": "
                                + AnswerText.this.events(a.ours(), a.oursInterval()),
                        "theirs",
                        other(pairing.theirs()) + ": " + AnswerText.this.events(a.theirs(), a.theirsInterval()));
            }

            @Override
            public String shown(Answer.Shown a) {
                return words.say("answer.shown", "why", conditions.why(pairing));
            }

            @Override
            public String notTestable(Answer.NotTestable a) {
                return words.say("answer.untestable." + a.why().name());
            }
        });
    }

    private String differ(Answer.EitherReading a, String asSd, String asSe, int decimals) {
        return words.say(
                "answer.either.differ", "asSd", asSd, "asSe", asSe, "shownSe", figures.difference(a.asSe(), decimals));
    }

    private int decimals(Answer.Tested tested, Comparison comparison) {
        return figures.ofDifference(comparison.pairing().ours().metric(), tested.interval());
    }

    private String other(Comparand theirs) {
        return theirs.isLocal()
                ? names.brief(theirs.device())
                : words.say("answer.events.source", "locator", names.locator(theirs));
    }

    /** The test behind an answer, if there is one. */
    public static Optional<Answer.Tested> tested(Answer answer) {
        if (answer instanceof Answer.Tested t) {
            return Optional.of(t);
        }
        if (answer instanceof Answer.AgainstFigure a) {
            return Optional.of(a.taken());
        }
        return answer instanceof Answer.EitherReading e ? Optional.of(e.asSd()) : Optional.empty();
    }

    /** One verdict for both readings of a spread, or that it depends on the reading. */
    public String verdictOfBoth(Answer.EitherReading either, Comparison comparison) {
        return either.agree() && either.asSd().verdict() != Verdict.NOT_SETTLED
                ? verdict(either.asSd(), comparison)
                : words.say("verdict.either");
    }

    /** The verdict alone, where there is one; else the whole sentence. */
    public String brief(Comparison comparison) {
        var answer = comparison.answer();
        return answer instanceof Answer.EitherReading either
                ? verdictOfBoth(either, comparison)
                : tested(answer).map(t -> verdict(t, comparison)).orElseGet(() -> of(comparison));
    }

    /** The verdict of an interval against the margin, in words. */
    public String verdict(Answer.Tested tested, Comparison comparison) {
        return verdict(tested, decimals(tested, comparison), comparison);
    }

    private String verdict(Answer.Tested tested, int decimals, Comparison comparison) {
        return verdict(
                "verdict." + tested.verdict().name(),
                figures.number(tested.interval().high(), decimals),
                figures.number(Math.abs(tested.interval().low()), decimals),
                comparison);
    }

    private String verdict(String key, String high, String low, Comparison comparison) {
        return words.say(
                        key,
                        "margin",
                        comparison
                                .margin()
                                .map(m -> terms.quantity(m.text()).replace(' ', '\u00a0'))
                                .orElse(""),
                        "high",
                        high,
                        "low",
                        low,
                        "unit",
                        terms.differenceUnit(comparison.pairing().ours().metric()))
                .replace("  ", " ");
    }

    private String figure(Answer.AgainstFigure a, Comparison comparison, String verdict) {
        var ours = comparison.pairing().ours();
        var theirs = comparison.pairing().theirs();
        int decimals = figures.of(ours, a.figure());
        var common = new String[] {
            "verdict", verdict,
            "taking", words.say(isRead(theirs) ? "answer.taking.read" : "answer.taking.printed"),
            "lacking", words.say("answer.lacking." + lacking(theirs)),
            "figure", figures.withUnit(figures.number(a.figure(), figures.of(theirs, a.figure())), theirs.metric()),
            "insideMean", words.say(a.mean().contains(a.figure()) ? "answer.inside" : "answer.outside"),
            "mean", figures.range(a.mean(), decimals),
            "insideMore",
                    a.oneMore()
                            .map(o -> words.say(o.contains(a.figure()) ? "answer.inside" : "answer.outside"))
                            .orElse(""),
            "oneMore", a.oneMore().map(o -> figures.range(o, coarser(decimals))).orElse(""),
            "oneFurther", terms.oneFurther(level(ours))
        };
        return words.say(a.oneMore().isPresent() ? "answer.figure" : "answer.figure.few", common);
    }

    /** A range for one further unit is wide: it needs no more than the digits of whole units where the mean has one. */
    private static int coarser(int decimals) {
        return decimals == 1 ? 0 : decimals;
    }

    private static boolean isRead(Comparand theirs) {
        return theirs.summary() instanceof Summary.Point point && point.kind() == Summary.PointKind.READ_FROM_FIGURE;
    }

    private static String lacking(Comparand theirs) {
        return theirs.summary() instanceof Summary.Point point
                ? switch (point.kind()) {
                    case FIGURE, ABOUT, NOMINAL, SINGLE -> "spread";
                    case INCOMPLETE -> "incomplete";
                    case MEDIAN -> "median";
                    case INTERPOLATED -> "interpolated";
                    case READ_FROM_FIGURE -> "figure";
                }
                : "spread";
    }

    private String limit(Answer.AgainstLimit a, Comparison comparison) {
        var ours = comparison.pairing().ours();
        var theirs = comparison.pairing().theirs();
        var value = figures.withUnit(
                figures.number(a.limit().value(), figures.of(theirs, a.limit().value())), theirs.metric());
        int decimals = figures.of(ours, a.limit().value());
        return words.say(
                        a.meanMeets() ? "answer.limit.meets" : "answer.limit.misses",
                        "limit",
                        words.say(a.limit().atLeast() ? "limit.at-least" : "limit.at-most", "value", value),
                        "meeting",
                        String.valueOf(a.meeting()),
                        "of",
                        String.valueOf(a.of()),
                        "unitsOfAnalysis",
                        terms.level(level(ours)),
                        "mean",
                        figures.range(a.mean(), decimals))
                + a.most()
                        .map(most -> words.say(
                                most.meets() ? "answer.limit.most.meet" : "answer.limit.most.open",
                                "side",
                                words.say(a.limit().atLeast() ? "answer.flips.above" : "answer.flips.below"),
                                "unitsOfAnalysis",
                                terms.level(level(ours)),
                                "value",
                                figures.withUnit(figures.number(most.value(), decimals), ours.metric())))
                        .orElse("");
    }

    /** {@code 0 of 12; up to 26 % is compatible with this}. */
    public String events(Summary.Events events, Interval interval) {
        return words.say(
                events.events() == 0 ? "answer.events.one" : "answer.events.some",
                "events",
                String.valueOf(events.events()),
                "of",
                String.valueOf(events.of()),
                "low",
                figures.percent(interval.low()),
                "high",
                figures.percent(interval.high()));
    }

    private static SampleUnit level(Comparand comparand) {
        return comparand.sizes().independent().map(s -> s.of()).orElse(SampleUnit.RUNS);
    }
}
