package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.time.LocalDate;
import java.util.Optional;

/** One person reading the value in the source. */
public record ReadingRecord(
        @Meaning("Initials of the reader") Located<String> by,
        @Meaning("The day it was read") Located<LocalDate> on,
        @Meaning("For a second reader: yes or no") Optional<Located<YesNo>> agrees,
        @Meaning("What a reader who does not agree found") Optional<Located<Printed>> found) {}
