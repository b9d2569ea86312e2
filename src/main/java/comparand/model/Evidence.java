package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/** All comparands of a dossier, made by one path, and the published values set aside on the way. */
public record Evidence(Checked checked, List<Comparand> local, List<Comparand> published, List<SetAside> setAside) {

    public Evidence {
        requireNonNull(checked, "checked");
        local = List.copyOf(local);
        published = List.copyOf(published);
        setAside = List.copyOf(setAside);
    }
}
