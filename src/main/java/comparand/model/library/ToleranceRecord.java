package comparand.model.library;

import comparand.diag.Located;
import java.time.LocalDate;
import java.util.Optional;

/** A tolerance that a dossier sets in place of the catalogue's. */
public record ToleranceRecord(
        @Meaning("The condition") Located<String> condition,

        @Meaning("The metric it holds for; all metrics unless given")
        Optional<Located<String>> metric,

        @Meaning("equal, 1 g/dL, or 5 % of the value") Located<String> within,
        @Meaning("When it was set") Located<LocalDate> set,
        @Meaning("Why") Optional<Located<String>> reason) {}
