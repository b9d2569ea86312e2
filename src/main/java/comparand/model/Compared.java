package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/** Every pair with its answer. */
public record Compared(Matched matched, List<Comparison> comparisons) {

    public Compared {
        requireNonNull(matched, "matched");
        comparisons = List.copyOf(comparisons);
    }
}
