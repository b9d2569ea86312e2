package comparand.stat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What published sources say together, by how many there are: one entry, and one shape of result for each number.
 *
 * <p>One independent group of cases per source; values without spread are shown, not pooled.
 */
public sealed interface Pool {

    /** One source: there is nothing to pool. */
    record Single(MeanEstimate source) implements Pool {
        @Override
        public <R> R fold(Function<Single, R> one, Function<Pair, R> two, Function<Several, R> more) {
            return one.apply(this);
        }
    }

    /** Two sources side by side with their difference: two cannot show how much sources differ. */
    record Pair(MeanEstimate first, MeanEstimate second, MeanDifference difference) implements Pool {

        /** Assumes that both measure the same thing; for the user to affirm. */
        public CommonEffect ifBothMeasureTheSame() {
            return CommonEffect.of(Effects.ofEstimates(List.of(first, second)));
        }

        @Override
        public <R> R fold(Function<Single, R> one, Function<Pair, R> two, Function<Several, R> more) {
            return two.apply(this);
        }
    }

    /**
     * Three sources or more: random effects, τ² by restricted likelihood, modified Hartung and Knapp.
     *
     * @param tau2 by each method; they are all shown
     * @param common the line of the sensitivity analysis
     */
    record Several(Effects effects, RandomEffects random, Map<BetweenVariance, Double> tau2, CommonEffect common)
            implements Pool {

        /** From this number of sources on, a prediction may head a table. */
        private static final int HEADLINE = 5;

        public Several {
            tau2 = Map.copyOf(tau2);
        }

        /** The mean of sources, with the modified standard error. */
        public MeanEstimate mean() {
            return random.modifiedHartungKnapp();
        }

        /** The interval of τ². */
        public Interval tau2Interval(double level) {
            return QProfile.of(effects, level);
        }

        /** Whether three or four sources make every statement on their spread a very rough one. */
        public boolean rough() {
            return effects.size() < HEADLINE;
        }

        /** Where a further source is expected; very rough if {@link #rough}. */
        public Interval furtherSource(double level) {
            return random.furtherSource(level).orElseThrow();
        }

        /** The same, only where it may head a table. */
        public Optional<Interval> furtherSourceForHeadline(double level) {
            return rough() ? Optional.empty() : Optional.of(furtherSource(level));
        }

        /** Where a further study as uncertain as the local one is expected to find its mean. */
        public Interval furtherObservedMean(MeanEstimate local, double level) {
            return random.furtherObservedMean(local, level).orElseThrow();
        }

        /** The mean and its interval without each source in turn. */
        public List<RandomEffects> leaveOneOut() {
            return LeaveOneOut.of(effects, rest -> RandomEffects.of(rest, BetweenVariance.RESTRICTED_LIKELIHOOD));
        }

        @Override
        public <R> R fold(Function<Single, R> one, Function<Pair, R> two, Function<Several, R> more) {
            return more.apply(this);
        }
    }

    <R> R fold(Function<Single, R> one, Function<Pair, R> two, Function<Several, R> more);

    /**
     * Refused without sources, and for a source of two or more whose standard error is 0 and would weigh all.
     *
     * @param sources mean, standard error and degrees of freedom of each
     */
    static Derived<Pool> of(List<MeanEstimate> sources) {
        if (sources.isEmpty()) {
            return Derived.refused(Refusal.TOO_FEW_SOURCES);
        }
        if (sources.size() == 1) {
            return Derived.of(new Single(sources.get(0)));
        }
        if (sources.stream().anyMatch(s -> s.se() == 0)) {
            return Derived.refused(Refusal.NO_SPREAD);
        }
        if (sources.size() == 2) {
            var difference = MeanDifference.of(sources.get(0), sources.get(1));
            return Derived.of(new Pair(sources.get(0), sources.get(1), difference));
        }
        var effects = Effects.ofEstimates(sources);
        var tau2 = new EnumMap<BetweenVariance, Double>(BetweenVariance.class);
        for (BetweenVariance method : BetweenVariance.values()) {
            tau2.put(method, method.of(effects));
        }
        var random = RandomEffects.of(effects, tau2.getOrDefault(BetweenVariance.RESTRICTED_LIKELIHOOD, 0.0));
        return Derived.of(new Several(effects, random, tau2, CommonEffect.of(effects)));
    }
}
