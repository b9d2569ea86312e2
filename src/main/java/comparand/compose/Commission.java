package comparand.compose;

import comparand.model.Audience;
import java.util.Optional;
import java.util.Set;

/**
 * What is asked of the composer.
 *
 * @param readers for whom
 * @param language in place of the dossier's, such as {@code de}
 */
public record Commission(Set<Audience> readers, Optional<String> language) {

    public Commission {
        readers = Set.copyOf(readers);
    }
}
