package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;
import java.util.List;

/** Where a further person placed the mark of a figure, independently of the first. */
public record FurtherPointsRecord(
        @Meaning("Initials of the reader") Located<String> by,

        @Meaning("Positions read for the value, one per reading, in picture points") @AtLeast(1)
        List<Located<PrintedNumber>> points) {}
