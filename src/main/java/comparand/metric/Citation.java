package comparand.metric;

import static java.util.Objects.requireNonNull;

/**
 * Where a formula, a value or a tolerance comes from.
 *
 * @param work author, year, title or journal: enough to find it; for common practice what kind of practice
 * @param place the page, table, equation or clause: where a reader can put a finger
 * @param trust how far the statement was checked against that work
 */
public record Citation(String work, String place, Trust trust) {

    /** How far what is said was checked against the work named. */
    public enum Trust {
        /** The passage, or an abstract or a copy of it, was read. */
        READ("read"),
        /** Cited from memory: the work exists, the passage was not opened. */
        FROM_MEMORY("cited from memory, not opened"),
        /** No source: common practice in the trade. */
        COMMON_PRACTICE("common practice, no source"),
        /** Follows from the definition by arithmetic. */
        DERIVED("follows from the definition"),
        /** The author of the library vouches for it. */
        DECLARED("as declared in the library");

        private final String words;

        Trust(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Citation {
        requireNonNull(trust, "trust");
        if (work.isBlank() || place.isBlank()) {
            throw new IllegalArgumentException("a citation names a work and a place in it");
        }
    }

    public static Citation read(String work, String place) {
        return new Citation(work, place, Trust.READ);
    }

    public static Citation fromMemory(String work, String place) {
        return new Citation(work, place, Trust.FROM_MEMORY);
    }

    public static Citation commonPractice(String what) {
        return new Citation("Trade usage", what, Trust.COMMON_PRACTICE);
    }

    public static Citation derived(String how) {
        return new Citation("Definition above", how, Trust.DERIVED);
    }

    @Override
    public String toString() {
        return work + ", " + place + " (" + trust.words() + ")";
    }
}
