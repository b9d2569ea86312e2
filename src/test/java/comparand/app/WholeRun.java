package comparand.app;

import comparand.diag.Diagnostic;
import comparand.model.Compared;
import java.nio.file.Path;

/** A dossier read, checked, computed, matched and compared, for tests outside of this package. */
public final class WholeRun {

    private WholeRun() {}

    /** Every pair with its answer; a library with a finding that stops fails the test. */
    public static Compared of(Path dossier) {
        return DossierFile.of(dossier).then(Pipeline::compared).fold((compared, findings) -> compared, findings -> {
            throw new AssertionError(findings.stream().map(Diagnostic::toString).toList());
        });
    }
}
