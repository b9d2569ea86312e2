package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.stat.Interval;
import comparand.stat.MeanDifference;
import comparand.stat.Pool;
import comparand.stat.RandomEffects;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What several published sources say together of one local result that each of them may be compared with. */
public sealed interface SourcesTogether {

    /** The comparisons with each source by itself, one per source, all with the same local result. */
    List<Comparison> each();

    <R> R fold(Function<Two, R> two, Function<Several, R> several);

    default Comparand ours() {
        return each().get(0).pairing().ours();
    }

    default Optional<Margin> margin() {
        return each().get(0).margin();
    }

    /**
     * Two sources side by side: two cannot show how much sources differ, and are not pooled.
     *
     * @param apart the first minus the second
     * @param adjustedP of the two comparisons with the local result, after Holm
     */
    record Two(List<Comparison> each, MeanDifference apart, List<Double> adjustedP) implements SourcesTogether {
        public Two {
            each = List.copyOf(each);
            adjustedP = List.copyOf(adjustedP);
            requireNonNull(apart, "apart");
            if (each.size() != 2 || adjustedP.size() != 2) {
                throw new IllegalArgumentException("two sources are two");
            }
        }

        @Override
        public <R> R fold(Function<Two, R> two, Function<Several, R> several) {
            return two.apply(this);
        }
    }

    /**
     * Three sources or more, pooled.
     *
     * @param expected where a further study as uncertain as ours would find its mean; 95 %
     * @param place where our mean lies by that
     * @param againstMean our mean against the mean of sources
     * @param without what becomes of the answer when sources are left out, one by one from four on, and by how their spread
     *     is known
     */
    record Several(
            List<Comparison> each,
            Pool.Several pool,
            Interval expected,
            Place place,
            Answer.Tested againstMean,
            List<Without> without)
            implements SourcesTogether {
        public Several {
            each = List.copyOf(each);
            requireNonNull(pool, "pool");
            requireNonNull(expected, "expected");
            requireNonNull(place, "place");
            requireNonNull(againstMean, "againstMean");
            without = List.copyOf(without);
            if (each.size() < 3) {
                throw new IllegalArgumentException("fewer than three sources are not pooled");
            }
        }

        @Override
        public <R> R fold(Function<Two, R> two, Function<Several, R> several) {
            return several.apply(this);
        }
    }

    /** Where a mean lies by an interval. */
    enum Place {
        INSIDE,
        ABOVE,
        BELOW;

        public static Place of(double mean, Interval expected) {
            return mean > expected.high() ? ABOVE : mean < expected.low() ? BELOW : INSIDE;
        }
    }

    /**
     * The same without some of the sources.
     *
     * @param left ids of the values left out
     * @param label how the spread of all those left out is known; empty where one source is left out
     * @param random of the rest; empty if fewer than three are left
     */
    record Without(List<String> left, Optional<Label> label, Optional<RandomEffects> random, Optional<Place> place) {
        public Without {
            left = List.copyOf(left);
            requireNonNull(label, "label");
            requireNonNull(random, "random");
            requireNonNull(place, "place");
        }

        /** Whether our mean would lie elsewhere by the rest. */
        public boolean changes(Place with) {
            return place.filter(p -> p != with).isPresent();
        }
    }
}
