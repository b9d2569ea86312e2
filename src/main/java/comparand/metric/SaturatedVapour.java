package comparand.metric;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The pressure of saturated water vapour over water, in mmHg, between the points of the table of an instrument manual by
 * straight lines. Between 20 and 40 °C, where the table ends, that is within 0.1 mmHg of the curve.
 */
final class SaturatedVapour {

    private static final NavigableMap<Double, Double> TABLE = new TreeMap<>(Map.ofEntries(
            Map.entry(20.0, 17.535),
            Map.entry(22.0, 19.827),
            Map.entry(25.0, 23.756),
            Map.entry(28.0, 28.349),
            Map.entry(30.0, 31.824),
            Map.entry(32.0, 35.663),
            Map.entry(34.0, 39.898),
            Map.entry(36.0, 44.563),
            Map.entry(37.0, 47.067),
            Map.entry(38.0, 49.692),
            Map.entry(40.0, 55.324)));

    private SaturatedVapour() {}

    /** At a temperature in °C; not a number outside of the table, so that nothing is computed with a guess. */
    static double at(double celsius) {
        var below = TABLE.floorEntry(celsius);
        var above = TABLE.ceilingEntry(celsius);
        if (below == null || above == null) {
            return Double.NaN;
        }
        double width = above.getKey() - below.getKey();
        return width == 0
                ? below.getValue()
                : below.getValue() + (above.getValue() - below.getValue()) * (celsius - below.getKey()) / width;
    }
}
