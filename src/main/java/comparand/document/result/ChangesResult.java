package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What changed in the records since an earlier report. */
public record ChangesResult(
        @Says("The day of the earlier report; absent where the dossier names none")
        Optional<String> since,

        @Says("In the order of their days") List<RecordChangeResult> changes) {

    /** One change. */
    public record RecordChangeResult(
            @Says("value, source, revision, added, tolerance or weights")
            String kind,

            @Says("The day it happened, as far as it is known")
            String on,

            @Says("What changed") String what,
            @Says("How it stood before") String before,
            @Says("How it stands now") String after,
            @Says("Why") String cause,

            @Says("Names of the pairs in which the values concerned take part")
            List<String> pairs,

            @Says("How many of these pairs are compared") int compared,

            @Says("What that means for the answers, in words")
            String answers) {}
}
