package comparand.document.result;

import comparand.document.result.ComparandResult.RangeResult;
import comparand.document.result.PairResult.DifferenceResult;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** What several published sources say together of one local result. */
public record TogetherResult(
        @Says("Name of the metric") String metric,
        @Says("Name of the local result") String ours,
        @Says("Names of the published values") List<String> sources,
        @Says("Sentences, the answer first") List<String> sentences,

        @Says("With two sources: the first minus the second, which are not pooled")
        Optional<DifferenceResult> apart,

        @Says("With two sources: p of each comparison with our result, adjusted for the two")
        List<Double> adjustedP,

        @Says("From three sources on: the pool") Optional<PoolResult> pool) {

    /** Random effects over sources. */
    public record PoolResult(
            @Says("Mean of sources, by restricted maximum likelihood")
            double mean,

            @Says("Its 95 % interval, after Hartung and Knapp, not narrower than sampling alone makes it")
            RangeResult interval,

            @Says("SD between sources") double between,
            @Says("Its 95 % interval (Q profile)") RangeResult betweenInterval,

            @Says("SD between sources by each method") SortedMap<String, Double> betweenBy,

            @Says("Share of the spread that is not sampling")
            double i2,

            @Says("Mean as if all sources measured the same, for comparison")
            double common,

            @Says("95 % interval of that mean") RangeResult commonInterval,

            @Says("Where a further study as uncertain as ours would find its mean; 95 %")
            RangeResult expected,

            @Says("inside, above or below: where our mean lies by that")
            String place,

            @Says("Whether three or four sources make this a rough statement")
            boolean rough,

            @Says("Our mean minus the mean of sources") DifferenceResult againstMean,
            @Says("The same without some sources") List<WithoutResult> without) {}

    /** What is left without some sources. */
    public record WithoutResult(
            @Says("Names of the values left out") List<String> left,

            @Says("one-source, or how their spread is known: estimated, digitised")
            String because,

            @Says("Mean of the rest; absent if fewer than three are left")
            Optional<Double> mean,

            @Says("Its 95 % interval") Optional<RangeResult> interval,
            @Says("Where our mean lies by the rest") Optional<String> place) {}
}
