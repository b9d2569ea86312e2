package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.stat.Interval;
import comparand.stat.MeanDifference;
import comparand.stat.RatioOfMeans;
import java.util.Optional;

/** What can honestly be said about a pair. A closed set: a new answer breaks every place that must speak of it. */
public sealed interface Answer {

    /** The level of every interval that is printed, unless it says otherwise. */
    double LEVEL = 0.95;

    <R> R fold(Cases<R> cases);

    /** One method per answer. */
    interface Cases<R> {
        R tested(Tested answer);

        R eitherReading(EitherReading answer);

        R againstFigure(AgainstFigure answer);

        R nominal(Nominal answer);

        R againstLimit(AgainstLimit answer);

        R events(EventCounts answer);

        R shown(Shown answer);

        R notTestable(NotTestable answer);
    }

    /**
     * A difference of two means with its 95 % interval.
     *
     * @param ratio of the two means, a second view; empty where a mean is not clearly above zero
     */
    record Tested(MeanDifference difference, Interval interval, Verdict verdict, Optional<RatioOfMeans> ratio)
            implements Answer {
        public Tested {
            requireNonNull(ratio, "ratio");
            requireNonNull(difference, "difference");
            requireNonNull(interval, "interval");
            requireNonNull(verdict, "verdict");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.tested(this);
        }
    }

    /** The published spread may be a standard deviation or a standard error; both are carried through. */
    record EitherReading(Tested asSd, Tested asSe) implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.eitherReading(this);
        }

        public boolean agree() {
            return asSd.verdict() == asSe.verdict();
        }
    }

    /**
     * A figure published without spread or number, taken as exact but for its rounding or reading.
     *
     * @param mean the 95 % interval of our mean
     * @param oneMore the range expected for one further unit or case; empty with fewer than three
     */
    record AgainstFigure(Tested taken, double figure, Interval mean, Optional<Interval> oneMore) implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.againstFigure(this);
        }
    }

    /**
     * Two nominal figures.
     *
     * @param rounding how far the difference could move if each figure was rounded to its last printed digit
     */
    record Nominal(double difference, double rounding, Verdict verdict) implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.nominal(this);
        }
    }

    /**
     * A limit the source states, and how our results keep to it.
     *
     * @param meanMeets whether our mean does
     * @param settled whether the whole 95 % interval of our mean lies on that side
     * @param most where most single units or cases are expected to keep to; a stated limit is one for single devices and not
     *     for their mean; empty where our results cannot tell
     */
    record AgainstLimit(
            Summary.Limit limit,
            boolean meanMeets,
            boolean settled,
            int meeting,
            int of,
            Interval mean,
            Optional<ToleranceBound> most)
            implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.againstLimit(this);
        }
    }

    /**
     * A one-sided tolerance limit.
     *
     * @param value on the limit's side of which at least {@link #SHARE} of a normal population lie, with {@link #CONFIDENCE}
     * @param meets whether it keeps to the stated limit
     */
    record ToleranceBound(double value, boolean meets) {
        public static final double SHARE = 0.9;
        public static final double CONFIDENCE = 0.95;
        /** With fewer results it lies so far out that it tells nothing. */
        public static final int FEWEST = 6;
    }

    /** Events on both sides, each with its exact 95 % interval. */
    record EventCounts(Summary.Events ours, Interval oursInterval, Summary.Events theirs, Interval theirsInterval)
            implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.events(this);
        }
    }

    /** Shown, not compared: the standing says why. */
    record Shown() implements Answer {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.shown(this);
        }
    }

    /** Alike, but one side gives nothing that could be tested. */
    record NotTestable(Why why) implements Answer {

        /** What is missing. */
        public enum Why {
            TOO_FEW_LOCAL_RESULTS,
            NO_SINGLE_FIGURE,
            CLAIM_WITHOUT_NUMBER
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notTestable(this);
        }
    }
}
