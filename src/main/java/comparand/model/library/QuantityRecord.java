package comparand.model.library;

import comparand.diag.Located;
import java.util.Optional;

/** What the number of a row is, in a file with one row per measured quantity. */
@ExactlyOne({"input", "metric", "condition", "at", "holds"})
public record QuantityRecord(
        @Meaning("A quantity that formulas ask for, such as haemoglobin")
        Optional<Located<String>> input,

        @Meaning("A metric that was measured directly") Optional<Located<String>> metric,
        @Meaning("A condition") Optional<Located<String>> condition,

        @Meaning("A quantity that is another input at each time point: {start: free-haemoglobin-start, end:"
                + " free-haemoglobin-end}")
        Entries<Located<String>> at,

        @Meaning("ignored, for a quantity nobody needs") Optional<Located<ColumnRole>> holds,

        @Meaning("The unit of its numbers, where no column holds the unit-of-value")
        Optional<Located<String>> unit,

        @Meaning("What stands where its value is missing, beside what the file declares")
        Optional<OneOrMore<Located<String>>> missing) {}
