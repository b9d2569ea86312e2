package comparand.stat;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the code makes of a row, by the names of the row. */
final class Computed {

    private final Map<String, Double> values = new LinkedHashMap<>();

    static Computed of(String name, double value) {
        return new Computed().and(name, value);
    }

    static Computed interval(String low, String high, Interval interval) {
        return of(low, interval.low()).and(high, interval.high());
    }

    Computed and(String name, double value) {
        values.put(name, value);
        return this;
    }

    Computed and(String low, String high, Interval interval) {
        return and(low, interval.low()).and(high, interval.high());
    }

    Computed and(String name, double... list) {
        for (int k = 0; k < list.length; k++) {
            values.put(name + "." + k, list[k]);
        }
        return this;
    }

    Map<String, Double> values() {
        return values;
    }
}
