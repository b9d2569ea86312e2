package comparand.stat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The uncertainty of a formula from those of its inputs, by its slopes; JCGM 100:2008 (GUM) 5.1.2, 5.2.2 and G.4.1.
 *
 * <pre>
 * u² = Σ cᵢ²uᵢ² + 2 Σ cᵢcⱼuᵢuⱼrᵢⱼ,  df = u⁴ / Σ (cᵢuᵢ)⁴/dfᵢ
 * </pre>
 *
 * <p>The slopes are central differences over a step of a thousandth of the uncertainty.
 *
 * @param contributions {@code cᵢuᵢ} of each input, with its sign
 * @param df not truncated; refused for correlated inputs with finite degrees of freedom, for which the formula does not hold
 */
public record LinearPropagation(double value, double uncertainty, List<Double> contributions, Derived<Double> df) {

    private static final double STEP = 1e-3;

    public LinearPropagation {
        contributions = List.copyOf(contributions);
    }

    public static LinearPropagation of(Inputs inputs, ToDoubleFunction<double[]> formula) {
        var contributions = contributions(inputs, formula);
        double variance = Math.max(0, covariance(inputs, contributions, contributions));
        return new LinearPropagation(
                formula.applyAsDouble(inputs.values()),
                Math.sqrt(variance),
                contributions,
                df(inputs, contributions, variance));
    }

    /** The correlation of two formulas of the same inputs. */
    public static double correlation(
            Inputs inputs, ToDoubleFunction<double[]> first, ToDoubleFunction<double[]> second) {
        var a = contributions(inputs, first);
        var b = contributions(inputs, second);
        return covariance(inputs, a, b) / Math.sqrt(covariance(inputs, a, a) * covariance(inputs, b, b));
    }

    /** {@code value ± t · u}; refused where the degrees of freedom are. */
    public Derived<Interval> interval(double level) {
        return df.map(v -> Interval.around(value, Quantiles.tTwoSided(level, v) * uncertainty));
    }

    /** The degrees of freedom as a report after the GUM prints them: the next lower whole number (G.4.1, note 1). */
    public Derived<Double> truncatedDf() {
        return df.map(Math::floor);
    }

    private static List<Double> contributions(Inputs inputs, ToDoubleFunction<double[]> formula) {
        var contributions = new ArrayList<Double>();
        for (int i = 0; i < inputs.size(); i++) {
            double step = STEP * inputs.get(i).uncertainty();
            double[] up = inputs.values();
            double[] down = inputs.values();
            up[i] += step;
            down[i] -= step;
            // c u = (f(x + h) - f(x - h)) / 2h · u with h = u/1000, as rounded into the inputs
            double width = up[i] - down[i];
            contributions.add(
                    width == 0
                            ? 0
                            : (formula.applyAsDouble(up) - formula.applyAsDouble(down))
                                    / width
                                    * inputs.get(i).uncertainty());
        }
        return contributions;
    }

    private static double covariance(Inputs inputs, List<Double> a, List<Double> b) {
        double sum = 0;
        for (int i = 0; i < a.size(); i++) {
            for (int j = 0; j < b.size(); j++) {
                sum += a.get(i) * b.get(j) * inputs.correlation(i, j);
            }
        }
        return sum;
    }

    private static Derived<Double> df(Inputs inputs, List<Double> contributions, double variance) {
        double[] each = contributions.stream().mapToDouble(c -> c).toArray();
        double[] df = new double[each.length];
        Arrays.setAll(df, i -> inputs.get(i).df());
        double effective = Satterthwaite.df(Math.sqrt(variance), each, df);
        return inputs.correlated() && Double.isFinite(effective)
                ? Derived.refused(Refusal.INPUTS_CORRELATED)
                : Derived.of(effective);
    }
}
