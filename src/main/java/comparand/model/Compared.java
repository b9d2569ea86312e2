package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Every pair with its answer.
 *
 * @param together what several sources say together, where more than one may be compared with the same local result
 * @param fewer the same with some of those sources left out, for who tries that; empty where nobody asked
 * @param scenarios what changes under each scenario of the dossier, in its order
 * @param unknowns what is not known after all that, by how much it could change the decision
 */
public record Compared(
        Matched matched,
        List<Comparison> comparisons,
        List<SourcesTogether> together,
        List<SourcesTogether> fewer,
        List<ScenarioOutcome> scenarios,
        List<Unknown> unknowns) {

    public Compared {
        requireNonNull(matched, "matched");
        comparisons = List.copyOf(comparisons);
        together = List.copyOf(together);
        fewer = List.copyOf(fewer);
        scenarios = List.copyOf(scenarios);
        unknowns = List.copyOf(unknowns);
    }

    /** With what changes under its scenarios. */
    public Compared with(List<ScenarioOutcome> outcomes) {
        return new Compared(matched, comparisons, together, fewer, outcomes, unknowns);
    }

    /** With what is not known after it. */
    public Compared withUnknowns(List<Unknown> open) {
        return new Compared(matched, comparisons, together, fewer, scenarios, open);
    }

    /** With what is said of fewer sources. */
    public Compared withFewer(List<SourcesTogether> choices) {
        return new Compared(matched, comparisons, together, choices, scenarios, unknowns);
    }
}
