package comparand.stat;

/**
 * The x at which a fitted line reaches a y.
 *
 * <pre>
 * x = x̄ + u,  u = (y₀ - ȳ)/b,  g = t² s²/(b² Sxx)
 * limits: x̄ + [ u ± (t s/|b|) √( u²/Sxx + (1 - g)(1/m + 1/n) ) ] / (1 - g)
 * </pre>
 *
 * <p>Fieller's theorem on a calibration line; Draper and Smith, Applied Regression Analysis, 3rd ed. 1998, ch. 3 (from
 * memory). Not determined where the slope is not clear (g &gt;= 1).
 */
public final class InversePrediction {

    private InversePrediction() {}

    /** The place, without limits; infinite or not a number for a level line. */
    public static double place(StraightLine line, double y) {
        return line.xBar() + (y - line.yBar()) / line.slope();
    }

    /** Limits for a y that is a fixed number. */
    public static Derived<Interval> ofFixed(StraightLine line, double y, double level) {
        return limits(line, y, 0, level);
    }

    /** Limits for a y that is the mean of m new cases. */
    public static Derived<Interval> ofMean(StraightLine line, double y, int m, double level) {
        SpreadConversion.requireCount(m, 1);
        return limits(line, y, 1.0 / m, level);
    }

    private static Derived<Interval> limits(StraightLine line, double y, double ofNew, double level) {
        double t = Quantiles.tTwoSided(level, line.n() - 2);
        double g = Math.pow(t * line.slopeSe() / line.slope(), 2);
        if (!(g < 1)) {
            return Derived.refused(Refusal.SLOPE_NOT_CLEAR);
        }
        double u = (y - line.yBar()) / line.slope();
        double half = t
                * line.residualSd()
                / Math.abs(line.slope())
                * Math.sqrt(u * u / line.sxx() + (1 - g) * (ofNew + 1.0 / line.n()));
        return Derived.of(new Interval(line.xBar() + (u - half) / (1 - g), line.xBar() + (u + half) / (1 - g)));
    }
}
