package comparand.model;

import java.util.List;

/** What a dossier's studies give: results that take part, and results set aside. */
public record LocalResults(List<Comparand> comparands, List<SetAside> setAside) {

    public LocalResults {
        comparands = List.copyOf(comparands);
        setAside = List.copyOf(setAside);
    }
}
