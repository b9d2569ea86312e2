package comparand.app;

import comparand.model.Comparand;
import java.nio.file.Path;
import java.util.List;

/** The local results of a dossier, straight from the stages that compute them. */
final class LocalEvidence {

    private LocalEvidence() {}

    /** All of them; a library with a finding that stops fails the test. */
    static List<Comparand> of(Path dossier) {
        return DossierFile.of(dossier)
                .then(Pipeline::evidence)
                .fold((evidence, findings) -> evidence.local(), findings -> {
                    throw new AssertionError(findings.toString());
                });
    }
}
