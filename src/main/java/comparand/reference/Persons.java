package comparand.reference;

import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** When two names are those of one person. */
final class Persons {

    /** From here on one letter may be wrong. */
    private static final int LONG_NAME = 5;

    private static final LevenshteinDistance ONE = new LevenshteinDistance(1);

    private Persons() {}

    /** Family names that differ in one letter at most, and initials that do not contradict each other. */
    static boolean alike(Name a, Name b) {
        return familyAlike(a, b) && initialAlike(a, b);
    }

    private static boolean familyAlike(Name a, Name b) {
        var one = Latin.words(a.isBody() ? a.literal() : a.family());
        var other = Latin.words(b.isBody() ? b.literal() : b.family());
        return one.equals(other)
                || Latin.words(a.last()).equals(Latin.words(b.last()))
                || (Math.min(one.length(), other.length()) >= LONG_NAME && ONE.apply(one, other) >= 0);
    }

    private static boolean initialAlike(Name a, Name b) {
        var one = Latin.words(a.initials());
        var other = Latin.words(b.initials());
        return one.isEmpty() || other.isEmpty() || one.charAt(0) == other.charAt(0);
    }

    static boolean sameFirst(Reference a, Reference b) {
        var one = a.firstAuthor();
        var other = b.firstAuthor();
        if (one.isEmpty() || other.isEmpty()) {
            return one.equals(other);
        }
        return alike(one.get(), other.get());
    }

    /** How many authors of the first are among those of the second. */
    static long shared(Reference a, Reference b) {
        return a.authors().stream().filter(n -> isAmong(n, b.authors())).count();
    }

    private static boolean isAmong(Name name, List<Name> names) {
        return names.stream().anyMatch(n -> alike(n, name));
    }
}
