package comparand.document.result;

import comparand.document.result.ComparandResult.RangeResult;
import java.util.List;
import java.util.Optional;

/** Two values side by side. */
public record PairResult(
        @Says("Name of the pair") String id,

        @Says("local-against-published, against-present-device, within-centre or stated-against-present-device")
        String purpose,

        @Says("Name of the metric") String metric,

        @Says("Name of the value differences are counted from")
        String ours,

        @Says("Name of the other value") String theirs,

        @Says("same, same-after-conversion, conditions-differ, not-reported or different-quantity")
        String standing,

        @Says("The standing in words") String standingWords,
        @Says("One line: every condition with its mark") String conditionLine,

        @Says("Every condition, definition and unit that was compared")
        List<VerdictResult> conditions,

        @Says("The answer") AnswerResult answer,

        @Says("What belongs to the answer: where it changes, rounding, number of comparisons")
        List<String> remarks,

        @Says("Expected direction of each difference that decides, one sentence each")
        List<String> distortions,

        @Says("What differs or is missing and is not held against the comparison")
        List<String> qualifiers,

        @Says("What would make the two comparable; empty where they are")
        String toMakeComparable) {

    /** What was found for one condition. */
    public record VerdictResult(
            @Says("unit, definition, condition or label") String of,
            @Says("The condition or aspect") String id,
            @Says("In words") String name,
            @Says("decides or qualifies") String role,

            @Says("same, made-same, differs, not-reported or not-applicable")
            String verdict,

            @Says("On our side") String ours,
            @Says("On the other side") String theirs,

            @Says("The tolerance used; empty where none applies")
            String tolerance,

            @Says("What theirs does to the metric by itself: raises, lowers, none or not-predictable")
            String effect) {}

    /** What can be said. */
    public record AnswerResult(
            @Says("tested, either-reading, against-figure, nominal, against-limit, events, shown or not-testable")
            String kind,

            @Says("The answer in one sentence") String sentence,
            @Says("The verdict alone, in words") String verdict,
            @Says("Difference, ours minus theirs") Optional<DifferenceResult> difference,

            @Says("The same if the printed spread is a standard error")
            Optional<DifferenceResult> ifStandardError,

            @Says("95 % interval of our mean") Optional<RangeResult> mean,

            @Says("Range expected for one further unit or case")
            Optional<RangeResult> oneMore,

            @Says("Results that keep to a stated limit") Optional<Integer> meeting,
            @Says("Results there are") Optional<Integer> of,

            @Says("Limit beyond which at least 90 % of single units are expected, with 95 % confidence")
            Optional<Double> most,

            @Says("p adjusted for the number of comparisons with the present device")
            Optional<Double> adjustedP) {}

    /** A difference. */
    public record DifferenceResult(
            @Says("Ours minus theirs, in the metric's unit") double value,

            @Says("95 % interval; absent for nominal figures")
            Optional<RangeResult> interval,

            @Says("Standard error") Optional<Double> se,

            @Says("Degrees of freedom after Welch and Satterthwaite")
            Optional<Double> df,

            @Says(
                    "What the interval is taken from: student, or cochran-cox where one side has few degrees of freedom and the other many")
            Optional<String> reference,

            @Says("90 % interval: inside the margin where two one-sided tests at 5 % reject")
            Optional<RangeResult> narrow,

            @Says("Ratio of our mean to theirs; absent where a mean is not clearly above zero")
            Optional<RatioResult> ratio,

            @Says("Two-sided p") Optional<Double> p,

            @Says("How far rounding alone could move it, for nominal figures")
            Optional<Double> rounding,

            @Says("The verdict: higher-beyond-margin, not-settled ...")
            String verdict,

            @Says("The margin at which the verdict changes") Optional<Double> flipsAt,

            @Says("The verdict is this one for margins above; absent where any smaller margin gives it too")
            Optional<Double> holdsAbove,

            @Says("The verdict is this one for margins below; absent where any larger margin gives it too")
            Optional<Double> holdsBelow,

            @Says("Difference and interval as printed") String shown) {}

    /** A ratio of two means. */
    public record RatioResult(
            @Says("Ours to theirs") double value,

            @Says("95 % interval, by logarithms") RangeResult interval) {}
}
