package comparand.stat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What becomes of a result when one source at a time is left out. */
public final class LeaveOneOut {

    private LeaveOneOut() {}

    /** The result without each source in turn; needs 3 sources, so that 2 are left. */
    public static <T> List<T> of(Effects effects, Function<Effects, T> result) {
        if (effects.size() < 3) {
            throw new IllegalArgumentException("needs at least 3 estimates, got " + effects.size());
        }
        return IntStream.range(0, effects.size())
                .mapToObj(i -> result.apply(effects.without(i)))
                .toList();
    }

    /** The places of the sources on which a verdict depends: without them it would be another. */
    public static <T> List<Integer> decisive(Effects effects, Function<Effects, T> verdict) {
        var all = verdict.apply(effects);
        var without = of(effects, verdict);
        return IntStream.range(0, without.size())
                .filter(i -> !without.get(i).equals(all))
                .boxed()
                .toList();
    }
}
