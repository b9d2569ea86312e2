package comparand.study.quality;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Checks that the size classes of one run lie side by side: none overlaps another, and none is left out between two. It
 * matters because bubbles of an overlap are counted twice, and those of a gap by nobody. The row is kept and pointed out.
 * What to do: look at the settings of the counter.
 */
final class BubbleBinsOverlap implements QualityRule {

    private record Bin(double from, double to, int line) {
        static final Comparator<Bin> ORDER =
                Comparator.comparingDouble(Bin::from).thenComparingDouble(Bin::to);

        String text() {
            return "%s to %s µm".formatted(Amounts.plain(from, 4), Amounts.plain(to, 4));
        }
    }

    private final Map<String, SortedSet<Bin>> bins = new HashMap<>();

    @Override
    public String code() {
        return "bubble-bins-overlap";
    }

    @Override
    public String why() {
        return "bubbles of an overlap are counted twice, and those of a gap by nobody";
    }

    @Override
    public String fix() {
        return "correct the edges of the size classes, or export them anew";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var from = row.given("bubble-bin-from");
        var to = row.given("bubble-bin-to");
        if (from.isPresent() && to.isPresent() && from.get() < to.get()) {
            row.member()
                    .ifPresent(m -> bins.computeIfAbsent(m, k -> new TreeSet<>(Bin.ORDER))
                            .add(new Bin(from.get(), to.get(), row.line())));
        }
        return Optional.empty();
    }

    @Override
    public SortedMap<Integer, String> together() {
        var found = new TreeMap<Integer, String>();
        for (var ofMember : bins.values()) {
            double reached = Double.NaN;
            for (var bin : ofMember) {
                if (bin.from < reached) {
                    found.put(bin.line, "the size class %s overlaps one below it".formatted(bin.text()));
                } else if (bin.from > reached) {
                    found.put(
                            bin.line,
                            "the size class %s leaves a gap above %s µm"
                                    .formatted(bin.text(), Amounts.plain(reached, 4)));
                }
                reached = Double.isNaN(reached) ? bin.to : Math.max(reached, bin.to);
            }
        }
        return found;
    }
}
