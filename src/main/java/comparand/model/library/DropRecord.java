package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;

/** A row left out of a study by decision. */
public record DropRecord(
        @Meaning("The line of the file on which the row begins, or its row in the sheet")
        Located<PrintedNumber> line,

        @Meaning("Why it is left out") Located<String> reason) {}
