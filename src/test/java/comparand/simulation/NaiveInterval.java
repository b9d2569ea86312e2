package comparand.simulation;

import comparand.model.Margin;
import comparand.model.Verdict;
import comparand.stat.Interval;
import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;

/** The tests of a spreadsheet: Welch's t with two spreads, Student's t against a bare figure; 95 % intervals. */
final class NaiveInterval {

    private NaiveInterval() {}

    /** Mean, SD and number, each taken as it stands. */
    record Group(double mean, double sd, int n) {

        /** Every value counts as independent. */
        static Group of(double[] values) {
            double mean = Arrays.stream(values).average().orElseThrow();
            double squares =
                    Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
            return new Group(mean, Math.sqrt(squares / (values.length - 1)), values.length);
        }

        double variance() {
            return sd * sd / n;
        }
    }

    static Interval welch(Group ours, Group theirs) {
        double a = ours.variance();
        double b = theirs.variance();
        double df = (a + b) * (a + b) / (a * a / (ours.n - 1) + b * b / (theirs.n - 1));
        return around(ours.mean - theirs.mean, Math.sqrt(a + b), df);
    }

    static Interval againstFigure(Group ours, double figure) {
        return around(ours.mean - figure, Math.sqrt(ours.variance()), ours.n - 1);
    }

    private static Interval around(double difference, double se, double df) {
        return Interval.around(difference, TDistribution.of(df).inverseCumulativeProbability(0.975) * se);
    }

    /** The sentence the tool would give for this interval. */
    static Reading reading(Interval difference, double margin) {
        var verdict = Verdict.of(difference, Optional.of(new Margin(margin, margin + " mmHg", "drawn")));
        return Reading.of(verdict, (difference.low() + difference.high()) / 2);
    }
}
