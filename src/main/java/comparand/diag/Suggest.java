package comparand.diag;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** "Did you mean": the known word nearest to a mistyped one. */
public final class Suggest {

    /** A list of more names than this is read by nobody. */
    private static final int MOST_LISTED = 60;

    private static final int LIKELIEST = 12;

    private Suggest() {}

    /**
     * The nearest of the known words, if it is near enough to be worth saying: at most one edit (a letter added, left
     * out, changed, or two swapped) for every three letters, with one always allowed.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        var typed = word.toLowerCase(Locale.ROOT);
        int allowed = Math.max(1, typed.length() / 3);
        return known.stream()
                // a word much longer or shorter is no slip, and would cost time and memory
                .filter(k -> Math.abs(k.length() - typed.length()) <= allowed)
                .map(k -> new Candidate(k, distance(typed, k.toLowerCase(Locale.ROOT))))
                .filter(c -> c.distance <= allowed)
                .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
                .map(Candidate::word);
    }

    /** "Write `temperature`" when something is near, else the list of what could stand there. */
    public static String instruction(String word, Collection<String> known) {
        if (known.isEmpty()) {
            return "nothing of the kind is known here: take it out, or add it first";
        }
        return nearest(word, known)
                .map(k -> "did you mean `" + k + "`?")
                .orElseGet(() -> "known here: " + listed(word, known));
    }

    /** All names in order; of very many, those that begin like the word, whole or in one of their parts. */
    private static String listed(String word, Collection<String> known) {
        if (known.size() <= MOST_LISTED) {
            return String.join(", ", known.stream().sorted().toList());
        }
        var likeliest = known.stream()
                .sorted(Comparator.comparingInt((String k) -> -sharedBeginning(word, k))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(LIKELIEST)
                .toList();
        return "%s and %d more".formatted(String.join(", ", likeliest), known.size() - likeliest.size());
    }

    private static int sharedBeginning(String word, String name) {
        int longest = 0;
        for (var part : name.split("-", -1)) {
            int shared = 0;
            while (shared < Math.min(word.length(), part.length()) && word.charAt(shared) == part.charAt(shared)) {
                shared++;
            }
            longest = Math.max(longest, shared);
        }
        return longest;
    }

    private record Candidate(String word, int distance) {}

    /** Edits from one word to the other, two swapped neighbours counting as one (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
