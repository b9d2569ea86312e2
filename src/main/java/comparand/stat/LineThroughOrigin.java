package comparand.stat;

import java.util.Arrays;

/**
 * The least-squares line {@code y = b x}: {@code b = Σxy/Σx²}, {@code s² = RSS/(n - 1)}, {@code SE(b) = s/√Σx²}.
 *
 * <p>Two R² are in print and are not the same: that of the spread about zero, which programs report for such lines, and that
 * of the spread about the mean, which can be negative. Eisenhauer, Teach Stat 2003;25:76-80 (from memory).
 *
 * @param squaresOfX {@code Σx²}
 * @param squaresOfY {@code Σy²}
 * @param squaresOfYAboutMean {@code Σ(y - ȳ)²}
 * @param residual sum of squares of y about the line
 */
public record LineThroughOrigin(
        int n, double slope, double squaresOfX, double squaresOfY, double squaresOfYAboutMean, double residual) {

    /**
     * Fits at least 2 points, not all at 0.
     *
     * @throws IllegalArgumentException for fewer
     */
    public static LineThroughOrigin through(double[] x, double[] y) {
        if (x.length != y.length || x.length < 2) {
            throw new IllegalArgumentException("not points: %d x, %d y".formatted(x.length, y.length));
        }
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += x[i] * x[i];
            xy += x[i] * y[i];
        }
        if (!(xx > 0)) {
            throw new IllegalArgumentException("all points lie at 0");
        }
        double slope = xy / xx;
        double residual = 0;
        for (int i = 0; i < x.length; i++) {
            residual += Math.pow(y[i] - slope * x[i], 2);
        }
        double yy = Arrays.stream(y).map(v -> v * v).sum();
        var spread = Moments.of(y);
        return new LineThroughOrigin(x.length, slope, xx, yy, spread.sd() * spread.sd() * (y.length - 1), residual);
    }

    public double residualSd() {
        return Math.sqrt(residual / (n - 1));
    }

    public double slopeSe() {
        return residualSd() / Math.sqrt(squaresOfX);
    }

    /** {@code 1 - RSS/Σy²}. */
    public double rSquaredAboutZero() {
        return 1 - residual / squaresOfY;
    }

    /** {@code 1 - RSS/Σ(y - ȳ)²}; no finite number where all y are equal. */
    public double rSquaredAboutMean() {
        return 1 - residual / squaresOfYAboutMean;
    }

    /** The line at x. */
    public MeanEstimate at(double x) {
        return new MeanEstimate(slope * x, Math.abs(x) * slopeSe(), n - 1);
    }

    /** Where the mean of m new cases at x is expected. */
    public Interval prediction(double x, int m, double level) {
        SpreadConversion.requireCount(m, 1);
        double half = Quantiles.tTwoSided(level, n - 1) * residualSd() * Math.sqrt(1.0 / m + x * x / squaresOfX);
        return Interval.around(slope * x, half);
    }
}
