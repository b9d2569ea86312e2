package comparand.hostile;

import comparand.diag.Diagnostic;
import java.util.List;

/**
 * What became of an input.
 *
 * @param whole whether a value came of it
 */
record Read(boolean whole, List<Diagnostic> findings) {
    Read {
        findings = List.copyOf(findings);
    }
}
