package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.stat.LocalMean;
import comparand.stat.MeanEstimate;
import comparand.stat.Moments;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is known of a metric on one side, in the metric's unit. */
public sealed interface Summary {

    <R> R fold(Cases<R> cases);

    /** The number that stands for the value in a table; empty for words, counts and ranges. */
    OptionalDouble centre();

    /** One method per form, so that a new form breaks every place that must compare or print it. */
    interface Cases<R> {
        R sampled(Sampled summary);

        R estimated(Estimated summary);

        R eitherSpread(EitherSpread summary);

        R point(Point summary);

        R limit(Limit summary);

        R extent(Extent summary);

        R events(Events summary);

        R words(Words summary);
    }

    /**
     * A mean with its standard deviation and number.
     *
     * @param label how the standard deviation is known
     * @param halfWidth within how much the printed or read mean is known, beside sampling; 0 for local results
     * @param each the single results, in ascending order; empty for published values
     * @param local the mean and its uncertainty with regard to the centres or the unit the results come from; empty for
     *     published values, and where they leave no spread to tell it from
     */
    record Sampled(Moments moments, Label label, double halfWidth, List<Double> each, Optional<LocalMean> local)
            implements Summary {
        public Sampled {
            requireNonNull(moments, "moments");
            requireNonNull(label, "label");
            requireNonNull(local, "local");
            each = each.stream().sorted().toList();
        }

        /** As a source prints it. */
        public static Sampled published(Moments moments, Label label, double halfWidth) {
            return new Sampled(moments, label, halfWidth, List.of(), Optional.empty());
        }

        /** The mean that is compared, with its standard error. */
        public MeanEstimate estimate() {
            return local.map(LocalMean::estimate).orElseGet(moments::estimate);
        }

        @Override
        public OptionalDouble centre() {
            return OptionalDouble.of(estimate().mean());
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.sampled(this);
        }
    }

    /**
     * An estimate with its standard error that is no plain mean of independent results: a line at one place, a slope, a
     * ratio of sums. Only local data give one.
     *
     * @param n how many independent results it rests on
     * @param line the line it was taken from, if it was
     */
    record Estimated(MeanEstimate estimate, int n, Optional<FittedLine> line) implements Summary {
        public Estimated {
            requireNonNull(estimate, "estimate");
            requireNonNull(line, "line");
            if (n < 2) {
                throw new IllegalArgumentException("an estimate with a standard error rests on 2 results or more");
            }
        }

        @Override
        public OptionalDouble centre() {
            return OptionalDouble.of(estimate.mean());
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.estimated(this);
        }
    }

    /** A mean whose spread was printed without saying whether it is a standard deviation or a standard error. */
    record EitherSpread(Moments asSd, Moments asSe, double halfWidth) implements Summary {
        public EitherSpread {
            requireNonNull(asSd, "asSd");
            requireNonNull(asSe, "asSe");
        }

        @Override
        public OptionalDouble centre() {
            return OptionalDouble.of(asSd.mean());
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.eitherSpread(this);
        }
    }

    /** Why a value is only a point. */
    enum PointKind {
        /** A figure without spread or number. */
        FIGURE,
        /** A mean or median of which spread or number is missing. */
        INCOMPLETE,
        /** A median whose quartiles cannot stand for a standard deviation. */
        MEDIAN,
        /** A figure the source calls approximate. */
        ABOUT,
        /** Read from a figure, without spread. */
        READ_FROM_FIGURE,
        /** Read off between two published neighbours; their spread cannot be carried over. */
        INTERPOLATED,
        /** A nominal figure of a metric that is stated, not sampled. */
        NOMINAL,
        /** A single local result. */
        SINGLE
    }

    /** A figure that cannot take part in a test. */
    record Point(double value, double halfWidth, PointKind kind) implements Summary {
        public Point {
            requireNonNull(kind, "kind");
        }

        @Override
        public OptionalDouble centre() {
            return OptionalDouble.of(value);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.point(this);
        }
    }

    /** A limit the source sets. */
    record Limit(boolean atLeast, double value) implements Summary {
        @Override
        public OptionalDouble centre() {
            return OptionalDouble.of(value);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.limit(this);
        }

        /** Whether a result keeps to it. */
        public boolean metBy(double result) {
            return atLeast ? result >= value : result <= value;
        }
    }

    /** Two ends. */
    record Extent(double low, double high) implements Summary {
        @Override
        public OptionalDouble centre() {
            return OptionalDouble.empty();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.extent(this);
        }
    }

    /** Events among cases or units. */
    record Events(int events, int of) implements Summary {
        @Override
        public OptionalDouble centre() {
            return OptionalDouble.empty();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.events(this);
        }
    }

    /** A claim without a number. */
    record Words(String text) implements Summary {
        @Override
        public OptionalDouble centre() {
            return OptionalDouble.empty();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.words(this);
        }
    }
}
