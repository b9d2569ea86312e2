package comparand.compare;

import comparand.model.Answer;
import comparand.model.Margin;
import comparand.model.Pairing;
import comparand.model.Summary;
import comparand.model.Verdict;
import comparand.stat.Interval;
import comparand.stat.LocalMean;
import comparand.stat.MeanDifference;
import comparand.stat.MeanEstimate;
import comparand.stat.Moments;
import comparand.stat.OneSidedTolerance;
import comparand.stat.ProportionInterval;
import comparand.stat.RatioOfMeans;
import java.util.List;
import java.util.Optional;

/** The answer for one pair, by the form of its two sides. */
final class Answers {

    static final double LEVEL = Answer.LEVEL;
    /** Fewer local results than these are shown, and not compared. */
    private static final int FEWEST = 3;

    private Answers() {}

    /** The answer whatever the standing. */
    static Answer ifCompared(Pairing pairing, Optional<Margin> margin) {
        return pairing.ours().summary().fold(new Summary.Cases<>() {
            @Override
            public Answer sampled(Summary.Sampled ours) {
                return isTooFew(ours)
                        ? new Answer.NotTestable(Answer.NotTestable.Why.TOO_FEW_LOCAL_RESULTS)
                        : Answers.estimated(Side.of(ours), pairing.theirs().summary(), margin);
            }

            @Override
            public Answer estimated(Summary.Estimated ours) {
                return Answers.estimated(Side.of(ours), pairing.theirs().summary(), margin);
            }

            @Override
            public Answer eitherSpread(Summary.EitherSpread ours) {
                throw new IllegalStateException("our own spread is always known");
            }

            @Override
            public Answer point(Summary.Point ours) {
                return points(ours, pairing.theirs().summary(), margin);
            }

            @Override
            public Answer limit(Summary.Limit ours) {
                return new Answer.NotTestable(Answer.NotTestable.Why.NO_SINGLE_FIGURE);
            }

            @Override
            public Answer extent(Summary.Extent ours) {
                return new Answer.NotTestable(Answer.NotTestable.Why.NO_SINGLE_FIGURE);
            }

            @Override
            public Answer events(Summary.Events ours) {
                return pairing.theirs().summary() instanceof Summary.Events theirs
                        ? new Answer.EventCounts(ours, exact(ours), theirs, exact(theirs))
                        : new Answer.NotTestable(Answer.NotTestable.Why.NO_SINGLE_FIGURE);
            }

            @Override
            public Answer words(Summary.Words ours) {
                return new Answer.NotTestable(Answer.NotTestable.Why.CLAIM_WITHOUT_NUMBER);
            }
        });
    }

    /**
     * Our side of a test.
     *
     * @param further the single results from which a further unit or case can be told; empty for an estimate from a line or
     *     from sums, and for results of several hospitals or of one unit
     * @param each the single results; empty for an estimate from a line or from sums
     */
    private record Side(MeanEstimate estimate, Optional<Moments> further, List<Double> each) {

        static Side of(Summary.Sampled s) {
            return new Side(
                    s.estimate(), s.local().filter(LocalMean::coversFurther).map(m -> s.moments()), s.each());
        }

        Optional<Interval> oneMore() {
            return further.map(m -> m.predictionForOneMore(LEVEL));
        }

        static Side of(Summary.Estimated s) {
            return new Side(s.estimate(), Optional.empty(), List.of());
        }
    }

    private static Answer estimated(Side ours, Summary theirs, Optional<Margin> margin) {
        return theirs.fold(new Summary.Cases<>() {
            @Override
            public Answer sampled(Summary.Sampled other) {
                return isTooFew(other)
                        ? new Answer.NotTestable(Answer.NotTestable.Why.TOO_FEW_LOCAL_RESULTS)
                        : tested(ours, other.estimate(), other.halfWidth(), margin);
            }

            @Override
            public Answer estimated(Summary.Estimated other) {
                return tested(ours, other.estimate(), 0, margin);
            }

            @Override
            public Answer eitherSpread(Summary.EitherSpread other) {
                return new Answer.EitherReading(
                        tested(ours, other.asSd().estimate(), other.halfWidth(), margin),
                        tested(ours, other.asSe().estimate(), other.halfWidth(), margin));
            }

            @Override
            public Answer point(Summary.Point other) {
                // one result of our own is no figure of a source
                return other.kind() == Summary.PointKind.SINGLE
                        ? new Answer.NotTestable(Answer.NotTestable.Why.TOO_FEW_LOCAL_RESULTS)
                        : againstFigure(ours, other, margin);
            }

            @Override
            public Answer limit(Summary.Limit other) {
                return againstLimit(ours, other);
            }

            @Override
            public Answer extent(Summary.Extent other) {
                return new Answer.NotTestable(Answer.NotTestable.Why.NO_SINGLE_FIGURE);
            }

            @Override
            public Answer events(Summary.Events other) {
                return new Answer.NotTestable(Answer.NotTestable.Why.NO_SINGLE_FIGURE);
            }

            @Override
            public Answer words(Summary.Words other) {
                return new Answer.NotTestable(Answer.NotTestable.Why.CLAIM_WITHOUT_NUMBER);
            }
        });
    }

    /** Welch's interval; rounding or reading uncertainty of the other mean is added to its standard error. */
    private static Answer.Tested tested(Side ours, MeanEstimate theirs, double halfWidth, Optional<Margin> margin) {
        var other = theirs.widenedBy(halfWidth);
        return tested(
                MeanDifference.of(ours.estimate, other),
                RatioOfMeans.of(ours.estimate, other).value(),
                margin);
    }

    private static Answer.Tested tested(
            MeanDifference difference, Optional<RatioOfMeans> ratio, Optional<Margin> margin) {
        var interval = difference.interval(LEVEL);
        return new Answer.Tested(difference, interval, Verdict.of(interval, margin), ratio);
    }

    /** Local results only: what a source makes of few of its own is its to say. */
    static boolean isTooFew(Summary.Sampled summary) {
        return !summary.each().isEmpty() && summary.moments().n() < FEWEST;
    }

    /** The printed figure is taken as exact but for its rounding or reading. */
    private static Answer againstFigure(Side ours, Summary.Point figure, Optional<Margin> margin) {
        var widened = ours.estimate.widenedBy(figure.halfWidth());
        return new Answer.AgainstFigure(
                tested(MeanDifference.from(widened, figure.value()), Optional.empty(), margin),
                figure.value(),
                ours.estimate.interval(LEVEL),
                ours.oneMore());
    }

    private static Answer againstLimit(Side ours, Summary.Limit limit) {
        var mean = ours.estimate.interval(LEVEL);
        int meeting = (int) ours.each.stream().filter(limit::metBy).count();
        return new Answer.AgainstLimit(
                limit,
                limit.metBy(ours.estimate.mean()),
                limit.metBy(mean.low()) == limit.metBy(mean.high()),
                meeting,
                ours.each.size(),
                mean,
                ours.further.filter(m -> m.n() >= Answer.ToleranceBound.FEWEST).map(m -> bound(m, limit)));
    }

    private static Answer.ToleranceBound bound(Moments ours, Summary.Limit limit) {
        double share = Answer.ToleranceBound.SHARE;
        double confidence = Answer.ToleranceBound.CONFIDENCE;
        double value = limit.atLeast()
                ? OneSidedTolerance.lowerLimit(ours, share, confidence)
                : OneSidedTolerance.upperLimit(ours, share, confidence);
        return new Answer.ToleranceBound(value, limit.metBy(value));
    }

    private static Answer points(Summary.Point ours, Summary theirs, Optional<Margin> margin) {
        if (ours.kind() == Summary.PointKind.NOMINAL && theirs instanceof Summary.Point other) {
            double d = ours.value() - other.value();
            return new Answer.Nominal(d, ours.halfWidth() + other.halfWidth(), Verdict.of(new Interval(d, d), margin));
        }
        return new Answer.NotTestable(
                ours.kind() == Summary.PointKind.SINGLE
                        ? Answer.NotTestable.Why.TOO_FEW_LOCAL_RESULTS
                        : Answer.NotTestable.Why.NO_SINGLE_FIGURE);
    }

    static Interval exact(Summary.Events events) {
        return ProportionInterval.EXACT.of(events.events(), events.of(), LEVEL);
    }
}
