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

    /** The row takes part, but in none of these metrics. */
    static Effect exclude(String... metrics) {
        return new Exclude(Set.of(metrics), Definition.NONE);
    }

    record Remark() implements Effect {}

    record Hold() implements Effect {}

    /**
     * The row is kept from some metrics.
     *
     * @param except the variant of their definition that may see the row all the same; none if it has no aspect
     */
    record Exclude(Set<String> metrics, Definition except) implements Effect {
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
