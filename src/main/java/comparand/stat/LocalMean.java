package comparand.stat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The mean of local cases with an uncertainty that respects the centres (or units) they come from: one entry for every
 * number of centres, and the rule that was used.
 *
 * <p>With three centres and more: centre means {@code yᵢ} with {@code vᵢ = MSW/nᵢ}, τ² by Paule and Mandel, the interval of
 * Hartung and Knapp on {@code J - 1} degrees of freedom, and never narrower than {@code t(N-1) s/√N} over all cases.
 *
 * @param estimate mean, standard error and degrees of freedom of the rule
 * @param centres the moments of each centre that has two cases or more
 * @param spread what is known of the spread between centres; from three centres with a spread within
 */
public record LocalMean(
        MeanEstimate estimate, Rule rule, int cases, int centreCount, List<Moments> centres, Optional<Spread> spread) {

    /** Every centre has as many cases before its own SD is used in place of the common one. */
    private static final int CASES_FOR_OWN_SD = 10;

    private static final double UNLIKE_SDS = 2;

    /** How the estimate was reached, and so what its interval covers. */
    public enum Rule {
        /** Student's t over the cases of one centre; says nothing of other centres. */
        ONE_CENTRE("mean ± t(n - 1) s/√n"),
        /** Student's t over the runs of one unit: how well it repeats itself; says nothing of other units. */
        ONE_UNIT("mean ± t(n - 1) s/√n"),
        /** The mean of both, weighted by cases, for these two centres only. */
        THESE_TWO_CENTRES("mean of all cases, SE² = Σ (nᵢ/N)² sᵢ²/nᵢ"),
        /** Random centres; Hartung and Knapp. */
        RANDOM_CENTRES("Σ wᵢyᵢ/Σ wᵢ, wᵢ = 1/(vᵢ + τ²), SE² = Σ wᵢ(yᵢ - mean)²/((J - 1) Σ wᵢ)"),
        /** Random centres that agree by luck: the interval over all cases is wider, and is taken. */
        RANDOM_CENTRES_FLOOR("Σ wᵢyᵢ/Σ wᵢ, wᵢ = 1/(vᵢ + τ²), SE = s/√N"),
        /** Student's t on the centre means, because there is no spread within centres to weigh them by. */
        CENTRE_MEANS("mean of centre means, SE = SD of centre means/√J");

        private final String formula;

        Rule(String formula) {
            this.formula = formula;
        }

        public String formula() {
            return formula;
        }
    }

    /** The spread between centres: τ² with its interval, the two-stage mean, the analysis of variance, and the cross-check. */
    public record Spread(RandomEffects twoStage, Interval tau2, OneWay components, RandomCentres oneStage) {}

    public LocalMean {
        centres = List.copyOf(centres);
    }

    /** {@code estimate ± t · SE}. */
    public Interval interval(double level) {
        return estimate.interval(level);
    }

    /** Whether the interval tells of a further case or unit as well, and a range for one more can be given. */
    public boolean coversFurther() {
        return rule == Rule.ONE_CENTRE;
    }

    /** From the runs of the only unit that was tested, at least 2. */
    public static LocalMean ofOneUnit(double... runs) {
        var moments = Moments.of(runs);
        return new LocalMean(moments.estimate(), Rule.ONE_UNIT, runs.length, 1, List.of(moments), Optional.empty());
    }

    /**
     * From the values of each centre, one value per case. Refused where there is no spread to take a standard error from.
     *
     * @param level of the interval for which the floor is applied
     * @throws IllegalArgumentException for no centres, or one without cases
     */
    public static Derived<LocalMean> of(List<double[]> centres, double level) {
        if (centres.isEmpty() || centres.stream().anyMatch(c -> c.length == 0)) {
            throw new IllegalArgumentException("every centre has at least one case");
        }
        double[] all = centres.stream().flatMapToDouble(Arrays::stream).toArray();
        if (all.length < 2) {
            return Derived.refused(Refusal.TOO_FEW_VALUES);
        }
        var known = centres.stream()
                .filter(c -> c.length > 1)
                .map(c -> Moments.of(c))
                .toList();
        var together = Moments.of(all).estimate();
        if (centres.size() == 1) {
            return Derived.of(new LocalMean(together, Rule.ONE_CENTRE, all.length, 1, known, Optional.empty()));
        }
        return centres.size() == 2
                ? two(centres, known, together.mean(), all.length)
                : Derived.of(several(centres, known, together, all.length, level));
    }

    private static Derived<LocalMean> two(List<double[]> centres, List<Moments> known, double mean, int n) {
        if (known.isEmpty()) {
            return Derived.refused(Refusal.NO_SPREAD_WITHIN_CENTRES);
        }
        // weights by cases: SE² = Σ (nᵢ/N)² sᵢ²/nᵢ, its degrees of freedom after Satterthwaite
        double variance = 0;
        double overDf = 0;
        for (Moments m : known) {
            double part = Math.pow((double) m.n() / n, 2) * m.sd() * m.sd() / m.n();
            variance += part;
            overDf += part * part / (m.n() - 1);
        }
        boolean both = known.size() == 2;
        // a centre of one case has no SD of its own and borrows that of the other
        double se = both ? Math.sqrt(variance) : known.get(0).sd() / Math.sqrt(n);
        double df = both && overDf > 0 ? variance * variance / overDf : n - centres.size();
        return Derived.of(
                new LocalMean(new MeanEstimate(mean, se, df), Rule.THESE_TWO_CENTRES, n, 2, known, Optional.empty()));
    }

    private static LocalMean several(
            List<double[]> centres, List<Moments> known, MeanEstimate naive, int n, double level) {
        double[] means = centres.stream()
                .mapToDouble(c -> Arrays.stream(c).sum() / c.length)
                .toArray();
        var within = n > centres.size() ? Optional.of(OneWay.of(centres)) : Optional.<OneWay>empty();
        if (within.filter(w -> w.squaresWithin() > 0).isEmpty()) {
            var estimate = Moments.of(means).estimate();
            return new LocalMean(estimate, Rule.CENTRE_MEANS, n, centres.size(), known, Optional.empty());
        }
        var components = within.orElseThrow();
        boolean own = ownSds(centres.size(), known);
        double[] variances = new double[means.length];
        for (int i = 0; i < means.length; i++) {
            double s2 = own ? Math.pow(known.get(i).sd(), 2) : components.meanSquareWithin();
            variances[i] = s2 / centres.get(i).length;
        }
        var effects = Effects.of(means, variances);
        var twoStage = RandomEffects.of(effects, BetweenVariance.PAULE_MANDEL);
        var spread = new Spread(twoStage, QProfile.of(effects, level), components, RandomCentres.of(centres));
        var hartungKnapp = twoStage.hartungKnapp();
        // the floor keeps the two-stage mean and takes the standard error and degrees of freedom over all cases
        var floor = new MeanEstimate(twoStage.mean(), naive.se(), naive.df());
        boolean lucky =
                floor.interval(level).halfWidth() > hartungKnapp.interval(level).halfWidth();
        return new LocalMean(
                lucky ? floor : hartungKnapp,
                lucky ? Rule.RANDOM_CENTRES_FLOOR : Rule.RANDOM_CENTRES,
                n,
                centres.size(),
                known,
                Optional.of(spread));
    }

    private static boolean ownSds(int centreCount, List<Moments> known) {
        double largest = known.stream().mapToDouble(Moments::sd).max().orElse(0);
        double smallest = known.stream().mapToDouble(Moments::sd).min().orElse(0);
        return known.size() == centreCount
                && known.stream().allMatch(m -> m.n() >= CASES_FOR_OWN_SD)
                && smallest > 0
                && largest > UNLIKE_SDS * smallest;
    }
}
