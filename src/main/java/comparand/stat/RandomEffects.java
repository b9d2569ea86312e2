package comparand.stat;

/**
 * The mean of sources whose true values differ with variance τ²: {@code w = 1/(v + τ²)}, {@code μ = Σwy/Σw},
 * {@code SE = 1/√Σw}.
 *
 * @param q {@code Σw(y-μ)²/(k-1)}: how the spread seen compares with the spread that the weights expect
 * @param k the number of sources
 */
public record RandomEffects(double mean, double se, double tau2, double q, int k) {

    public static RandomEffects of(Effects effects, double tau2) {
        return new RandomEffects(
                effects.mean(tau2),
                1 / Math.sqrt(effects.weights(tau2, 1)),
                tau2,
                effects.squares(tau2, 1) / (effects.size() - 1),
                effects.size());
    }

    public static RandomEffects of(Effects effects, BetweenVariance method) {
        return of(effects, method.of(effects));
    }

    /** As if SE and τ² were known: too narrow with few sources, kept because papers print it. */
    public MeanEstimate normal() {
        return new MeanEstimate(mean, se, Double.POSITIVE_INFINITY);
    }

    /**
     * {@code SE √q} with {@code k - 1} degrees of freedom; Hartung and Knapp, Stat Med 2001;20:3875-3889; Sidik and Jonkman,
     * Stat Med 2002;21:3153-3159 (both from memory). In a balanced design it is the t interval on the means.
     */
    public MeanEstimate hartungKnapp() {
        return new MeanEstimate(mean, se * Math.sqrt(q), k - 1);
    }

    /**
     * The same with {@code max(1, q)}: a few sources that agree by luck do not narrow the interval; Röver, Knapp and Friede,
     * BMC Med Res Methodol 2015;15:99.
     */
    public MeanEstimate modifiedHartungKnapp() {
        return new MeanEstimate(mean, se * Math.sqrt(Math.max(1, q)), k - 1);
    }

    /**
     * Where the true value of a further source is expected: {@code μ ± t(k-2) √(τ² + SE²)}; Higgins, Thompson and
     * Spiegelhalter, J R Stat Soc A 2009;172:137-159. Refused for two sources, very rough below five.
     */
    public Derived<Interval> furtherSource(double level) {
        return predicted(level, 0);
    }

    /** The same with {@code k - 1} degrees of freedom and the standard error of Hartung and Knapp. */
    public Derived<Interval> furtherSourceHartungKnapp(double level) {
        return k < 3
                ? Derived.refused(Refusal.TOO_FEW_SOURCES)
                : Derived.of(Interval.around(mean, Quantiles.tTwoSided(level, k - 1) * Math.sqrt(tau2 + q * se * se)));
    }

    /**
     * Where the mean that a further study observes is expected, if it is as uncertain as the local one:
     * {@code μ ± t(k-2) √(τ² + SE² + SE_local²)}.
     */
    public Derived<Interval> furtherObservedMean(MeanEstimate local, double level) {
        return predicted(level, local.se());
    }

    private Derived<Interval> predicted(double level, double seOfFurther) {
        return k < 3
                ? Derived.refused(Refusal.TOO_FEW_SOURCES)
                : Derived.of(Interval.around(
                        mean,
                        Quantiles.tTwoSided(level, k - 2) * Math.sqrt(tau2 + se * se + seOfFurther * seOfFurther)));
    }
}
