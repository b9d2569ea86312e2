package comparand.calibration;

import comparand.stat.ProportionInterval;
import java.util.Locale;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** The coverage of the intervals of a proportion, enumerated: least and mean over true shares from 0.5 to 99.5 %. */
final class ProportionCoverage {

    private ProportionCoverage() {}

    static String section() {
        var text = new StringBuilder("\n## Proportions, enumerated\n\n");
        text.append("The score interval covers 95 % on average and less at some shares; the exact one never less.\n\n");
        text.append("| n | interval | least coverage, % | mean coverage, % |\n|--:|---|--:|--:|\n");
        for (int n : new int[] {5, 12, 20, 50}) {
            for (var method : ProportionInterval.values()) {
                double least = 1;
                double sum = 0;
                int shares = 199;
                for (int s = 1; s <= shares; s++) {
                    double coverage = coverage(method, n, s / (shares + 1.0));
                    least = Math.min(least, coverage);
                    sum += coverage;
                }
                text.append(String.format(
                        Locale.ROOT, "| %d | %s | %.2f | %.2f |\n", n, method, 100 * least, 100 * sum / shares));
            }
        }
        return text.toString();
    }

    static double coverage(ProportionInterval method, int n, double share) {
        var binomial = BinomialDistribution.of(n, share);
        double sum = 0;
        for (int x = 0; x <= n; x++) {
            if (method.of(x, n, 0.95).contains(share)) {
                sum += binomial.probability(x);
            }
        }
        return sum;
    }
}
