package comparand.document.exploration;

import java.util.List;
import java.util.Optional;

/**
 * Two values side by side, with what it takes to judge them under other settings.
 *
 * @param id of the pair, as in the results
 * @param row in the tables of its question
 * @param purpose as in the results
 * @param device id of the device differences are counted for
 * @param step at which it was measured; empty where there are none
 * @param beside what it is set beside, in words
 * @param source id of the published source; absent for a pair of local results
 * @param fromFigure whether the other value was read from a figure
 * @param family whether p is adjusted for the number of comparisons
 * @param ours name of the ladder of our value
 * @param theirs name of the ladder of the other value
 * @param converted whether unit or form were brought to ours
 * @param means what the means rest on, for the notes of a pair that is compared
 * @param theirsShown the other value in the brackets of each standing
 * @param answer as if the two were compared
 */
public record PairShown(
        String id,
        int row,
        String purpose,
        String device,
        String deviceName,
        String step,
        String beside,
        Optional<String> source,
        boolean fromFigure,
        boolean family,
        String ours,
        String theirs,
        String oursLocator,
        String theirsLocator,
        boolean converted,
        String oursShown,
        Beside theirsShown,
        List<ConditionShown> conditions,
        List<String> means,
        AnswerShown answer) {

    public PairShown {
        conditions = List.copyOf(conditions);
        means = List.copyOf(means);
    }

    /**
     * The other value as printed under each standing.
     *
     * @param plain compared
     * @param differs a condition differs
     * @param asked a condition is not reported
     * @param quantity another quantity
     */
    public record Beside(String plain, String differs, String asked, String quantity) {}

    /**
     * A condition on both sides.
     *
     * @param of unit, definition, condition or label
     * @param role decides or qualifies
     * @param mark as found in the run
     * @param tolerance in words; empty where none applies
     * @param effect of theirs on the metric, if it counts as different: raises, lowers, none or not-predictable
     * @param because why, in one clause; may be empty
     * @param oursNumbers low and high end; absent unless both sides are numbers
     * @param theirsNumbers the same of the other side
     * @param madeSame whether a step brought one side to the other
     */
    public record ConditionShown(
            String of,
            String id,
            String name,
            String shortName,
            String role,
            String mark,
            String ours,
            String theirs,
            String tolerance,
            String effect,
            String because,
            Optional<List<Double>> oursNumbers,
            Optional<List<Double>> theirsNumbers,
            boolean madeSame) {}

    /**
     * The answer, with its places for verdicts left open.
     *
     * @param kind as in the results, never shown
     * @param sentence with {verdict}, or with {asSd} and {asSe} where both readings stand in it; whole where nothing is tested
     * @param agree the sentence where both readings of a spread say the same; empty elsewhere
     * @param readings one; two where a spread may be read in two ways; none where nothing is tested
     * @param decimals of the limits in sentences
     * @param shown difference and interval as printed; empty where there is none
     * @param wide half-width from which, without a margin, an open answer is imprecise; absent where that cannot be said
     * @param remarksFirst remarks behind the one on the margin, where the pair is compared
     * @param remarksFixed behind that on precision, whatever the standing
     * @param remarksIfCompared behind these, where the pair is compared
     */
    public record AnswerShown(
            String kind,
            String sentence,
            String agree,
            List<Reading> readings,
            int decimals,
            String shown,
            Optional<Double> wide,
            List<String> remarksFirst,
            List<String> remarksFixed,
            List<String> remarksIfCompared) {
        public AnswerShown {
            readings = List.copyOf(readings);
            remarksFirst = List.copyOf(remarksFirst);
            remarksFixed = List.copyOf(remarksFixed);
            remarksIfCompared = List.copyOf(remarksIfCompared);
        }
    }

    /**
     * A difference with its 95 % interval.
     *
     * @param p two-sided; absent for nominal figures
     */
    public record Reading(double value, double low, double high, Optional<Double> p) {}
}
