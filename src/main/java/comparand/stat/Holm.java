package comparand.stat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * P values adjusted for the number of comparisons, step-down.
 *
 * <p>Holm, Scand J Stat 1979;6:65-70: with {@code p(1) <= ... <= p(m)},
 * {@code adjusted(i) = max over j <= i of min(1, (m - j + 1) p(j))}.
 */
public final class Holm {

    private Holm() {}

    /** The adjusted values in the order given. */
    public static List<Double> adjust(List<Double> p) {
        var order = IntStream.range(0, p.size())
                .boxed()
                .sorted(Comparator.comparing(p::get))
                .toList();
        var adjusted = new ArrayList<Double>(p);
        double largest = 0;
        for (int j = 0; j < order.size(); j++) {
            largest = Math.max(largest, Math.min(1, (p.size() - j) * p.get(order.get(j))));
            adjusted.set(order.get(j), largest);
        }
        return List.copyOf(adjusted);
    }
}
