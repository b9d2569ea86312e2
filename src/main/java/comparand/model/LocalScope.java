package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.Set;

/**
 * What of the local results a comparand speaks for.
 *
 * @param centre the one centre it comes from, for {@link LocalPart#CENTRE}; else empty
 * @param steps the conditions whose steps set its group apart, by id
 */
public record LocalScope(LocalPart part, String centre, Set<String> steps) {

    public LocalScope {
        requireNonNull(part, "part");
        steps = Set.copyOf(steps);
        if ((part == LocalPart.CENTRE) == centre.isEmpty()) {
            throw new IllegalArgumentException("a part of one centre names it, and no other part does");
        }
    }

    /** All that was measured, whatever its steps. */
    public static LocalScope whole(Set<String> steps) {
        return new LocalScope(LocalPart.WHOLE, "", steps);
    }
}
