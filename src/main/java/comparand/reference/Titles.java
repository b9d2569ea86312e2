package comparand.reference;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * When two titles are near-equal.
 *
 * <p>The measure is 1 minus Levenshtein's distance (insertions, deletions and changes of single letters) over the length of the
 * longer title, both without marks, capitals and punctuation. The threshold is 0.9: one letter in ten leaves room for slips of
 * the pen, for "hemolysis" beside "haemolysis", for Greek letters that one file spells out; two works of one author differ in a word
 * at least, and in titles of usual length a word is more than a tenth. What a tenth would miss is looked at by itself: numbers in both
 * titles, Roman ones too, must be the same ("part I", "part II"; "1.0 L/min", "1.5 L/min"). A subtitle may be missing on one
 * side, if four words are left.
 */
final class Titles {

    private static final double LIKE = 0.9;
    private static final int FEWEST_WORDS = 4;
    private static final Pattern EARLY =
            Pattern.compile("(?i)[(\\[]\\s*(?:preprint|abstract|conference abstract|poster)\\s*[)\\]]");
    private static final Pattern SUBTITLE = Pattern.compile("\\s*(?::|\\?|\\.|\\s[\u2013\u2014-])\\s+.*");
    private static final Pattern NUMBER = Pattern.compile("\\d+|[ivx]{1,5}");

    private Titles() {}

    static boolean alike(String one, String other) {
        var a = EARLY.matcher(one).replaceAll("");
        var b = EARLY.matcher(other).replaceAll("");
        return near(a, b) || nearMain(a, b) || nearMain(b, a);
    }

    /** Whether the first, cut before its subtitle, is the second. */
    private static boolean nearMain(String whole, String main) {
        var cut = SUBTITLE.matcher(whole).replaceFirst("");
        return cut.length() < whole.strip().length()
                && Latin.words(cut).split(" ", -1).length >= FEWEST_WORDS
                && near(cut, main);
    }

    private static boolean near(String one, String other) {
        var a = Latin.words(one);
        var b = Latin.words(other);
        int longest = Math.max(a.length(), b.length());
        int allowed = (int) Math.floor((1 - LIKE) * longest + 1e-9);
        return longest > 0
                && Math.abs(a.length() - b.length()) <= allowed
                && numbers(a).equals(numbers(b))
                && new LevenshteinDistance(allowed).apply(a, b) >= 0;
    }

    private static List<String> numbers(String words) {
        return Arrays.stream(words.split(" ", -1))
                .filter(w -> NUMBER.matcher(w).matches())
                .toList();
    }
}
