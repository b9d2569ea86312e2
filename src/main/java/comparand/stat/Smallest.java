package comparand.stat;

import java.util.function.IntPredicate;

/** The smallest whole number for which something holds. */
final class Smallest {

    /** How far apart, relative to their size, large numbers are tried one after another. */
    private static final double STRIDE = 0.02;

    private Smallest() {}

    /** Of what, once it holds, holds for all larger ones; refused if it does not hold at the most. */
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
        return Derived.of(between(tried, high, holds));
    }

    /**
     * Of what may cease to hold for larger ones: every number up to 50 is tried, and beyond in strides of 2 %, between the
     * last of which the smallest is looked for. Refused if it holds at none of them up to the most.
     */
    static Derived<Integer> first(int least, int most, IntPredicate holds) {
        int tried = least - 1;
        for (int n = least; n <= most; n += Math.max(1, (int) (n * STRIDE))) {
            if (holds.test(n)) {
                return Derived.of(between(tried, n, holds));
            }
            tried = n;
        }
        return Derived.refused(Refusal.NOT_REACHABLE);
    }

    /** It holds at the upper and not at the lower. */
    private static int between(int low, int high, IntPredicate holds) {
        int tried = low;
        int held = high;
        while (held - tried > 1) {
            int middle = tried + (held - tried) / 2;
            if (holds.test(middle)) {
                held = middle;
            } else {
                tried = middle;
            }
        }
        return held;
    }
}
