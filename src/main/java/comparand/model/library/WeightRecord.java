package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;

/** How much one metric counts. */
public record WeightRecord(
        @Meaning("The metric, one of those asked about") Located<String> metric,

        @Meaning("Its weight beside the others, such as 3; they need not add up to anything")
        Located<PrintedNumber> weight) {}
