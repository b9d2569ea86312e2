package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** Something that is not known. */
public record UnknownResult(
        @Says("Unique, and the same in later runs as long as the gap is the same")
        String id,

        @Says("open, unmeasured, declared, asked, unlike, unpublished or paid-for")
        String kind,

        @Says("What is not known") String what,
        @Says("The device it is about, in words") String device,
        @Says("Why it matters") String matters,
        @Says("What would settle it, one sentence each") List<String> settles,
        @Says("Who could supply it") String who,
        @Says("Names of the metrics concerned") List<String> metrics,
        @Says("Names of the values concerned") List<String> values,

        @Says("How many results would settle it; absent where no number can be given")
        Optional<PlanResult> plan) {

    /** Numbers for a further measurement. It looks ahead only: no power is given for what was done. */
    public record PlanResult(
            @Says("What is counted: units, cases ...") String unit,

            @Says(
                    "each-of-two: both devices in groups of one size; against-published, against-figure: ours alone, the published mean with its uncertainty or the printed figure taken as exact but for its rounding")
            String groups,

            @Says("How many there are of ours") Optional<Integer> ours,

            @Says("How many there are on the other side") Optional<Integer> theirs,

            @Says("Where the standard deviation comes from: declared, pooled or ours")
            String sdFrom,

            @Says("Degrees of freedom of the local results behind it")
            Optional<Double> df,

            @Says("The probability with which a difference to be found is found")
            double power,

            @Says("two-sided level of the test") double alpha,

            @Says(
                    "one-place, same-hospitals: the numbers hold within these hospitals only; across-hospitals: the spread between hospitals is allowed for")
            String reach,

            @Says("Standard deviation between hospitals") Optional<Double> tau,

            @Says("Cases of a device that each hospital is taken to bring")
            Optional<Integer> casesEach,

            @Says("What is to be achieved, and what it takes")
            List<AimResult> aims) {}

    /** One aim of a measurement. */
    public record AimResult(
            @Says(
                    "detect: to find a difference; exclude-margin, show-beyond: an interval so narrow that it leaves out the margin, if the difference stays as observed")
            String kind,

            @Says("The difference to be found, or the half-width of the interval, in the metric's unit")
            double amount,

            @Says("In words") String sentence,

            @Says("For each standard deviation assumed") List<NeededResult> needed) {}

    /** How many it takes for one standard deviation. */
    public record NeededResult(
            @Says("smaller: three quarters of the one at hand; at-hand; upper: its upper 80 % limit")
            String which,

            @Says("The standard deviation assumed, in the metric's unit")
            double sd,

            @Says("number, more: it takes more than n; none: no number suffices")
            String kind,

            @Says("Results in every group that is to be measured")
            Optional<Integer> n,

            @Says("number, more or none, for hospitals; absent where the spread between hospitals is not known")
            Optional<String> hospitalsKind,

            @Says("Hospitals for every group that is to be measured")
            Optional<Integer> hospitals) {}
}
