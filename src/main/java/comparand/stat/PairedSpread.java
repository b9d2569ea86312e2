package comparand.stat;

import java.util.List;

/**
 * The spread of differences within pairs from the spreads of both sides and their correlation.
 *
 * <p>Cochrane Handbook for Systematic Reviews of Interventions 5.1, 16.1.3.2 and 16.4.6.
 */
public final class PairedSpread {

    /** Correlations to try where none is known; common practice. */
    public static final List<Double> ASSUMED = List.of(0.3, 0.5, 0.8);

    private PairedSpread() {}

    /**
     * {@code s_d = √(s₁² + s₂² - 2 r s₁ s₂)}.
     *
     * @param correlation from -1 to 1; an assumed one makes the result an imputed one
     */
    public static double sdOfDifference(double sd1, double sd2, double correlation) {
        if (!(Math.abs(correlation) <= 1)) {
            throw new IllegalArgumentException("a correlation lies between -1 and 1, got " + correlation);
        }
        // written as a sum of what cannot be negative: r = 1 with equal SDs gives 0, not the root of a rounding error
        return Math.sqrt(Math.pow(sd1 - sd2, 2) + 2 * (1 - correlation) * sd1 * sd2);
    }

    /**
     * {@code r = (s₁² + s₂² - s_d²) / (2 s₁ s₂)}. Beyond -1 or 1 the three printed spreads contradict each other.
     *
     * @throws IllegalArgumentException unless both SDs are positive
     */
    public static double correlation(double sd1, double sd2, double sdOfDifference) {
        if (!(sd1 > 0 && sd2 > 0)) {
            throw new IllegalArgumentException("a correlation needs two spreads, got %s and %s".formatted(sd1, sd2));
        }
        return (sd1 * sd1 + sd2 * sd2 - sdOfDifference * sdOfDifference) / (2 * sd1 * sd2);
    }

    /**
     * The mean difference in units of the spread of both sides, with its standard error:
     * {@code d = D/√((s₁² + s₂²)/2)}, {@code SE = √(1/n + d²/2n) · √(2(1 - r))}; Cochrane Handbook 5.1, 16.4.6.2.
     */
    public static Standardised standardised(double difference, double sd1, double sd2, double correlation, int n) {
        double d = difference / Math.sqrt((sd1 * sd1 + sd2 * sd2) / 2);
        return new Standardised(d, Math.sqrt(1.0 / n + d * d / (2.0 * n)) * Math.sqrt(2 * (1 - correlation)));
    }

    /** A difference in units of a spread. */
    public record Standardised(double value, double se) {}
}
