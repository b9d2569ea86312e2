package comparand.compose.figure;

import comparand.compose.text.Figures;
import comparand.document.chart.Axis;
import comparand.unit.Rounding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Axes of numbers with round steps: 1, 2 or 5 times a power of ten, a handful of them, around all that is drawn. */
final class Scales {

    private static final List<Double> STEPS = List.of(1.0, 2.0, 5.0, 10.0);
    private static final int MOST_STEPS = 6;
    /** Room beyond the outermost value, as a share of the range. */
    private static final double AIR = 0.04;

    private static final double ON_TICK = 1e-9;

    private final Figures figures;

    Scales(Figures figures) {
        this.figures = figures;
    }

    /** An axis that holds all values, and begins and ends at a tick. */
    Axis.Scale of(String title, Collection<Double> values) {
        double low = values.stream().mapToDouble(d -> d).min().orElseThrow();
        double high = values.stream().mapToDouble(d -> d).max().orElseThrow();
        double range = high > low ? high - low : Math.max(Math.abs(high), 1) / 2;
        // a quantity that is nowhere below zero is not drawn below it
        double from = low >= 0 ? Math.max(0, low - AIR * range) : low - AIR * range;
        double to = high <= 0 ? Math.min(0, high + AIR * range) : high + AIR * range;
        double step = step((to - from) / MOST_STEPS);
        long first = (long) Math.floor((onTick(low, step) ? low : from) / step + ON_TICK);
        long last = (long) Math.ceil((onTick(high, step) ? high : to) / step - ON_TICK);
        int decimals = Rounding.decimalsFor(step, 1);
        last = Math.max(last, first + 1);
        var ticks = new ArrayList<Axis.Tick>();
        for (long i = first; i <= last; i++) {
            // the decimal that is printed, so that nothing of the multiplication is left in the data
            double at = Rounding.halfUp(i * step, decimals).doubleValue();
            ticks.add(new Axis.Tick(at, figures.number(at, decimals)));
        }
        return new Axis.Scale(
                title, ticks.get(0).at(), ticks.get(ticks.size() - 1).at(), ticks);
    }

    private static boolean onTick(double value, double step) {
        return Math.abs(value / step - Math.rint(value / step)) < ON_TICK;
    }

    /** The smallest round step that is no smaller. */
    private static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        return STEPS.stream()
                .map(s -> s * power)
                .filter(s -> s >= least * (1 - 1e-9))
                .findFirst()
                .orElse(10 * power);
    }
}
