package comparand.study.quality;

import static java.util.Objects.requireNonNull;

import comparand.metric.Definition;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a finding does to its row. */
public sealed interface Effect {

    /** The row takes part, and is worth a second look. */
    static Effect remark() {
        return new Remark();
    }

    /** The row is kept out of all results. */
    static Effect hold() {
        return new Hold();
    }

    /** The row is at fault, and takes part in all but these metrics. */
    static Effect exclude(String... metrics) {
        return new Exclude(Set.of(metrics), Definition.NONE, true);
    }

    /** Nothing is wrong with the row; it only has nothing to say about a metric. */
    static Effect silentOn(String metric) {
        return new Exclude(Set.of(metric), Definition.NONE, false);
    }

    record Remark() implements Effect {}

    record Hold() implements Effect {}

    /**
     * The row is kept from some metrics.
     *
     * @param except the variant of their definition that may see the row all the same; none if it has no aspect
     * @param isFault whether it is worth a word where nobody asks for any of these metrics
     */
    record Exclude(Set<String> metrics, Definition except, boolean isFault) implements Effect {
        public Exclude {
            metrics = Set.copyOf(metrics);
            requireNonNull(except, "except");
        }
    }

    /** The row is kept from every metric that is computed from a quantity, or whose values that quantity decides. */
    record ExcludeNeeding(String quantity) implements Effect {
        public ExcludeNeeding {
            requireNonNull(quantity, "quantity");
        }
    }

    default <R> R fold(
            Supplier<R> remark,
            Supplier<R> hold,
            Function<? super Exclude, R> exclude,
            Function<? super ExcludeNeeding, R> needing) {
        if (this instanceof Exclude e) {
            return exclude.apply(e);
        }
        if (this instanceof ExcludeNeeding e) {
            return needing.apply(e);
        }
        return this instanceof Hold ? hold.get() : remark.get();
    }
}
