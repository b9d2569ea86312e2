package comparand.reference;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Names for new sources: family name of the first author and year, {@code van-der-berg-2021}; where it is taken, with a letter behind
 * it, {@code van-der-berg-2021-b}.
 */
final class SourceId {

    private static final int LONGEST = 40;

    private final Set<String> taken;

    SourceId(Set<String> taken) {
        this.taken = new HashSet<>(taken);
    }

    /** A name that nobody has, and that is taken from now on. */
    String next(Reference reference) {
        var plain = plain(reference);
        var id = plain;
        for (int n = 1; !taken.add(id); n++) {
            id = plain + "-" + letters(n);
        }
        return id;
    }

    private static String plain(Reference reference) {
        var who = reference
                .firstAuthor()
                .map(a -> a.isBody() ? words(a.literal(), 3) : Latin.slug(a.last()))
                .filter(w -> !w.isEmpty())
                .or(() -> Optional.of(words(reference.title(), 3)))
                .filter(w -> !w.isEmpty())
                .orElse("source");
        var cut = who.length() > LONGEST ? who.substring(0, LONGEST).replaceAll("-+$", "") : who;
        return cut + "-" + reference.year().map(y -> Integer.toString(y)).orElse("undated");
    }

    private static String words(String text, int most) {
        var words = Latin.slug(text).split("-", -1);
        return String.join("-", java.util.Arrays.copyOf(words, Math.min(most, words.length)));
    }

    /** {@code b} to {@code z}, then {@code ba} and on. */
    private static String letters(int n) {
        var out = new StringBuilder();
        for (int rest = n; rest > 0; rest /= 26) {
            out.insert(0, (char) ('a' + rest % 26));
        }
        return out.toString();
    }
}
