package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.time.LocalDate;

/** What stood here before a correction. */
public record FormerValueRecord(
        @Meaning("The value as it was recorded before") Located<Printed> value,
        @Meaning("Why it changed") Located<String> reason,
        @Meaning("The last day it was used") Located<LocalDate> until) {}
