package comparand.model.library;

import java.util.Locale;

/** A difference between two spellings of one name that a mapping declares to be none. */
public enum SpellingDifference {
    /** {@code C 07} is {@code C07}. */
    SPACES {
        @Override
        public String without(String name) {
            return name.replaceAll("[\\s\\u00a0\\u2009\\u202f]+", "");
        }
    },
    /** {@code c-07} is {@code C-07}. */
    LETTER_CASE {
        @Override
        public String without(String name) {
            return name.toUpperCase(Locale.ROOT);
        }
    },
    /** {@code C-07} is {@code C-7}. */
    LEADING_ZEROS {
        @Override
        public String without(String name) {
            return name.replaceAll("(?<![0-9])0+(?=[0-9])", "");
        }
    };

    /** The name in the one spelling that stands for all that differ in this only. */
    public abstract String without(String name);
}
