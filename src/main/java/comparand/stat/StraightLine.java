package comparand.stat;

import java.util.Arrays;

/**
 * The least-squares line {@code y = ȳ + b (x - x̄)} through points that are one per case.
 *
 * <pre>
 * h(x) = 1/n + (x - x̄)²/Sxx,  SE(line at x) = s √h,  s² = RSS/(n - 2)
 * </pre>
 *
 * <p>Standard results of linear regression; Draper and Smith, Applied Regression Analysis, 3rd ed. 1998, ch. 1 (from memory).
 *
 * @param sxx sum of squares of x about its mean
 * @param syy sum of squares of y about its mean
 * @param residual sum of squares of y about the line
 */
public record StraightLine(
        int n,
        double xBar,
        double yBar,
        double slope,
        double sxx,
        double syy,
        double residual,
        Interval measured,
        int places) {

    /** Fewer points, or at fewer places, draw a line but support no verdict; a convention. */
    private static final int FEWEST_POINTS = 5;

    private static final int FEWEST_PLACES = 3;

    /**
     * Fits at least 3 points at 2 places.
     *
     * @throws IllegalArgumentException for fewer
     */
    public static StraightLine through(double[] x, double[] y) {
        if (x.length != y.length || x.length < 3) {
            throw new IllegalArgumentException("not points: %d x, %d y".formatted(x.length, y.length));
        }
        double xBar = Moments.of(x).mean();
        double yBar = Moments.of(y).mean();
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - xBar) * (x[i] - xBar);
            sxy += (x[i] - xBar) * (y[i] - yBar);
            syy += (y[i] - yBar) * (y[i] - yBar);
        }
        var places = Arrays.stream(x).distinct().sorted().toArray();
        if (places.length < 2) {
            throw new IllegalArgumentException("all points lie at one place");
        }
        double slope = sxy / sxx;
        double residual = 0;
        for (int i = 0; i < x.length; i++) {
            residual += Math.pow(y[i] - yBar - slope * (x[i] - xBar), 2);
        }
        var measured = new Interval(places[0], places[places.length - 1]);
        return new StraightLine(x.length, xBar, yBar, slope, sxx, syy, residual, measured, places.length);
    }

    /** The SD of y about the line. */
    public double residualSd() {
        return Math.sqrt(residual / (n - 2));
    }

    public double slopeSe() {
        return residualSd() / Math.sqrt(sxx);
    }

    /** The share of the spread of y about its mean that the line takes up. */
    public double rSquared() {
        return 1 - residual / syy;
    }

    /** The correlation of the errors of intercept and slope. */
    public double correlationOfCoefficients() {
        return -xBar / Math.sqrt(sxx / n + xBar * xBar);
    }

    /** The line at x, wherever that lies. */
    public MeanEstimate at(double x) {
        return new MeanEstimate(yBar + slope * (x - xBar), residualSd() * Math.sqrt(leverage(x)), n - 2);
    }

    /** The line at an x that is itself uncertain: {@code SE² = s² h + b² u(x)²}. */
    public MeanEstimate at(double x, double uncertaintyOfX) {
        var line = at(x);
        return new MeanEstimate(line.mean(), Math.hypot(line.se(), slope * uncertaintyOfX), line.df());
    }

    /** The line at x for a verdict: refused with too few points and outside the points measured. */
    public Derived<MeanEstimate> supportedAt(double x) {
        if (n < FEWEST_POINTS || places < FEWEST_PLACES) {
            return Derived.refused(Refusal.TOO_FEW_POINTS);
        }
        return measured.contains(x) ? Derived.of(at(x)) : Derived.refused(Refusal.EXTRAPOLATED);
    }

    /** Where the mean of m new cases at x is expected: {@code ± t s √(1/m + h)}. */
    public Interval prediction(double x, int m, double level) {
        SpreadConversion.requireCount(m, 1);
        double half = Quantiles.tTwoSided(level, n - 2) * residualSd() * Math.sqrt(1.0 / m + leverage(x));
        return Interval.around(at(x).mean(), half);
    }

    private double leverage(double x) {
        return 1.0 / n + (x - xBar) * (x - xBar) / sxx;
    }
}
