package comparand.stat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How far two readers agree beyond chance on categories, after Cohen, A coefficient of agreement for nominal scales, Educational
 * and Psychological Measurement 1960;20:37-46.
 *
 * <pre>
 * κ = (p_o - p_e)/(1 - p_e),  p_e = Σ p_i· p_·i
 * </pre>
 *
 * @param same how often both gave the same category
 * @param of how often both gave one
 * @param value κ; empty where both always gave one and the same category, so that chance alone explains all
 */
public record CohenKappa(int same, int of, OptionalDouble value) {

    /** One thing put into categories by both readers. */
    public record Pair(String first, String second) {}

    /** Over all pairs; of none there is no κ. */
    public static CohenKappa of(List<Pair> pairs) {
        int n = pairs.size();
        int same =
                (int) pairs.stream().filter(p -> p.first().equals(p.second())).count();
        var first = counts(pairs, Pair::first);
        var second = counts(pairs, Pair::second);
        double expected = first.entrySet().stream()
                .mapToDouble(e -> (double) e.getValue() / n * second.getOrDefault(e.getKey(), 0L) / n)
                .sum();
        boolean byChance = n == 0 || expected >= 1;
        return new CohenKappa(
                same,
                n,
                byChance ? OptionalDouble.empty() : OptionalDouble.of(((double) same / n - expected) / (1 - expected)));
    }

    private static Map<String, Long> counts(List<Pair> pairs, Function<Pair, String> category) {
        return pairs.stream().collect(Collectors.groupingBy(category, Collectors.counting()));
    }
}
