package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.library.DossierRecord;
import comparand.model.library.ScenarioRecord;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A library that may be worked with, the dossier that asks, and the values that a finding keeps out of comparisons.
 *
 * @param held by value id, the message of the finding that holds it
 * @param scenario what is supposed beside what the dossier says; empty for the run itself
 */
public record Checked(
        Library library, DossierRecord dossier, SortedMap<String, String> held, Optional<ScenarioRecord> scenario) {

    public Checked {
        requireNonNull(library, "library");
        requireNonNull(dossier, "dossier");
        held = Collections.unmodifiableSortedMap(new TreeMap<>(held));
        requireNonNull(scenario, "scenario");
    }

    /** For the run itself. */
    public Checked(Library library, DossierRecord dossier, SortedMap<String, String> held) {
        this(library, dossier, held, Optional.empty());
    }

    /** The same under a scenario. */
    public Checked under(ScenarioRecord supposed) {
        return new Checked(library, dossier, held, Optional.of(supposed));
    }

    /** Those of the scenario before those of the dossier before those of the catalogue. */
    public Tolerances tolerances() {
        return new Tolerances(library.catalogue(), dossier, scenario);
    }
}
