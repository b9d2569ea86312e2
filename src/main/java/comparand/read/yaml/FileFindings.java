package comparand.read.yaml;

import comparand.diag.Diagnostic;
import java.util.List;

/** The findings on one file, up to a number that nobody reads to its end; one more ends the reading of the file. */
final class FileFindings {

    /** A file with more faults than this is none of ours, or has one fault that was made everywhere. */
    static final int MOST = 1000;

    private final List<Diagnostic> all;
    private int count;

    FileFindings(List<Diagnostic> all) {
        this.all = all;
    }

    /**
     * Adds a finding.
     *
     * @throws Enough if there are too many of them, which is then a finding too
     */
    void add(Diagnostic finding) {
        if (++count > MOST) {
            all.add(Diagnostic.stop(
                    "findings-too-many",
                    finding.span(),
                    "this file has more than %d findings, and from here on they are not listed".formatted(MOST),
                    "so many come from one fault made everywhere, or from a file that is no record",
                    "mend the first of them, then check again"));
            throw new Enough();
        }
        all.add(finding);
    }

    boolean isEmpty() {
        return count == 0;
    }

    /** Ends the reading of a file. */
    static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Enough() {
            super("enough", null, false, false);
        }
    }
}
