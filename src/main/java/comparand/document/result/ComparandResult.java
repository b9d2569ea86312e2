package comparand.document.result;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** One number on the common footing, with everything that led to it. */
public record ComparandResult(
        @Says("Name of the value") String id,
        @Says("local or published") String side,

        @Says("Name of the device, or * for all devices together")
        String device,

        @Says("Name of the metric") String metric,
        @Says("Unit of the numbers below") String unit,
        @Says("The definition it follows, aspect by aspect") SortedMap<String, String> definition,
        @Says("What is known of it") SummaryResult summary,
        @Says("How many of each level stand behind it") SortedMap<String, Integer> sizes,
        @Says("Conditions in the metric's order") List<CircumstanceResult> conditions,
        @Says("Short pointer to its place") String locator,

        @Says("As printed in the source; absent for local results")
        Optional<String> printed,

        @Says("The steps from print or raw data to the number, in order")
        List<StepResult> steps,

        @Says("Name of its source or study") Optional<String> from,

        @Says("Files it was taken or computed from, by their paths within the library")
        Optional<List<String>> files,

        @Says("What was recorded in its place before a correction")
        Optional<FormerResult> was,

        @Says("What its authors or maker added in writing") Optional<LetterResult> letter) {

    /** What was recorded before a correction. */
    public record FormerResult(
            @Says("The value as it was recorded") String value,
            @Says("Why it changed") String reason,
            @Says("The last day it was used") String until) {}

    /** What was added in writing to what is printed. */
    public record LetterResult(
            @Says("Who wrote") String by,
            @Says("The day of the letter") String on,
            @Says("The words") String says) {}

    /** What is known of a value. */
    public record SummaryResult(
            @Says("sampled, estimated, either-spread, point, limit, extent, events or words")
            String form,

            @Says("Mean, figure or limit") Optional<Double> value,

            @Says("Standard deviation; for either-spread, read as one")
            Optional<Double> sd,

            @Says("Standard deviation if the printed spread is a standard error")
            Optional<Double> sdIfSe,

            @Says("Standard error, for an estimate that is no plain mean")
            Optional<Double> se,

            @Says("Number of independent results") Optional<Integer> n,

            @Says("95 % interval of the mean, or exact interval of a share")
            Optional<RangeResult> interval,

            @Says("Two ends, for an extent") Optional<RangeResult> extent,
            @Says("Events, of the number under n") Optional<Integer> events,

            @Says("Half width of rounding or reading beside sampling")
            Optional<Double> halfWidth,

            @Says("How a spread is known: reported, exact, estimated, digitised ...")
            Optional<String> label,

            @Says("As printed in tables") String shown,

            @Says("The line an estimate was taken from") Optional<LineResult> line,

            @Says("How a local mean allows for hospitals or the one unit")
            Optional<LocalMeanResult> local,

            @Says(
                    "Single results in ascending order: of units, where there are fewer than 10; of cases of one hospital, where the dossier lets them be seen")
            List<Double> each) {}

    /** A local mean and the hospitals or the unit it comes from. */
    public record LocalMeanResult(
            @Says("one-centre, one-unit, these-two-centres, random-centres, random-centres-floor or centre-means")
            String rule,

            @Says("Mean of all cases, whatever their hospital")
            double meanOfAll,

            @Says("Standard error of the mean that is compared")
            double se,

            @Says("Degrees of freedom of the standard error")
            double df,

            @Says("SD between hospitals; from three hospitals on")
            Optional<Double> between,

            @Says("Its 95 % interval") Optional<RangeResult> betweenInterval,

            @Says("Share of the variance that is between hospitals")
            Optional<Double> icc,

            @Says("Its 95 % interval") Optional<RangeResult> iccInterval,

            @Says("The mean by one fit of all cases with random hospitals: a cross-check")
            Optional<Double> oneStage,

            @Says("Where at least 90 % of units or cases are expected, with 95 % confidence; from 6 of one hospital on")
            Optional<RangeResult> tolerance) {}

    /** Two limits. */
    public record RangeResult(
            @Says("Lower limit") double low,
            @Says("Upper limit") double high) {}

    /** One condition. */
    public record CircumstanceResult(
            @Says("The condition") String condition,
            @Says("As reported, or not reported") String is) {}

    /** One step. */
    public record StepResult(
            @Says("What kind of step") String kind,
            @Says("The step in words") String text,

            @Says("The formula; empty where nothing was computed")
            String formula,

            @Says("The facts that went in and came out") SortedMap<String, String> facts) {}
}
