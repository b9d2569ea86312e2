package comparand.model;

import comparand.model.library.SampleSize;
import comparand.model.library.SampleUnit;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** How many of each level stand behind a comparand: samples, runs, units, cases are never mixed up. */
public record Sizes(SortedMap<SampleUnit, Integer> counts) {

    private static final List<SampleUnit> INDEPENDENT =
            List.of(SampleUnit.CASES, SampleUnit.PATIENTS, SampleUnit.UNITS, SampleUnit.RUNS, SampleUnit.SAMPLES);

    public static final Sizes NOT_REPORTED = new Sizes(new TreeMap<>());

    public Sizes {
        counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
    }

    public static Sizes of(Map<SampleUnit, Integer> counts) {
        return new Sizes(new TreeMap<>(counts));
    }

    public static Sizes of(SampleSize size) {
        return of(Map.of(size.of(), size.count()));
    }

    public OptionalInt get(SampleUnit level) {
        var n = counts.get(level);
        return n == null ? OptionalInt.empty() : OptionalInt.of(n);
    }

    /** The level that counts as independent: cases and patients before units before runs before samples. */
    public Optional<SampleSize> independent() {
        return INDEPENDENT.stream()
                .flatMap(level -> get(level).stream().mapToObj(n -> new SampleSize(n, level)))
                .findFirst();
    }
}
