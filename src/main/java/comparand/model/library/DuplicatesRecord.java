package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** What is done with a row that stands in a file a second time. */
public record DuplicatesRecord(
        @Meaning("refuse, drop-second or keep; columns that are ignored or hold remarks do not tell rows apart")
        Located<Duplicates> rows,

        @Meaning("The headings by which two rows speak of one thing, such as [case, sample]; if they then differ in"
                + " anything else, the run stops")
        Optional<OneOrMore<Located<String>>> same,

        @Meaning("Why") Located<String> reason) {}
