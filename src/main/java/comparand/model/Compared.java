package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Every pair with its answer.
 *
 * @param together what several sources say together, where more than one may be compared with the same local result
 */
public record Compared(Matched matched, List<Comparison> comparisons, List<SourcesTogether> together) {

    public Compared {
        requireNonNull(matched, "matched");
        comparisons = List.copyOf(comparisons);
        together = List.copyOf(together);
    }
}
