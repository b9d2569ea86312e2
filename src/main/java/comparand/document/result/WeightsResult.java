package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** A score by weights that the house set, and how far the order of devices rests on them. */
public record WeightsResult(
        @Says("Who set the weights") String setBy,
        @Says("The day they were set") String on,
        @Says("How scores are made, in words") String rule,

        @Says("Every metric with a weight") List<WeightedMetricResult> metrics,

        @Says("The totals as set, then with other weights") List<VariationResult> variations) {

    /** One metric. */
    public record WeightedMetricResult(
            @Says("Name of the metric") String metric,
            @Says("Its weight") double weight,

            @Says("Whether it counts: only if all devices have results alike enough to be compared")
            boolean counts,

            @Says("The step at which the results were taken; empty where there is none")
            String step,

            @Says("more or less is favourable") String better,

            @Says("Best minus worst result, without sign; absent where the metric does not count")
            Optional<Double> range,

            @Says("Whether that is less than the margin; absent where there is no margin or the metric does not count")
            Optional<Boolean> withinMargin,

            @Says("Result and score of each device; no entry where the metric does not count")
            List<ScoreResult> scores,

            @Says("Why it does not count; empty where it does")
            String why) {}

    /** The result of a device and its score. */
    public record ScoreResult(
            @Says("Name of the device") String device,
            @Says("Name of the value") String value,
            @Says("The result in the metric's unit") double result,

            @Says("0 for the worst device, 1 for the best") double score,
            @Says("Weight times score") double weighted) {}

    /** The totals under one set of weights. */
    public record VariationResult(
            @Says("What is changed, in words") String what,

            @Says("The metric whose weight is changed; absent where none is")
            Optional<String> metric,

            @Says("What its weight is multiplied by") double factor,
            @Says("Total and place of each device") List<TotalResult> totals,

            @Says("Whether the devices stand in the order they have with the weights as set")
            boolean sameOrder) {}

    /** Where a device stands. */
    public record TotalResult(
            @Says("Name of the device") String device,

            @Says("Mean of its scores, by weights") double total,

            @Says("1 for the highest total; equal totals share a place")
            int place) {}
}
