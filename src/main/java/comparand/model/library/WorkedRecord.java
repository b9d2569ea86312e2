package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.util.Optional;

/** A worked value of a declared formula: it is recomputed whenever the library is read. */
public record WorkedRecord(
        @Meaning("Each input with a quantity") Entries<Located<Printed>> from,

        @Meaning("What must come out, to its last digit") Located<Printed> result,

        @Meaning("How it was worked, or who prints it") Optional<Located<String>> how) {}
