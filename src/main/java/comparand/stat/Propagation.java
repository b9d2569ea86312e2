package comparand.stat;

import java.util.function.ToDoubleFunction;

/**
 * A formula's uncertainty both ways, and whether the two agree: where a formula is curved, the linear way is off and the
 * drawn one is shown.
 *
 * @param disagree the two standard uncertainties, or an end of the two intervals, differ by more than 5 % of the uncertainty
 */
public record Propagation(LinearPropagation linear, MonteCarloPropagation drawn, boolean disagree) {

    private static final double AGREE_WITHIN = 0.05;

    public static Propagation of(
            Inputs inputs, ToDoubleFunction<double[]> formula, int draws, long seed, double level) {
        var linear = LinearPropagation.of(inputs, formula);
        var drawn = MonteCarloPropagation.of(inputs, formula, draws, seed, level);
        double allowed = AGREE_WITHIN * drawn.uncertainty();
        // without degrees of freedom the linear interval is the normal one
        var ends = linear.interval(level)
                .value()
                .orElseGet(() -> Interval.around(
                        linear.value(), Quantiles.tTwoSided(level, Double.POSITIVE_INFINITY) * linear.uncertainty()));
        boolean disagree = Math.abs(linear.uncertainty() - drawn.uncertainty()) > allowed
                || Math.abs(ends.low() - drawn.interval().low()) > allowed
                || Math.abs(ends.high() - drawn.interval().high()) > allowed;
        return new Propagation(linear, drawn, disagree);
    }
}
