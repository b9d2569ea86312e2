package comparand.stat;

import java.util.Map;
import java.util.TreeMap;

/**
 * A number of cases out of all. Not for percentages that are measured quantities (a saturation, a reduction).
 *
 * @param x with the event
 * @param n all, at least 1
 */
public record Proportion(int x, int n) {

    public Proportion {
        if (x < 0 || n < 1 || x > n) {
            throw new IllegalArgumentException("x of n needs 0 <= x <= n and n > 0, got %d of %d".formatted(x, n));
        }
    }

    public double share() {
        return (double) x / n;
    }

    /** {@code √(p(1-p)/n)}: a weight among proportions, never an interval. */
    public double seForWeight() {
        return Math.sqrt(share() * (1 - share()) / n);
    }

    /** The score interval, and with none or all of the cases the exact one beside it. */
    public Map<ProportionInterval, Interval> intervals(double level) {
        var intervals = new TreeMap<ProportionInterval, Interval>();
        intervals.put(ProportionInterval.WILSON, ProportionInterval.WILSON.of(x, n, level));
        if (x == 0 || x == n) {
            intervals.put(ProportionInterval.EXACT, ProportionInterval.EXACT.of(x, n, level));
        }
        return intervals;
    }
}
