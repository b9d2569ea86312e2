package comparand.simulation;

import java.util.Collection;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * A share of pairs, in per cent. Pairs of one library share its local results, so the standard error counts libraries:
 * {@code SE = √(Σ (xᵢ - r nᵢ)²) / Σ nᵢ}, the linearised one of a ratio of totals over clusters; Cochran, Sampling Techniques,
 * 1977, ch. 9A (from memory).
 */
record Rate(int hits, int of, double percent, double error) {

    /** Of the pairs given, those for which something holds. */
    static Rate of(Collection<Judged> pairs, Predicate<Judged> holds) {
        var byLibrary = new TreeMap<Integer, int[]>();
        for (var pair : pairs) {
            var counts = byLibrary.computeIfAbsent(pair.library(), l -> new int[2]);
            counts[0] += holds.test(pair) ? 1 : 0;
            counts[1]++;
        }
        int hits = byLibrary.values().stream().mapToInt(c -> c[0]).sum();
        int all = byLibrary.values().stream().mapToInt(c -> c[1]).sum();
        if (all == 0) {
            return new Rate(0, 0, Double.NaN, Double.NaN);
        }
        double share = (double) hits / all;
        double squares = byLibrary.values().stream()
                .mapToDouble(c -> c[0] - share * c[1])
                .map(d -> d * d)
                .sum();
        return new Rate(hits, all, 100 * share, 100 * Math.sqrt(squares) / all);
    }

    /** {@code 4.2 ± 0.3}; a dash where there are no pairs. */
    String text() {
        return of == 0 ? "–" : String.format(Locale.ROOT, "%.1f ± %.1f", percent, error);
    }

    /** Without its error. */
    String brief() {
        return of == 0 ? "–" : String.format(Locale.ROOT, "%.1f", percent);
    }
}
