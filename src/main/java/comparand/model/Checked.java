package comparand.model;

import static java.util.Objects.requireNonNull;

import comparand.model.library.DossierRecord;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A library that may be worked with, the dossier that asks, and the values that a finding keeps out of comparisons.
 *
 * @param held by value id, the message of the finding that holds it
 */
public record Checked(Library library, DossierRecord dossier, SortedMap<String, String> held) {

    public Checked {
        requireNonNull(library, "library");
        requireNonNull(dossier, "dossier");
        held = Collections.unmodifiableSortedMap(new TreeMap<>(held));
    }
}
