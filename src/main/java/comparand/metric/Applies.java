package comparand.metric;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * A formula that holds only under certain words of a condition: a dissociation curve of human blood, for human blood.
 *
 * @param words the words under which it holds
 */
public record Applies(Condition condition, List<String> words) {

    public Applies {
        requireNonNull(condition, "condition");
        words = List.copyOf(words);
        if (words.isEmpty() || !condition.words().containsAll(words)) {
            throw new IllegalArgumentException(condition.id() + " has the words " + condition.words());
        }
    }

    /** Whether the formula may be used; a condition that is not reported is never a match. */
    public boolean holds(Optional<String> reported) {
        return reported.filter(words::contains).isPresent();
    }

    /** Such as {@code only when blood species is human}. */
    @Override
    public String toString() {
        return "only when %s is %s".formatted(condition.name(), String.join(" or ", words));
    }
}
