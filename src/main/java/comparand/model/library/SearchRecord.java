package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;
import java.time.LocalDate;
import java.util.Optional;

/** One search for sources. */
public record SearchRecord(
        @Meaning("Name of the search within this log") Located<String> id,

        @Meaning("What was searched, as it is to be printed")
        Located<String> where,

        @Meaning("database, register, website, organisation, citations or other")
        Located<SearchKind> kind,

        @Meaning("The day of the search, the last one if it was repeated")
        Located<LocalDate> on,

        @Meaning("Who searched, such as their initials") Optional<Located<String>> by,

        @Meaning("The words searched for, whole, with limits and filters")
        Optional<Located<String>> words,

        @Meaning("How many records it found, as the place itself says; the log must hold as many")
        Optional<Located<PrintedNumber>> found) {

    public String name() {
        return id.value();
    }
}
