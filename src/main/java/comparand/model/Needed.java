package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.stat.Derived;

/**
 * How many are needed in every group that is still to be measured.
 *
 * @param n the number, or with {@link Kind#MORE} the number it exceeds; 0 if none suffices
 */
public record Needed(Kind kind, int n) {

    /** Beyond this nobody measures, and the plan says only that it is more. */
    public static final int MOST = 1000;

    /** What kind of answer it is. */
    public enum Kind {
        NUMBER,
        MORE,
        /** Not even with any number: the other side, or the spread between hospitals, is too wide. */
        NONE
    }

    public Needed {
        requireNonNull(kind, "kind");
    }

    /** A number, capped; refused means that none suffices. */
    public static Needed of(Derived<Integer> count) {
        return count.fold(
                n -> n > MOST ? new Needed(Kind.MORE, MOST) : new Needed(Kind.NUMBER, n),
                refusal -> new Needed(Kind.NONE, 0));
    }
}
