package comparand.reference;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An author or editor, in the parts of a CSL-JSON name; parts that are not there are empty.
 *
 * @param dropping a particle that goes with the given name, such as the {@code von} of Beethoven
 * @param particle one that goes with the family name, such as {@code van der}
 * @param suffix such as {@code Jr.}
 * @param literal the whole name of a body; a person has none
 */
public record Name(String family, String given, String particle, String dropping, String suffix, String literal) {

    /** Particles are written small before a family name with a capital. */
    private static final Pattern PARTICLE =
            Pattern.compile("(?<particle>(?:\\p{Ll}[\\p{L}'\u2019.-]*+\\s++)++)(?<family>[\\p{Lu}\\p{Lt}\\p{Lo}].*)");

    public Name {
        boolean isPerson = !family.isBlank();
        if (isPerson != literal.isBlank()) {
            throw new IllegalArgumentException("a name is that of a person or that of a body");
        }
    }

    public static Name person(String family, String given) {
        return new Name(family, given, "", "", "", "");
    }

    public static Name body(String name) {
        return new Name("", "", "", "", "", name);
    }

    /** A person whose particle, if any, still stands before the family name. */
    public static Name splitting(String family, String given, String suffix) {
        var parts = PARTICLE.matcher(family);
        return parts.matches()
                ? new Name(parts.group("family"), given, parts.group("particle").strip(), "", suffix, "")
                : new Name(family, given, "", "", suffix, "");
    }

    public boolean isBody() {
        return !literal.isEmpty();
    }

    /** The family name behind its particle, or the name of the body. */
    public String last() {
        return isBody() ? literal : joined(particle, family);
    }

    /** All given names, with a particle that goes with them. */
    public String first() {
        return joined(given, dropping);
    }

    /** Family name and initials, as in a list of references: {@code van der Berg JA Jr}. */
    public String brief() {
        return isBody() ? literal : joined(last(), joined(initials(), suffix));
    }

    /** {@code Jan-Peter A.} gives {@code JPA}. */
    public String initials() {
        return Stream.of(first().split("[\\s.-]+", -1))
                .filter(w -> !w.isEmpty() && Character.isUpperCase(w.codePointAt(0)))
                .map(w -> w.chars().allMatch(Character::isUpperCase) && w.length() <= 3
                        ? w
                        : Character.toString(w.codePointAt(0)))
                .collect(Collectors.joining());
    }

    private static String joined(String one, String other) {
        return (one + " " + other).strip();
    }
}
