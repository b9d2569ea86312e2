package comparand.app;

import comparand.compose.Commission;
import comparand.diag.Diagnostic;
import comparand.document.publication.Publication;
import comparand.model.Audience;
import comparand.model.Compared;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** A dossier read, checked, computed, matched and compared, for tests outside of this package. */
public final class WholeRun {

    private WholeRun() {}

    /** Every pair with its answer; a library with a finding that stops fails the test. */
    public static Compared of(Path dossier) {
        return DossierFile.of(dossier).then(Pipeline::compared).fold((compared, findings) -> compared, findings -> {
            throw new AssertionError(findings.stream().map(Diagnostic::toString).toList());
        });
    }

    /** What a reader is given, as data, before any of it is written. */
    public static Publication published(Path dossier, Audience reader) {
        var commission = new Commission(Set.of(reader), Optional.empty());
        return DossierFile.of(dossier)
                .then(d -> Pipeline.published(d, Path.of("templates"), commission))
                .fold((publication, findings) -> publication, findings -> {
                    throw new AssertionError(
                            findings.stream().map(Diagnostic::toString).toList());
                });
    }
}
