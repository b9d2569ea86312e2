package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Every pair with its answer.
 *
 * @param together what several sources say together, where more than one may be compared with the same local result
 * @param scenarios what changes under each scenario of the dossier, in its order
 * @param unknowns what is not known after all that, by how much it could change the decision
 */
public record Compared(
        Matched matched,
        List<Comparison> comparisons,
        List<SourcesTogether> together,
        List<ScenarioOutcome> scenarios,
        List<Unknown> unknowns) {

    public Compared {
        requireNonNull(matched, "matched");
        comparisons = List.copyOf(comparisons);
        together = List.copyOf(together);
        scenarios = List.copyOf(scenarios);
        unknowns = List.copyOf(unknowns);
    }

    /** With what changes under its scenarios. */
    public Compared with(List<ScenarioOutcome> outcomes) {
        return new Compared(matched, comparisons, together, outcomes, unknowns);
    }

    /** With what is not known after it. */
    public Compared withUnknowns(List<Unknown> open) {
        return new Compared(matched, comparisons, together, scenarios, open);
    }
}
