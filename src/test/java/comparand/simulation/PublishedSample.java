package comparand.simulation;

import comparand.calibration.Draw;
import comparand.simulation.Published.PrintedForm;
import java.util.List;
import java.util.Locale;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The results of one source, and what is printed of them.
 *
 * @param values mmHg, one a unit or case
 * @param kPa whether it prints kPa
 */
record PublishedSample(List<Double> values, boolean clinical, boolean kPa) {

    /** Pa in one conventional millimetre of mercury. */
    private static final double MMHG = 133.322;

    PublishedSample {
        values = List.copyOf(values);
    }

    double mean() {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }

    double sd() {
        double mean = mean();
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (values.size() - 1));
    }

    PrintedForm form(Print print, Draw draw, double limit) {
        int n = values.size();
        double se = sd() / Math.sqrt(n);
        return switch (print) {
            case SD -> plusMinus("sd", sd(), n);
            case SE -> plusMinus("se", se, n);
            case UNEXPLAINED -> plusMinus("not stated", draw.whole(0, 1) == 0 ? sd() : se, n);
            case WITHOUT_NUMBER -> plusMinus("sd", sd(), 0);
            case INTERVAL -> {
                double half = TDistribution.of(n - 1).inverseCumulativeProbability(0.975) * se;
                yield ends("mean", mean(), "ci95", mean() - half, mean() + half);
            }
            case QUARTILES -> ends("median", quantile(0.5), "iqr", quantile(0.25), quantile(0.75));
            case FIGURE -> new PrintedForm(text(mean()), List.of("value: " + text(mean()), number(0)));
            case LIMIT -> new PrintedForm("at most " + text(limit), List.of("at-most: " + text(limit), number(0)));
        };
    }

    private PrintedForm plusMinus(String kind, double spread, int n) {
        return new PrintedForm(
                bare(mean()) + " ± " + text(spread),
                List.of(
                        "mean: " + text(mean()),
                        "spread: {kind: %s, of: %s}".formatted(kind, text(spread)),
                        number(n)));
    }

    private PrintedForm ends(String centre, double value, String kind, double low, double high) {
        return new PrintedForm(
                "%s (%s to %s)".formatted(bare(value), bare(low), text(high)),
                List.of(
                        centre + ": " + text(value),
                        "spread: {kind: %s, of: [%s, %s]}".formatted(kind, text(low), text(high)),
                        number(values.size())));
    }

    private String number(int n) {
        return n == 0 ? "n: not reported" : "n: " + n + (clinical ? " cases" : " units");
    }

    private String bare(double mmHg) {
        return kPa ? String.format(Locale.ROOT, "%.2f", mmHg * MMHG / 1000) : String.format(Locale.ROOT, "%.1f", mmHg);
    }

    private String text(double mmHg) {
        return bare(mmHg) + (kPa ? " kPa" : " mmHg");
    }

    /** Between the order statistics, the usual rule of statistical programs: at {@code (n - 1) p} from 0. */
    double quantile(double p) {
        var sorted = values.stream().sorted().toList();
        double at = (sorted.size() - 1) * p;
        int below = (int) at;
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (at - below) * (sorted.get(above) - sorted.get(below));
    }
}
