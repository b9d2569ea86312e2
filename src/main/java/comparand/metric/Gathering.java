package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How the rows of one group become one result. A group is made of members, the independent units or cases, each with one
 * or more rows.
 *
 * <p>Inputs that are computed by formulas of their own are computed row by row, whatever those formulas' own gathering;
 * only the gathering of the metric asked for counts.
 */
public sealed interface Gathering {

    /** Under this id the formula is given what {@link Fit}, {@link Crossing} or {@link Lowest} found. */
    String FOUND = "found";

    Gathering EACH_ROW = new EachRow();

    <R> R fold(Cases<R> cases);

    /** The rows that are taken together before the formula, or a line, is applied. */
    enum Over {
        /** The rows of one member: one result per member, and the mean over the members. */
        MEMBER,
        /** All members at once: one result for the group, without a spread of its own. */
        GROUP
    }

    /** One answer per way of gathering. */
    interface Cases<R> {
        R eachRow(EachRow way);

        R total(Total way);

        R sums(Sums way);

        R median(Median way);

        R fit(Fit way);

        R crossing(Crossing way);

        R lowest(Lowest way);
    }

    /** The formula per row; the mean of a member's rows; the mean over the members. */
    record EachRow() implements Gathering {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.eachRow(this);
        }
    }

    /** The formula per row; the sum of a member's rows, such as the size bins of one run; the mean over the members. */
    record Total() implements Gathering {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.total(this);
        }
    }

    /** Each input is summed over the rows, then the formula is applied once: a ratio of sums, not a mean of ratios. */
    record Sums(Over over) implements Gathering {
        public Sums {
            requireNonNull(over, "over");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.sums(this);
        }
    }

    /**
     * The median of the members' results.
     *
     * @param each how one member's result comes about: {@link EachRow}, or {@link Sums} over the member
     */
    record Median(Gathering each) implements Gathering {
        public Median {
            if (!(each instanceof EachRow) && !each.equals(new Sums(Over.MEMBER))) {
                throw new IllegalArgumentException("a median is taken of members' results, got " + each);
            }
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.median(this);
        }
    }

    /**
     * A straight line of y on x by least squares. Over a member: through its rows. Over the group: through one point per
     * member, the means of its x and y, so that a member with many rows does not count as many.
     */
    record Fit(String xInput, String yInput, Form form, Result result, Over over) implements Gathering {

        /** Whether the line may pass beside the origin. */
        public enum Form {
            WITH_INTERCEPT,
            THROUGH_ORIGIN
        }

        /** What of the line is the result. */
        public enum Result {
            /** In y's unit per x's unit. */
            SLOPE
        }

        public Fit {
            requireNonNull(form, "form");
            requireNonNull(result, "result");
            requireNonNull(over, "over");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.fit(this);
        }

        /** What of the line is asked for; empty where the points do not fix a line. */
        public OptionalDouble of(double[] x, double[] y) {
            return line(x, y).map(line -> OptionalDouble.of(line.slope())).orElse(OptionalDouble.empty());
        }

        /** The line; empty where the points do not fix one. */
        public Optional<Line> line(double[] x, double[] y) {
            boolean origin = form == Form.THROUGH_ORIGIN;
            double meanX = origin ? 0 : Arrays.stream(x).average().orElse(0);
            double meanY = origin ? 0 : Arrays.stream(y).average().orElse(0);
            double xx = 0;
            double xy = 0;
            for (int i = 0; i < x.length; i++) {
                xx += (x[i] - meanX) * (x[i] - meanX);
                xy += (x[i] - meanX) * (y[i] - meanY);
            }
            return x.length < (origin ? 1 : 2) || xx == 0
                    ? Optional.empty()
                    : Optional.of(new Line(xy / xx, meanY - xy / xx * meanX));
        }
    }

    /**
     * The x at which y, linear between neighbours, first falls to a level; one curve per member, y averaged where a member
     * has several rows at one x.
     *
     * @param level in the unit of the input y
     */
    record Crossing(String xInput, String yInput, double level) implements Gathering {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.crossing(this);
        }

        /**
         * Where the level is met.
         *
         * @throws IllegalArgumentException if there is no point
         */
        public Crossed of(double[] x, double[] y) {
            var curve = new TreeMap<Double, List<Double>>();
            for (int i = 0; i < x.length; i++) {
                curve.merge(x[i], List.of(y[i]), (a, b) -> {
                    var both = new ArrayList<>(a);
                    both.addAll(b);
                    return both;
                });
            }
            if (curve.isEmpty()) {
                throw new IllegalArgumentException("a curve has points");
            }
            double lastX = Double.NaN;
            double lastY = Double.NaN;
            for (var point : curve.entrySet()) {
                double nextX = point.getKey();
                double nextY =
                        point.getValue().stream().mapToDouble(v -> v).average().orElseThrow();
                if (nextY == level) {
                    return new Crossed.At(nextX);
                }
                if (nextY < level) {
                    return Double.isNaN(lastX)
                            ? new Crossed.BelowSmallest(nextX)
                            : new Crossed.At(lastX + (nextX - lastX) * (lastY - level) / (lastY - nextY));
                }
                lastX = nextX;
                lastY = nextY;
            }
            return new Crossed.AboveLargest(lastX);
        }
    }

    /** The lowest of several crossings over one x: whichever level is met first limits. */
    record Lowest(List<Crossing> crossings) implements Gathering {
        public Lowest {
            crossings = List.copyOf(crossings);
            if (crossings.size() < 2
                    || crossings.stream().map(Crossing::xInput).distinct().count() != 1) {
                throw new IllegalArgumentException("crossings over one x are compared, got " + crossings);
            }
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.lowest(this);
        }
    }
}
