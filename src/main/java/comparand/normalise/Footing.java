package comparand.normalise;

import static java.util.Objects.requireNonNull;

import comparand.metric.Definition;
import comparand.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A value on its way to a common footing: the linear map from the printed number to the number on the footing, and the
 * steps that make it up. A spread takes part in the factor, not in the shift.
 *
 * @param factor of the metric's unit value
 * @param shift in the metric's unit
 */
record Footing(double factor, double shift, Definition definition, List<Step> steps) {

    Footing {
        requireNonNull(definition, "definition");
        steps = List.copyOf(steps);
    }

    static Footing of(Definition definition) {
        return new Footing(1, 0, definition, List.of());
    }

    double value(double inMetricUnit) {
        return factor * inMetricUnit + shift;
    }

    double spread(double inMetricUnit) {
        return factor * inMetricUnit;
    }

    /** Multiplied; the step is told from the footing it leads to. */
    Footing times(double by, Definition now, Function<Footing, Step> step) {
        return new Footing(factor * by, shift * by, now, steps).told(step);
    }

    /** With something added; the step is told from the footing it leads to. */
    Footing plus(double amount, Definition now, Function<Footing, Step> step) {
        return new Footing(factor, shift + amount, now, steps).told(step);
    }

    private Footing told(Function<Footing, Step> step) {
        var all = new ArrayList<>(steps);
        all.add(step.apply(this));
        return new Footing(factor, shift, definition, all);
    }
}
