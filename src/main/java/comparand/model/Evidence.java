package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * All comparands of a dossier, made by one path, and the published values set aside on the way.
 *
 * @param local every local comparand, also those made to meet the conditions or definition of a published value
 * @param log what became of the rows of the raw files
 */
public record Evidence(
        Checked checked, List<Comparand> local, List<Comparand> published, List<SetAside> setAside, RowLog log) {

    public Evidence {
        requireNonNull(checked, "checked");
        local = List.copyOf(local);
        published = List.copyOf(published);
        setAside = List.copyOf(setAside);
        requireNonNull(log, "log");
    }

    /** The local results as a study gives them: not those made to meet one published value. */
    public List<Comparand> localResults() {
        return local.stream().filter(c -> !c.isLocal(LocalPart.MATCHED)).toList();
    }
}
