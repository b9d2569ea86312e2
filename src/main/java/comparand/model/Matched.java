package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Every pair of a dossier, in the order of its questions and devices.
 *
 * @param unpaired published values of the dossier's metrics for which there is no local result
 */
public record Matched(Evidence evidence, List<Pairing> pairings, List<Comparand> unpaired) {

    public Matched {
        requireNonNull(evidence, "evidence");
        pairings = List.copyOf(pairings);
        unpaired = List.copyOf(unpaired);
    }
}
