package comparand.compose.ledger;

import java.util.Comparator;
import java.util.Set;
import java.util.function.Predicate;

/**
 * One change between two runs.
 *
 * @param brief in a few words, to stand as the cause of an answer
 * @param values names of the values that are not what they were
 * @param files that came with it, by their paths within the library
 * @param reach which answers it bears on, of those that are not the same
 */
record Change(
        Group group,
        String what,
        String before,
        String after,
        String why,
        String brief,
        Set<String> values,
        Set<String> files,
        Predicate<Concern> reach) {

    static final Comparator<Change> ORDER =
            Comparator.comparing(Change::group).thenComparing(Change::what).thenComparing(Change::after);

    Change {
        values = Set.copyOf(values);
        files = Set.copyOf(files);
    }
}
