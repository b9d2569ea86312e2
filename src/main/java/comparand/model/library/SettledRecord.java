package comparand.model.library;

import comparand.diag.Located;
import java.time.LocalDate;

/** How two readings that differed were settled. */
public record SettledRecord(
        @Meaning("Who settled it") Located<String> by,
        @Meaning("When") Located<LocalDate> on,
        @Meaning("Why the value written is the right one") Located<String> reason) {}
