package comparand.stat;

import java.util.function.IntPredicate;

/** The smallest whole number for which something holds that, once it holds, holds for all larger ones. */
final class Smallest {

    private Smallest() {}

    /** Refused if it does not hold at the most. */
    static Derived<Integer> from(int least, int most, IntPredicate holds) {
        int high = least;
        int tried = least - 1;
        while (!holds.test(high)) {
            if (high == most) {
                return Derived.refused(Refusal.NOT_REACHABLE);
            }
            tried = high;
            high = (int) Math.min(most, 2L * high);
        }
        while (high - tried > 1) {
            int middle = tried + (high - tried) / 2;
            if (holds.test(middle)) {
                high = middle;
            } else {
                tried = middle;
            }
        }
        return Derived.of(high);
    }
}
