package comparand.compose.ledger;

import comparand.document.result.ComparandResult;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * An answer that is not the same in two runs, and what it rests on.
 *
 * @param before in the earlier run; absent where it is new
 * @param after in the later run; absent where it is gone
 */
record Concern(Side earlier, Side later, Optional<Said> before, Optional<Said> after) {

    /** One of the two: they rest on values of the same names. */
    Said either() {
        return after.or(() -> before).orElseThrow();
    }

    boolean comesOrGoes() {
        return before.isEmpty() || after.isEmpty();
    }

    String metric() {
        return either().metric();
    }

    /** Names of the values it rests on. */
    Set<String> values() {
        var values = new TreeSet<String>();
        before.ifPresent(s -> values.addAll(s.values()));
        after.ifPresent(s -> values.addAll(s.values()));
        return values;
    }

    boolean restsOn(String value) {
        return values().contains(value);
    }

    boolean restsOnSource(String source) {
        return values().stream()
                .anyMatch(v -> Side.isFrom(earlier.value(v), source) || Side.isFrom(later.value(v), source));
    }

    /** Whether it rests on a local result of a study that is not what it was. */
    boolean restsOnChanged(Predicate<ComparandResult> local) {
        return values().stream()
                .filter(this::hasChanged)
                .anyMatch(v -> later.value(v)
                        .or(() -> earlier.value(v))
                        .filter(c -> c.side().equals("local"))
                        .filter(local)
                        .isPresent());
    }

    /** Whether number, size or conditions of a value are not what they were. */
    private boolean hasChanged(String value) {
        return !Objects.equals(
                earlier.value(value).map(Side::facts), later.value(value).map(Side::facts));
    }
}
