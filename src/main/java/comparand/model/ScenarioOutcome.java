package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.library.ScenarioRecord;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the answers under a scenario.
 *
 * @param compared how many pairs were looked at in the run itself
 * @param changes the pairs whose answer is another one, in the order of the run
 * @param together what several sources say together, where it changes
 */
public record ScenarioOutcome(
        ScenarioRecord scenario, int compared, List<Change> changes, List<TogetherChange> together) {

    public ScenarioOutcome {
        requireNonNull(scenario, "scenario");
        changes = List.copyOf(changes);
        together = List.copyOf(together);
    }

    /**
     * One pair before and after.
     *
     * @param after empty where the published value is left out
     */
    public record Change(Comparison before, Optional<Comparison> after) {}

    /**
     * Several sources before and after.
     *
     * @param after empty where fewer than two are left
     */
    public record TogetherChange(SourcesTogether before, Optional<SourcesTogether> after) {}
}
