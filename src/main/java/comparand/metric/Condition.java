package comparand.metric;

import static java.util.Objects.requireNonNull;

import comparand.unit.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A named circumstance under which a value was obtained.
 *
 * @param id as written in records, such as {@code blood-flow}
 * @param name as written in sentences, such as "blood flow"
 * @param shortName as written in the one-line summary of a pair, such as "flow"
 * @param unit the unit numbers of it are kept in; empty for a condition named in words
 * @param words the words allowed; empty for numbers and for free words
 */
public record Condition(String id, String name, String shortName, Optional<Unit> unit, List<String> words) {

    public Condition {
        requireNonNull(unit, "unit");
        words = List.copyOf(words);
        if (id.isBlank() || name.isBlank() || shortName.isBlank()) {
            throw new IllegalArgumentException("a condition has an id, a name and a short name");
        }
        if (unit.isPresent() && !words.isEmpty()) {
            throw new IllegalArgumentException(id + " is either a number or words");
        }
    }

    public static Condition number(String id, String name, String shortName, String unit) {
        return new Condition(id, name, shortName, Optional.of(Unit.of(unit)), List.of());
    }

    public static Condition oneOf(String id, String name, String shortName, String... words) {
        return new Condition(id, name, shortName, Optional.empty(), List.of(words));
    }

    /** Words not fixed beforehand, compared letter by letter. */
    public static Condition words(String id, String name, String shortName) {
        return new Condition(id, name, shortName, Optional.empty(), List.of());
    }

    public boolean isNumber() {
        return unit.isPresent();
    }
}
