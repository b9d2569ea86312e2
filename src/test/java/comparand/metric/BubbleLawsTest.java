package comparand.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What arithmetic demands of bubbles, their bins and reductions, whatever the counts. */
class BubbleLawsTest {

    private static final double TINY = 1e-9;

    private static String rows(String id, List<Integer> numbers) {
        return id + "=" + numbers.stream().map(String::valueOf).collect(Collectors.joining("; "));
    }

    @Property(tries = 200)
    @Label("the pooled reduction is the mean of the runs' reductions weighted by what came in")
    void pooledReduction(
            @ForAll @Size(5) List<@IntRange(min = 100, max = 50_000) Integer> up,
            @ForAll @Size(5) List<@IntRange(min = 0, max = 60_000) Integer> down) {
        double pooled = Computed.from(rows("bubble-count-upstream", up), rows("bubble-count-downstream", down))
                .under("aggregation", "pooled")
                .value("bubble-count-reduction");
        double weighted = IntStream.range(0, 5)
                        .mapToDouble(i -> up.get(i) * reduction(up.get(i), down.get(i)))
                        .sum()
                / up.stream().mapToInt(n -> n).sum();

        assertThat(pooled).isCloseTo(weighted, within(1e-8));
        assertThat(pooled).isLessThanOrEqualTo(100);
    }

    @Property(tries = 200)
    @Label("the median reduction is one of three runs', with one on each side")
    void medianReduction(
            @ForAll @Size(3) List<@IntRange(min = 100, max = 50_000) Integer> up,
            @ForAll @Size(3) List<@IntRange(min = 0, max = 60_000) Integer> down) {
        double median = Computed.from(rows("bubble-count-upstream", up), rows("bubble-count-downstream", down))
                .under("aggregation", "median")
                .value("bubble-count-reduction");
        var each = IntStream.range(0, 3)
                .mapToObj(i -> reduction(up.get(i), down.get(i)))
                .toList();

        assertThat(each).anySatisfy(r -> assertThat(r).isCloseTo(median, within(TINY)));
        assertThat(each.stream().filter(r -> r < median - TINY)).hasSizeLessThanOrEqualTo(1);
        assertThat(each.stream().filter(r -> r > median + TINY)).hasSizeLessThanOrEqualTo(1);
    }

    private static double reduction(int up, int down) {
        return Computed.from("bubble-count-upstream=" + up, "bubble-count-downstream=" + down)
                .value("bubble-count-reduction");
    }

    @Property(tries = 200)
    @Label("of two devices in a row the powers of ten add up, and say the same as the reduction")
    void logarithmsAdd(
            @ForAll @IntRange(min = 1, max = 1_000_000) int a,
            @ForAll @IntRange(min = 1, max = 1_000_000) int b,
            @ForAll @IntRange(min = 1, max = 1_000_000) int c) {
        assertThat(log(a, b) + log(b, c)).isCloseTo(log(a, c), within(TINY));
        assertThat(100 * (1 - Math.pow(10, -log(a, b)))).isCloseTo(reduction(a, b), within(1e-4));
    }

    private static double log(int up, int down) {
        return Computed.from("bubble-count-upstream=" + up, "bubble-count-downstream=" + down)
                .value("bubble-count-log-reduction");
    }

    @Property(tries = 200)
    @Label("a higher cut-off never counts more bubbles, nor more volume")
    void cutOff(
            @ForAll @Size(5) List<@IntRange(min = 0, max = 9999) Integer> counts,
            @ForAll @IntRange(min = 5, max = 300) int from,
            @ForAll @IntRange(min = 1, max = 300) int more) {
        for (var what : new String[] {"bubble-count-upstream", "bubble-volume-upstream"}) {
            assertThat(bins(counts, from + more).value(what))
                    .isLessThanOrEqualTo(bins(counts, from).value(what));
        }
    }

    private static Computed bins(List<Integer> counts, int from) {
        return Computed.from(
                "bubble-bin-from=10 µm; 20 µm; 40 µm; 100 µm; 200 µm",
                "bubble-bin-to=20 µm; 40 µm; 100 µm; 200 µm; 500 µm",
                rows("bubble-bin-count-upstream", counts),
                "bubble-size-from=%d µm".formatted(from));
    }

    @Property(tries = 200)
    @Label("the diameters of a bin lie in it: geometric mean, middle, mean volume, in that order")
    void binDiameters(@ForAll @IntRange(min = 1, max = 400) int from, @ForAll @IntRange(min = 1, max = 300) int width) {
        double geometric = diameter(from, from + width, "geometric-mean");
        double middle = diameter(from, from + width, "midpoint");
        double cube = diameter(from, from + width, "uniform-cube");

        assertThat(geometric).isBetween((double) from, middle);
        assertThat(middle).isLessThan(cube);
        assertThat(cube).isLessThan(from + width);
    }

    @Test
    @DisplayName("number and volume have letters of their own; fewer bubbles are better only after the device")
    void numberAndVolume() {
        assertThat(BubbleReduction.count().symbol()).isEqualTo("ΔN/N");
        assertThat(BubbleReduction.volume().symbol()).isEqualTo("ΔV/V");
        assertThat(BubbleReduction.countLogarithm().symbol()).isEqualTo("LR N");
        assertThat(BubbleReduction.volumeLogarithm().symbol()).isEqualTo("LR V");
        assertThat(BubbleReduction.count().confusedWith()).containsExactly("bubble-volume-reduction");
        assertThat(BubbleReduction.volume().confusedWith()).containsExactly("bubble-count-reduction");
        for (var upstream : new Metric[] {Bubbles.count(true), Bubbles.volume(true)}) {
            assertThat(upstream.better()).isEqualTo(Better.NEITHER);
        }
        for (var downstream : new Metric[] {Bubbles.count(false), Bubbles.volume(false)}) {
            assertThat(downstream.better()).isEqualTo(Better.LESS);
        }
    }

    private static double diameter(int from, int to, String rule) {
        return Computed.from("bubble-bin-from=%d µm".formatted(from), "bubble-bin-to=%d µm".formatted(to))
                .under("bubble-diameter-rule", rule)
                .value("bubble-diameter");
    }
}
