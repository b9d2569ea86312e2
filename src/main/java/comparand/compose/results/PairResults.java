package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.compose.text.Remarks;
import comparand.compose.text.Run;
import comparand.document.result.PairResult;
import comparand.document.result.PairResult.AnswerResult;
import comparand.document.result.PairResult.DifferenceResult;
import comparand.document.result.PairResult.RatioResult;
import comparand.document.result.PairResult.VerdictResult;
import comparand.metric.Role;
import comparand.model.Answer;
import comparand.model.Comparison;
import comparand.model.ConditionVerdict;
import comparand.model.MarginRange;
import comparand.model.Pairing;
import java.util.Optional;

/** Pairs and answers as data. */
public final class PairResults {

    /** Level of the interval that lies within the margin where two one-sided tests at 5 % reject. */
    public static final double NARROW = 0.9;

    private final Run run;

    public PairResults(Run run) {
        this.run = run;
    }

    public PairResult of(Comparison comparison) {
        Pairing pairing = comparison.pairing();
        return new PairResult(
                pairing.id(),
                Kebab.of(pairing.purpose()),
                pairing.ours().metric().id(),
                pairing.ours().id(),
                pairing.theirs().id(),
                Kebab.of(pairing.standing()),
                run.words().say("standing." + pairing.standing().name()),
                run.conditions().line(pairing),
                run.conditions().said(pairing).stream()
                        .map(PairResults::verdict)
                        .toList(),
                answer(comparison),
                run.remarks().of(comparison),
                run.conditions().distortions(pairing),
                run.conditions().qualifiers(pairing),
                run.conditions().toMakeComparable(pairing));
    }

    private static VerdictResult verdict(ConditionVerdict v) {
        return new VerdictResult(
                Kebab.of(v.of()),
                v.id(),
                v.name(),
                v.role() == Role.QUALIFIES ? "qualifies" : "decides",
                Kebab.of(v.mark()),
                v.ours(),
                v.theirs(),
                v.tolerance(),
                Kebab.of(v.effect()));
    }

    private AnswerResult answer(Comparison comparison) {
        var kind = AnswerKind.of(comparison.answer());
        var sentence = run.answers().of(comparison);
        var adjusted = ResultSets.present(comparison.adjustedP());
        return comparison.answer().fold(new Answer.Cases<>() {
            @Override
            public AnswerResult tested(Answer.Tested a) {
                return plain(
                        run.answers().verdict(a, comparison), Optional.of(difference(a, comparison)), Optional.empty());
            }

            @Override
            public AnswerResult eitherReading(Answer.EitherReading a) {
                int decimals = run.figures()
                        .ofDifference(
                                comparison.pairing().ours().metric(), a.asSd().interval());
                return plain(
                        run.answers().verdictOfBoth(a, comparison),
                        Optional.of(difference(a.asSd(), decimals, comparison)),
                        Optional.of(difference(a.asSe(), decimals, comparison)));
            }

            @Override
            public AnswerResult againstFigure(Answer.AgainstFigure a) {
                return new AnswerResult(
                        kind,
                        sentence,
                        run.answers().verdict(a.taken(), comparison),
                        Optional.of(difference(a.taken(), comparison)),
                        Optional.empty(),
                        Optional.of(ComparandResults.range(a.mean())),
                        a.oneMore().map(ComparandResults::range),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        adjusted);
            }

            @Override
            public AnswerResult nominal(Answer.Nominal a) {
                int decimals = run.figures().of(comparison.pairing().ours(), a.difference());
                var d = new DifferenceResult(
                        a.difference(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(a.rounding()),
                        Kebab.of(a.verdict()),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        run.figures().signed(a.difference(), decimals));
                return plain(sentence, Optional.of(d), Optional.empty());
            }

            @Override
            public AnswerResult againstLimit(Answer.AgainstLimit a) {
                return new AnswerResult(
                        kind,
                        sentence,
                        sentence,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(ComparandResults.range(a.mean())),
                        Optional.empty(),
                        Optional.of(a.meeting()),
                        Optional.of(a.of()),
                        a.most().map(Answer.ToleranceBound::value),
                        adjusted);
            }

            @Override
            public AnswerResult events(Answer.EventCounts a) {
                return plain(sentence, Optional.empty(), Optional.empty());
            }

            @Override
            public AnswerResult shown(Answer.Shown a) {
                return plain(sentence, Optional.empty(), Optional.empty());
            }

            @Override
            public AnswerResult notTestable(Answer.NotTestable a) {
                return plain(sentence, Optional.empty(), Optional.empty());
            }

            private AnswerResult plain(String verdict, Optional<DifferenceResult> d, Optional<DifferenceResult> ifSe) {
                return new AnswerResult(
                        kind,
                        sentence,
                        verdict,
                        d,
                        ifSe,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        adjusted);
            }
        });
    }

    public DifferenceResult difference(Answer.Tested a, Comparison comparison) {
        return difference(
                a, run.figures().ofDifference(comparison.pairing().ours().metric(), a.interval()), comparison);
    }

    private DifferenceResult difference(Answer.Tested a, int decimals, Comparison comparison) {
        var holds = Remarks.holds(a, comparison.margin());
        return new DifferenceResult(
                a.difference().value(),
                Optional.of(ComparandResults.range(a.interval())),
                Optional.of(a.difference().se()),
                Optional.of(a.difference().df()).filter(Double::isFinite),
                Optional.of(a.difference().cautious().isPresent() ? "cochran-cox" : "student"),
                Optional.of(ComparandResults.range(a.difference().interval(NARROW))),
                a.ratio().map(r -> new RatioResult(r.value(), ComparandResults.range(r.interval(Answer.LEVEL)))),
                Optional.of(a.difference().p()),
                Optional.empty(),
                Kebab.of(a.verdict()),
                Remarks.flipsAt(a, comparison.margin()),
                holds.map(MarginRange::above).filter(m -> m > 0),
                holds.map(MarginRange::below).filter(Double::isFinite),
                run.figures().difference(a, decimals));
    }
}
