package comparand.stat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.Mean;

/**
 * The mean of values in centres that differ at random, all fitted at once by restricted maximum likelihood: the cross-check
 * of the two-stage mean.
 *
 * <p>With {@code λ = between/within}, {@code wᵢ = nᵢ/(1 + λ nᵢ)} and {@code S(λ) = SSW + Σ wᵢ (ȳᵢ - μ)²} the restricted
 * likelihood is, up to a constant, {@code -2l = (N-1) ln S + Σ ln(1 + λ nᵢ) + ln Σ wᵢ}. Patterson and Thompson, Biometrika
 * 1971;58:545-554 (from memory).
 */
public record RandomCentres(double mean, double se, double varianceBetween, double varianceWithin) {

    private record Centre(double mean, double size) {

        double w(double ratio) {
            return size / (1 + ratio * size);
        }
    }

    private record Fit(List<Centre> centres, double squaresWithin, double n) {

        double sum(ToDoubleFunction<Centre> term) {
            return centres.stream().mapToDouble(term).sum();
        }

        double mean(double ratio) {
            double origin = centres.get(0).mean;
            return origin + sum(c -> c.w(ratio) * (c.mean - origin)) / sum(c -> c.w(ratio));
        }

        double squares(double ratio) {
            double mu = mean(ratio);
            return squaresWithin + sum(c -> c.w(ratio) * Math.pow(c.mean - mu, 2));
        }

        /** Twice the slope of the log-likelihood. */
        double slope(double ratio) {
            double mu = mean(ratio);
            double fall = sum(c -> Math.pow(c.w(ratio) * (c.mean - mu), 2));
            double weights = sum(c -> c.w(ratio));
            return (n - 1) * fall / squares(ratio) - weights + sum(c -> Math.pow(c.w(ratio), 2)) / weights;
        }

        double logLikelihood(double ratio) {
            double logs = sum(c -> Math.log1p(ratio * c.size));
            return -((n - 1) * Math.log(squares(ratio)) + logs + Math.log(sum(c -> c.w(ratio)))) / 2;
        }
    }

    /**
     * From the values of each centre.
     *
     * @throws IllegalArgumentException unless there are 2 centres and a spread within
     */
    public static RandomCentres of(List<double[]> centres) {
        var oneWay = OneWay.of(centres);
        if (!(oneWay.squaresWithin() > 0)) {
            throw new IllegalArgumentException("no spread within centres");
        }
        var fit = new Fit(
                centres.stream()
                        .map(c -> new Centre(new Mean().evaluate(c), c.length))
                        .toList(),
                oneWay.squaresWithin(),
                oneWay.n());
        // beyond this ratio the between-centre part is all there is, and the likelihood only falls
        double far = 1 + 100 * oneWay.meanSquareBetween() / oneWay.meanSquareWithin();
        double ratio = LikelihoodPeak.from0(fit::slope, fit::logLikelihood, far);
        double within = fit.squares(ratio) / (fit.n() - 1);
        return new RandomCentres(fit.mean(ratio), Math.sqrt(within / fit.sum(c -> c.w(ratio))), ratio * within, within);
    }
}
